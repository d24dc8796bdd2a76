package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.unit.Measures;
import trimwright.seed.RunSeed;

/** The case that a sheet of paper carries. */
class CaseCodeTest {
  /** A square code of this many bytes is still easy to read from paper. */
  private static final int COMFORTABLE = 1_200;

  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void demoCasesReadBackWithoutTheirName(DemoCase demo) {
    CaseFile file = Texts.accepted(demo.text());
    String text = CaseCode.of(file).text().orElseThrow();
    assertThat(text)
        .doesNotContain("name", file.name(), "#", "trimwright")
        .matches("[ -~\n]*")
        .contains("rider: {mass_kg: ");
    assertThat(text.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(COMFORTABLE);
    CaseFile back = Texts.accepted(text);
    assertThat(back.digest()).isEqualTo(nameless(file));
    assertThat(back.notes()).isEqualTo(file.notes());
    assertThat(CaseCode.of(back).text()).contains(text);
  }

  private static String nameless(CaseFile file) {
    Map<String, String> fields = new HashMap<>(CaseDraft.fields(file));
    fields.remove("name");
    DraftReading reading = CaseDraft.of(fields).read(Measures.METRIC, SectionFiles.NONE);
    return reading.caseFile().orElseThrow().digest();
  }

  @Test
  void leavesOutWhatCountsAnyway() {
    String plain = CaseCode.of(Texts.accepted(Texts.EXAMPLE)).text().orElseThrow();
    String spelled =
        CaseCode.of(Texts.accepted(CaseWriter.yaml(Texts.accepted(Texts.EXAMPLE))))
            .text()
            .orElseThrow();
    assertThat(spelled).isEqualTo(plain);
    assertThat(plain).doesNotContain("wind_kmh", "skill", "mounted").contains("shim: {angle_deg: ");
    String level = Texts.with("angle_deg: 0.5", "angle_deg: 0.0");
    assertThat(CaseCode.of(Texts.accepted(level)).text().orElseThrow()).doesNotContain("shim");
  }

  @Test
  void saysWhyAFileOfCoordinatesCannotBeCarried() {
    StringBuilder outline = new StringBuilder();
    for (int i = 0; i <= 60; i++) {
      double turn = 2 * Math.PI * i / 60;
      double x = (1 + Math.cos(turn)) / 2;
      outline.append(x).append(' ').append(0.1 * Math.sin(turn) * (1 - x)).append('\n');
    }
    for (String section : List.of("own.dat", "{file: own.dat}")) {
      Optional<CaseFile> file =
          CaseReader.read(Texts.with("naca0009", section), name -> Optional.of(outline.toString()))
              .findValue();
      CaseCode code = CaseCode.of(file.orElseThrow());
      assertThat(code.text()).isEmpty();
      assertThat(code.whyNot()).hasValueSatisfying(w -> assertThat(w).contains("coordinates file"));
    }
  }

  @Test
  void saysWhyAFinelyMeasuredWingCannotBeCarried() {
    StringBuilder stations = new StringBuilder("stations: [");
    for (int i = 0; i <= 40; i++) {
      stations.append("{eta: ").append(i / 40.0).append(", chord_mm: ").append(215 - i).append("}");
      stations.append(i < 40 ? ", " : "]");
    }
    String text =
        Texts.with(
            "area_cm2: 1500, span_mm: 900, root_chord_mm: 215, tip_chord_mm: 60, sweep_mm: 40,"
                + " tip_drop_mm: 25",
            "span_mm: 900, " + stations);
    CaseCode code = CaseCode.of(Texts.accepted(text.replace(", twist_tip_deg: -1.0", "")));
    assertThat(code.text()).isEmpty();
    assertThat(code.whyNot())
        .hasValueSatisfying(w -> assertThat(w).contains("holds " + CaseCode.MOST_BYTES));
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void everyCaseReadsBack(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    SchemaCaseGenerator generator = new SchemaCaseGenerator(seed);
    CaseFile file =
        Texts.accepted(seed % 2 == 0 ? generator.next() : generator.near(Texts.EXAMPLE));
    String text = CaseCode.compact(YamlParser.parse(file.text()).root().orElseThrow());
    assertThat(Texts.accepted(text).digest()).isEqualTo(nameless(file));
    CaseCode code = CaseCode.of(file);
    assertThat(code.text().isPresent()).isNotEqualTo(code.whyNot().isPresent());
    code.text().ifPresent(carried -> assertThat(carried).isEqualTo(text));
  }
}
