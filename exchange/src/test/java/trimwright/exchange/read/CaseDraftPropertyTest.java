package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.unit.Measures;
import trimwright.seed.RunSeed;

/** Fields and case files say the same, and whatever stands in the fields is answered. */
class CaseDraftPropertyTest {
  /** Texts that mean something to a reader of numbers, of YAML or of paths. */
  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "-0",
          "-1",
          "1e400",
          "-1e400",
          "1e-400",
          "NaN",
          "Infinity",
          "0x1F",
          ".",
          ",",
          "-",
          "1,5",
          "1.5.5",
          "1,000,000",
          "82 kg",
          "12 in",
          "50 %",
          "1e",
          "99999999999999999999",
          "null",
          "~",
          "true",
          "{}",
          "[1, 2]",
          "{thickness_percent: 12}",
          "naca2412",
          "NACA 0012",
          "naca99999",
          "naca6600",
          "x.dat",
          "../x.dat",
          "linking",
          "above",
          "clean",
          "\u0000",
          "\n",
          "\u202e",
          "\ud83d",
          "\u00a0",
          "٣",
          "é",
          "<b>",
          "'",
          "\"",
          "\\",
          "%s",
          "a".repeat(5000));

  private static final List<String> PATHS =
      List.of(
          "",
          ".",
          "..",
          "rider",
          "rider.",
          ".rider",
          "rider.mass_kg.x",
          "setup.front_wing",
          "setup.front_wing.stations",
          "setup.front_wing.stations.0",
          "setup.front_wing.section.",
          "setup.front_wing.stations.-1.eta",
          "setup.front_wing.stations.99999999999.eta",
          "setup.front_wing.stations.x.eta",
          "setup.front_wing.stations[0].eta",
          "format",
          "*",
          "setup.front_wing.stations.*.eta",
          "\n",
          "a.".repeat(5000),
          "\ud83d",
          "<script>");

  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void demoCasesComeBack(DemoCase demo) {
    comesBack(demo.text());
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void casesOfTheSchemaComeBack(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    SchemaCaseGenerator generator = new SchemaCaseGenerator(seed);
    comesBack(seed % 2 == 0 ? generator.next() : generator.near(Texts.EXAMPLE));
  }

  private static void comesBack(String text) {
    CaseFile file = Texts.accepted(text);
    Map<String, String> fields = CaseDraft.fields(file);
    for (Measures measures : Measures.values()) {
      DraftReading reading = CaseDraft.of(fields).read(measures, SectionFiles.NONE);
      assertThat(reading.problems()).isEmpty();
      CaseFile again = reading.caseFile().orElseThrow();
      assertThat(again.digest()).isEqualTo(file.digest());
      assertThat(again.name()).isEqualTo(file.name());
      assertThat(again.notes()).isEqualTo(file.notes());
      assertThat(CaseDraft.fields(again)).isEqualTo(fields);
      assertThat(Texts.accepted(again.text()).digest()).isEqualTo(file.digest());
    }
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void anyFieldsAreAnswered(
      @ForAll @Size(max = 30) Map<String, String> random,
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    Random dice = new Random(seed);
    Map<String, String> fields = new LinkedHashMap<>();
    if (dice.nextBoolean()) {
      fields.putAll(
          CaseDraft.fields(
              Texts.accepted(DemoCases.list().get(dice.nextInt(demos().size())).text())));
    }
    fields.putAll(random);
    for (int i = dice.nextInt(8); i > 0; i--) {
      fields.put(path(dice), TEXTS.get(dice.nextInt(TEXTS.size())));
    }
    if (dice.nextInt(10) == 0) {
      fields.put(null, "1");
      fields.put("rider.mass_kg", null);
    }
    answers(fields);
  }

  private static String path(Random dice) {
    return switch (dice.nextInt(4)) {
      case 0 -> PATHS.get(dice.nextInt(PATHS.size()));
      case 1 -> {
        List<CaseField> repeated = CaseFields.listRepeated();
        yield repeated
            .get(dice.nextInt(repeated.size()))
            .path()
            .replace("*", String.valueOf(dice.nextInt(4)));
      }
      default -> CaseFields.list().get(dice.nextInt(CaseFields.list().size())).path();
    };
  }

  private static void answers(Map<String, String> fields) {
    Optional<String> sectionFile = Optional.of("0 0\n1 0");
    for (Measures measures : Measures.values()) {
      DraftReading reading = CaseDraft.of(fields).read(measures, name -> sectionFile);
      reading
          .problems()
          .forEach(
              p -> {
                assertThat(p.message()).isNotBlank().doesNotContain("\n").endsWith(".");
                assertThat(p.message().length()).isLessThan(700);
                p.paths().forEach(path -> assertKnown(path, fields));
              });
      reading
          .caseFile()
          .ifPresent(
              file ->
                  assertThat(CaseReader.read(file.text(), name -> sectionFile).findValue())
                      .map(CaseFile::digest)
                      .contains(file.digest()));
    }
  }

  /** A problem points at a field that was sent, or at one that is missing. */
  private static void assertKnown(String path, Map<String, String> fields) {
    assertThat(fields.containsKey(path) || CaseFields.find(path).isPresent()).as(path).isTrue();
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void theFieldsAcceptWhatTheFileAccepts(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    Random dice = new Random(seed);
    Map<String, String> fields =
        new HashMap<>(CaseDraft.fields(Texts.accepted(new SchemaCaseGenerator(seed).next())));
    List<CaseField> numbers =
        CaseFields.list().stream()
            .filter(f -> f.kind() == CaseField.Kind.NUMBER && !f.path().contains(".section."))
            .toList();
    CaseField moved = numbers.get(dice.nextInt(numbers.size()));
    double least = moved.minimum().getAsDouble();
    double most = moved.maximum().getAsDouble();
    double value = least + (1.2 * dice.nextDouble() - 0.1) * (most - least);
    fields.put(moved.path(), Double.toString(value));
    DraftReading draft = CaseDraft.of(fields).read(Measures.METRIC, SectionFiles.NONE);
    Reading<CaseFile> file = CaseReader.read(Flat.yaml(fields), SectionFiles.NONE);
    assertThat(draft.caseFile().map(CaseFile::digest))
        .isEqualTo(file.findValue().map(CaseFile::digest));
    assertThat(draft.problems().isEmpty()).isEqualTo(file.problems().isEmpty());
  }
}
