package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static trimwright.exchange.unit.Measures.IMPERIAL;
import static trimwright.exchange.unit.Measures.METRIC;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.unit.Measures;

/** What a person reads beside the fields: one row per kind of mistake, each with its fields. */
class DraftProblemTest {
  private static final String WING = "setup.front_wing.";

  /** Fields that are changed, and the only message that follows. */
  record Row(Measures measures, Map<String, String> changed, String message, List<String> paths) {
    @Override
    public String toString() {
      return changed + " " + measures;
    }
  }

  private static Row row(Measures measures, String path, String text, String message) {
    return new Row(measures, Map.of(path, text), message, List.of(path));
  }

  private static Row row(
      Map<String, String> changed, String message, String first, String... others) {
    return new Row(
        METRIC, changed, message, Stream.concat(Stream.of(first), Stream.of(others)).toList());
  }

  static Stream<Row> texts() {
    return Stream.of(
        row(METRIC, "rider.mass_kg", "500", "Rider's mass is 500 kg; wanted is 15 to 250 kg."),
        row(
            IMPERIAL,
            "rider.mass_kg",
            "362.874",
            "Rider's mass is 800 lb; wanted is 33.1 to 551 lb."),
        row(
            IMPERIAL,
            "rider.mass_kg",
            "800 lb",
            "Rider's mass is 800 lb; wanted is 33.1 to 551 lb."),
        row(
            IMPERIAL,
            "water.temperature_c",
            "-10",
            "Water's temperature is 14 °F; wanted is 28.4 to 104 °F."),
        row(
            METRIC,
            "rider.mass_kg",
            "heavy",
            "Rider's mass is \"heavy\", which is no number; wanted is 15 to 250 kg."),
        row(
            METRIC,
            "rider.mass_kg",
            "82 mm",
            "Rider's mass is \"82 mm\", which is no number; wanted is 15 to 250 kg."),
        row(
            METRIC,
            "rider.mass_kg",
            "1e999",
            "Rider's mass is \"1e999\", which is far too large; wanted is 15 to 250 kg."),
        row(METRIC, "rider.mass_kg", " ", "Rider's mass is missing; wanted is 15 to 250 kg."),
        row(
            METRIC,
            "rider.skill",
            "carvin",
            "Rider's skill is \"carvin\"; wanted is one of first flights, linking flights,"
                + " carving, surf (did you mean carving?)."),
        row(
            METRIC,
            "setup.shim.angle_deg",
            "-9",
            "Shim's angle is 9° leading edge down; wanted is 6° leading edge down to 6° leading"
                + " edge up."),
        row(
            METRIC,
            "name",
            "x".repeat(130),
            "The case's name is 130 characters long; wanted is 1 to 120 characters."),
        row(
            METRIC,
            "name",
            "two\nlines",
            "The case's name holds a control character (U+000A); write plain text on one line."),
        row(
            METRIC,
            WING + "section",
            "foo",
            "Front wing's section is \"foo\"; wanted is a code such as naca2412, a coordinates file"
                + " (.dat, .txt, .csv), or thickness and camber."),
        row(
            METRIC,
            WING + "section",
            "own.dat",
            "Front wing's section names the file own.dat, which cannot be read; wanted is a"
                + " coordinates file beside the case file."),
        row(METRIC, "rider.weight", "82", "A case has no field \"rider.weight\"."));
  }

  static Stream<Row> contradictions() {
    return Stream.of(
        row(
            Map.of("rider.front_foot_mm", "40", "rider.back_foot_mm", "520"),
            "Front foot's place is 40 mm and back foot's place is 520 mm; the front foot must stand"
                + " at least 100 mm ahead of the back foot.",
            "rider.front_foot_mm",
            "rider.back_foot_mm"),
        row(
            Map.of(WING + "area_cm2", "1100"),
            "Front wing's area is 1100 cm², but span 900 mm, chord at the root 215 mm and chord at"
                + " the tip 60 mm allow only 1238 to 1905 cm²: 138 cm² too little. One of the four"
                + " numbers is wrong.",
            WING + "area_cm2",
            WING + "span_mm",
            WING + "root_chord_mm",
            WING + "tip_chord_mm"),
        row(
            Map.of(WING + "tip_chord_mm", "260"),
            "Front wing's chord at the tip is 260 mm, permitted is no more than front wing's chord"
                + " at the root, which is 215 mm.",
            WING + "tip_chord_mm",
            WING + "root_chord_mm"),
        row(
            Map.of("setup.mast.chord_mm", "45", "setup.mast.thickness_mm", "48"),
            "Mast's thickness is 48 mm, permitted is no more than mast's chord, which is 45 mm.",
            "setup.mast.thickness_mm",
            "setup.mast.chord_mm"),
        row(
            Map.of("setup.fuselage.front_wing_ahead_of_mast_mm", "-400"),
            "Front wing's place and stabilizer's place put the wings' quarter chords 160 mm apart,"
                + " permitted is above 187.5 mm: the wings would overlap.",
            "setup.fuselage.stabilizer_behind_mast_mm",
            "setup.fuselage.front_wing_ahead_of_mast_mm",
            WING + "root_chord_mm",
            "setup.stabilizer.root_chord_mm"),
        row(
            Map.of("ride.mast_immersion_mm", "800"),
            "Front wing's depth is 800 mm, permitted is below 750 mm: with mast's length 750 mm the"
                + " board would be in the water.",
            "ride.mast_immersion_mm",
            "setup.mast.length_mm"),
        row(
            Map.of("ride.mast_immersion_mm", "100", WING + "height_mm", "20"),
            "Drive's thrust line above fuselage is 180 mm, permitted is below 120 mm: with front"
                + " wing's depth 100 mm the thrust line would be out of the water.",
            "setup.drive.height_above_fuselage_mm",
            "ride.mast_immersion_mm",
            WING + "height_mm"),
        row(
            Map.of("setup.board.volume_l", "200"),
            "Board's volume is 200 l, permitted is no more than 131 l: length times width times"
                + " thickness at the mast has no room for more.",
            "setup.board.volume_l",
            "setup.board.length_mm",
            "setup.board.width_mm",
            "setup.board.thickness_mm"),
        row(
            Map.of(WING + "section.thickness_percent", "12"),
            "Front wing's section is given twice, as a code or file and by its thickness or camber;"
                + " leave one of them blank.",
            WING + "section",
            WING + "section.thickness_percent"));
  }

  @ParameterizedTest
  @MethodSource({"texts", "contradictions"})
  void saysWhatIsWrong(Row row) {
    DraftReading reading = read(row.measures(), row.changed());
    assertThat(reading.problems())
        .singleElement()
        .isEqualTo(new FieldProblem(row.paths(), row.message()));
  }

  @Test
  void takesNumbersAsPeopleTypeThem() {
    String digest = Texts.accepted(Texts.EXAMPLE).digest();
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("rider.height_m", "1,78");
    typed.put("rider.mass_kg", "82 kg");
    typed.put("rider.kit_mass_kg", " 6,0kg ");
    typed.put("rider.wished_speed_kmh", "25 km/h");
    typed.put("rider.wished_foot_share", ".55");
    typed.put("setup.battery.energy_wh", "2 000");
    typed.put("setup.mast.chord_mm", "12 cm");
    typed.put("setup.mast.base_angle_deg", "\u22122.5°");
    typed.put(WING + "area_cm2", "0.15 m²");
    typed.put(WING + "section", "NACA 2412 ");
    assertThat(read(METRIC, typed).caseFile().orElseThrow().digest()).isEqualTo(digest);
    assertThat(read(IMPERIAL, typed).caseFile().orElseThrow().digest()).isEqualTo(digest);
  }

  @Test
  void blankIsLeftOut() {
    DraftReading reading = read(METRIC, Map.of("rider.kit_mass_kg", "", "rider.height_m", "  "));
    assertThat(reading.caseFile().orElseThrow().digest())
        .isEqualTo(Texts.accepted(Texts.with("kit_mass_kg: 6, height_m: 1.78, ", "")).digest());
  }

  @Test
  void reportsSeveralProblemsInTheOrderOfTheFields() {
    DraftReading reading =
        read(
            METRIC,
            Map.of(
                "ride.mast_immersion_mm", "deep",
                "setup.mast.thickness_mm", "130 mm",
                "water.salinity_g_kg", "80",
                "setup.stabilizer.area_cm2", "250"));
    assertThat(reading.problems())
        .extracting(p -> p.paths().get(0))
        .containsExactly(
            "water.salinity_g_kg",
            "setup.mast.thickness_mm",
            "setup.stabilizer.area_cm2",
            "ride.mast_immersion_mm");
  }

  @Test
  void aGroupThatIsLeftOutHalfway() {
    assertThat(
            read(METRIC, Map.of("setup.battery.mass_kg", "", "setup.battery.energy_wh", ""))
                .problems())
        .extracting(FieldProblem::message)
        .containsExactly(
            "Battery's mass is missing; wanted is 0.2 to 80 kg.",
            "Battery's energy when full is missing; wanted is 10 to 20000 Wh.");
  }

  @Test
  void anEmptyDraftMissesEveryNeededField() {
    DraftReading reading = CaseDraft.of(Map.of()).read(METRIC, SectionFiles.NONE);
    List<String> needed =
        CaseFields.list().stream()
            .filter(field -> !field.optional() && !field.groupOptional())
            .map(CaseField::path)
            .toList();
    assertThat(reading.problems())
        .extracting(p -> p.paths().get(0))
        .containsExactlyElementsOf(needed);
  }

  @Test
  void stationsReplaceTheSheet() {
    Map<String, String> stations = new LinkedHashMap<>();
    stations.put(WING + "stations.2.eta", "0");
    stations.put(WING + "stations.2.chord_mm", "215");
    stations.put(WING + "stations.7.eta", "1");
    stations.put(WING + "stations.7.chord_mm", "5 cm");
    DraftReading beside = read(METRIC, stations);
    assertThat(beside.problems())
        .filteredOn(p -> p.message().contains("beside"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.message())
                  .startsWith("Front wing's chord at the root and chord at the tip, sweep of the")
                  .endsWith("beside front wing's measured stations; leave one or the other blank.");
              assertThat(p.paths())
                  .startsWith(WING + "root_chord_mm")
                  .containsAll(stations.keySet());
            });
    for (String key : List.of("area_cm2", "root_chord_mm", "tip_chord_mm")) {
      stations.put(WING + key, "");
    }
    for (String key : List.of("sweep_mm", "tip_drop_mm", "twist_tip_deg")) {
      stations.put(WING + key, "");
    }
    assertThat(read(METRIC, stations).problems()).isEmpty();
    stations.put(WING + "stations.7.chord_mm", "900 mm");
    assertThat(read(METRIC, stations).problems())
        .singleElement()
        .isEqualTo(
            new FieldProblem(
                List.of(WING + "stations.7.chord_mm"),
                "Front wing's chord at station 2 is 900 mm; wanted is 1 to 800 mm."));
    stations.put(WING + "stations.7.chord_mm", "50");
    stations.put(WING + "stations.7.eta", "0.9");
    assertThat(read(METRIC, stations).problems())
        .extracting(FieldProblem::message)
        .containsExactly(
            "Front wing's place at station 2 is 0.9, wanted is 1, as the list ends at the tip.");
  }

  @Test
  void pullAndDriveNameEveryFieldOfBoth() {
    assertThat(read(METRIC, Map.of("pull.height_above_deck_mm", "1200")).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.message()).startsWith("Handle pull and drive stand together;");
              assertThat(p.paths())
                  .startsWith("pull.height_above_deck_mm")
                  .contains("setup.drive.mass_kg", "setup.drive.max_power_w");
            });
  }

  private static DraftReading read(Measures measures, Map<String, String> changed) {
    Map<String, String> fields =
        new LinkedHashMap<>(CaseDraft.fields(Texts.accepted(Texts.EXAMPLE)));
    fields.putAll(changed);
    return CaseDraft.of(fields).read(measures, SectionFiles.NONE);
  }
}
