package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.Station;

class WingReaderTest {
  private static final double ROUNDING = 1e-12;

  /** A straight taper by its stations: 600 mm span, 200 to 100 mm chord, 900 cm². */
  private static final String MEASURED =
      """
      span_mm: 600
      section: naca0012
      stations:
        - {eta: 0, chord_mm: 200, quarter_chord_mm: 10, height_mm: 5}
        - {eta: 0.5, chord_mm: 150, quarter_chord_mm: -10, height_mm: 0, section: naca2412}
        - {eta: 1, chord_mm: 100, quarter_chord_mm: -30, height_mm: -15, twist_deg: -2}
      """;

  private static final String SHEET =
      "{area_cm2: 900, span_mm: 600, root_chord_mm: 200, tip_chord_mm: 100, section: naca0012,"
          + " finish: scuffed}";

  @Test
  void readsAWingWithAndWithoutItsKey() {
    WingFile bare = wing("name: Test\n" + SHEET.replaceAll("[{}]", "").replace(", ", "\n"));
    WingFile wrapped = wing("name: Test\nfront_wing: " + SHEET);
    assertThat(wrapped.digest()).isEqualTo(bare.digest());
    assertThat(wrapped.name()).isEqualTo("Test");
    assertThat(wrapped.finish()).isEqualTo(Finish.SCUFFED);
    assertThat(wrapped.shape().area()).isCloseTo(0.09, within(1e-6));
    assertThat(wing(SHEET).name()).isEqualTo("unnamed wing");
  }

  @Test
  void readsStationsFromTheRootsQuarterChord() {
    List<Station> stations = wing(MEASURED).shape().stations();
    assertThat(stations).extracting(Station::fraction).containsExactly(0.0, 0.5, 1.0);
    assertThat(stations.get(0).ahead()).isZero();
    assertThat(stations.get(2).ahead()).isCloseTo(-0.04, within(ROUNDING));
    assertThat(stations.get(2).above()).isCloseTo(-0.02, within(ROUNDING));
    assertThat(stations.get(2).twist()).isCloseTo(Math.toRadians(-2), within(ROUNDING));
    assertThat(stations)
        .extracting(s -> s.section().name())
        .containsExactly("naca0012", "naca2412", "naca0012");
    assertThat(wing(MEASURED).shape().area()).isCloseTo(0.09, within(ROUNDING));
  }

  @Test
  void checksStationsAgainstTheSheetsArea() {
    assertThat(problems(MEASURED + "area_cm2: 915\n")).isEmpty();
    assertThat(problems(MEASURED + "area_cm2: 930\n"))
        .containsExactly(
            "line 7: area_cm2 is 930, but the stations give 900 cm²; permitted is a difference of"
                + " 2 %, or leave area_cm2 out.");
  }

  @Test
  void refusesStationsThatDoNotRiseFromRootToTip() {
    assertThat(problems(MEASURED.replace("eta: 0.5", "eta: 0")))
        .containsExactly(
            "line 5: stations[1].eta is 0, wanted is above the one before, which is 0.");
    assertThat(problems(MEASURED.replace("eta: 0,", "eta: 0.1,")))
        .containsExactly(
            "line 4: stations[0].eta is 0.1, wanted is 0, as the list begins at the root.");
    assertThat(problems(MEASURED.replace("eta: 1,", "eta: 0.9,")))
        .containsExactly(
            "line 6: stations[2].eta is 0.9, wanted is 1, as the list ends at the tip.");
    assertThat(problems("span_mm: 600\nsection: naca0012\nstations: [{eta: 0, chord_mm: 9}]"))
        .containsExactly("line 3: stations has 1 entries; wanted is a list of 2 to 100 groups.");
  }

  @Test
  void refusesSheetKeysBesideStations() {
    assertThat(problems(MEASURED + "root_chord_mm: 200\nsweep_mm: 3\n"))
        .containsExactly(
            "line 7: root_chord_mm must not stand beside stations.",
            "line 8: sweep_mm must not stand beside stations.");
  }

  @Test
  void wantsASectionSomewhere() {
    assertThat(problems(MEASURED.replace("section: naca0012\n", "")))
        .containsExactly(
            "line 3: stations[0].section is missing; wanted is a section here or one for the whole"
                + " wing (section).",
            "line 5: stations[2].section is missing; wanted is a section here or one for the whole"
                + " wing (section).");
    assertThat(problems(SHEET.replace("section: naca0012, ", "")))
        .singleElement()
        .asString()
        .startsWith("section is missing; wanted is a code such as naca2412");
  }

  @Test
  void readsSectionsFromFilesAndFromThicknessAndCamber() {
    String outline = SectionTextTest.outline(0.12);
    SectionFiles files = name -> Optional.ofNullable(Map.of("foil.dat", outline).get(name));
    Reading<WingFile> byFile =
        WingReader.read(SHEET.replace("naca0012", "{file: foil.dat}"), files);
    assertThat(byFile.problems()).isEmpty();
    Reading<WingFile> byName = WingReader.read(SHEET.replace("naca0012", "foil.dat"), files);
    assertThat(byName.findValue().orElseThrow().digest())
        .isEqualTo(byFile.findValue().orElseThrow().digest())
        .isNotEqualTo(
            WingReader.read(
                    SHEET.replace("naca0012", "foil.dat"),
                    name -> Optional.of(SectionTextTest.outline(0.13)))
                .findValue()
                .orElseThrow()
                .digest());
    assertThat(problems(SHEET.replace("naca0012", "{thickness_percent: 12, camber_percent: 2}")))
        .isEmpty();
    assertThat(
            WingReader.read(SHEET.replace("naca0012", "foil.dat"), name -> Optional.of("1 2\n3"))
                .problems())
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.message())
                    .isEqualTo(
                        "section names the file foil.dat, which cannot be used: line 2: The line"
                            + " \"3\" is not a pair of numbers; wanted are two columns, x and y."));
  }

  @Test
  void saysWhatIsMissingByExample() {
    assertThat(problems("section: naca2412"))
        .containsExactly(
            "area_cm2 is missing; wanted is a number in cm², such as 1500.",
            "span_mm is missing; wanted is a number in mm, such as 900.",
            "root_chord_mm is missing; wanted is a number in mm, such as 215.",
            "tip_chord_mm is missing; wanted is a number in mm, such as 60.");
  }

  @Test
  void refusesWhatIsNoWing() {
    assertThat(problems("front_wing: " + SHEET + "\ncolour: red\n"))
        .singleElement()
        .asString()
        .startsWith("line 2: colour is not a known key");
    assertThat(problems("front_wing: 3")).isNotEmpty();
    assertThat(problems(Texts.EXAMPLE))
        .singleElement()
        .asString()
        .startsWith("This looks like a case file: use curve.");
  }

  private static WingFile wing(String text) {
    Reading<WingFile> reading = WingReader.read(text, SectionFiles.NONE);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }

  private static List<String> problems(String text) {
    return WingReader.read(text, SectionFiles.NONE).problems().stream().map(Problem::text).toList();
  }
}
