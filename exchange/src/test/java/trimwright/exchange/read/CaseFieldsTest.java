package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseField.Choice;
import trimwright.exchange.read.CaseField.Kind;
import trimwright.exchange.read.CaseField.Signs;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;

/** The inputs that a form shows, as the schema tells them. */
class CaseFieldsTest {
  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  @Test
  void tellsANumber() {
    CaseField mass = CaseFields.find("rider.mass_kg").orElseThrow();
    assertThat(mass.label()).isEqualTo("Mass without kit");
    assertThat(mass.name()).isEqualTo("rider's mass");
    assertThat(mass.group()).isEqualTo("rider");
    assertThat(mass.groupLabel()).isEqualTo("Rider");
    assertThat(mass.unit()).contains(Unit.KILOGRAM);
    assertThat(mass.minimum()).hasValue(15);
    assertThat(mass.maximum()).hasValue(250);
    assertThat(mass.optional()).isFalse();
    assertThat(mass.groupOptional()).isFalse();
    assertThat(CaseFields.find("rider.kit_mass_kg").orElseThrow().fallback()).contains("0");
  }

  @Test
  void tellsAChoice() {
    CaseField skill = CaseFields.find("rider.skill").orElseThrow();
    assertThat(skill.kind()).isEqualTo(Kind.CHOICE);
    assertThat(skill.unit()).isEmpty();
    assertThat(skill.fallback()).contains("linking");
    assertThat(skill.choices())
        .extracting(Choice::code)
        .containsExactly("first-flights", "linking", "carving", "surf");
    assertThat(skill.choices().get(0).label()).isEqualTo("First flights");
  }

  @Test
  void keepsTheSchemasOrder() {
    List<String> paths = CaseFields.list().stream().map(CaseField::path).toList();
    assertThat(paths).doesNotHaveDuplicates().startsWith("name", "water.temperature_c");
    assertThat(paths)
        .containsSubsequence(
            "rider.mass_kg",
            "setup.board.mass_kg",
            "setup.shim.angle_deg",
            "ride.mast_immersion_mm")
        .doesNotContain("format");
  }

  @Test
  void namesPartsThatMayBeLeftOut() {
    Set<String> groups = new HashSet<>();
    CaseFields.list().stream()
        .filter(CaseField::groupOptional)
        .forEach(f -> groups.add(f.groupLabel()));
    assertThat(groups).containsExactlyInAnyOrder("Battery", "Drive", "Shim", "Handle pull");
  }

  @Test
  void aWingNeedsItsSheetAndASectionMayBeGivenInThreeWays() {
    assertThat(CaseFields.find("setup.front_wing.area_cm2").orElseThrow().optional()).isFalse();
    assertThat(CaseFields.find("setup.front_wing.sweep_mm").orElseThrow().optional()).isTrue();
    assertThat(CaseFields.find("setup.front_wing.section").orElseThrow().kind())
        .isEqualTo(Kind.TEXT);
    assertThat(CaseFields.find("setup.front_wing.section.file")).isPresent();
    assertThat(CaseFields.find("setup.front_wing.section.thickness_percent").orElseThrow().unit())
        .contains(Unit.PERCENT);
  }

  @Test
  void stationsStandApart() {
    CaseField chord = CaseFields.find("setup.stabilizer.stations.12.chord_mm").orElseThrow();
    assertThat(chord.path()).isEqualTo("setup.stabilizer.stations.*.chord_mm");
    assertThat(chord.repeated()).isTrue();
    assertThat(chord.group()).isEqualTo("setup.stabilizer");
    assertThat(CaseFields.listRepeated())
        .contains(chord)
        .extracting(CaseField::path)
        .contains("setup.front_wing.stations.*.section.camber_percent");
    assertThat(CaseFields.list()).noneMatch(CaseField::repeated);
  }

  @Test
  void aShimIsNeverABarePlusOrMinus() {
    assertThat(CaseFields.find("setup.shim.angle_deg").orElseThrow().signs())
        .contains(new Signs("leading edge down", "leading edge up"));
  }

  @Test
  void knowsNoOtherPaths() {
    for (String path :
        List.of(
            "",
            ".",
            "rider",
            "setup.front_wing",
            "setup.front_wing.stations",
            "setup.front_wing.stations.0",
            "setup.front_wing.stations.*.eta",
            "setup.front_wing.stations.-1.eta",
            "setup.front_wing.stations.00.eta",
            "setup.front_wing.stations.1000.eta",
            "rider.mass_kg.",
            "rider..mass_kg",
            "rider[0]",
            "format")) {
      assertThat(CaseFields.find(path)).as(path).isEmpty();
    }
  }

  /** A person knows each by its heading and label alone, and every word of a page is there. */
  @Test
  void everyFieldHasWords() {
    Set<String> seen = new HashSet<>();
    List<CaseField> all = new java.util.ArrayList<>(CaseFields.list());
    all.addAll(CaseFields.listRepeated());
    for (CaseField field : all) {
      assertThat(field.label()).as(field.path()).matches("[A-Z0-9].*").doesNotContain("_");
      assertThat(field.name()).as(field.path()).isNotBlank().doesNotContain("_");
      assertThat(field.help()).as(field.path()).endsWith(".");
      assertThat(seen.add(field.groupLabel() + "/" + field.label() + "/" + field.repeated()))
          .as(field.path())
          .isTrue();
      assertThat(field.unit().isPresent()).isEqualTo(field.kind() == Kind.NUMBER);
      assertThat(field.choices().isEmpty()).isEqualTo(field.kind() != Kind.CHOICE);
      field.unit().ifPresent(unit -> assertThat(Measures.IMPERIAL.shown(unit)).isNotNull());
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyFieldOfADemoCaseIsKnown(DemoCase demo) {
    CaseDraft.fields(Texts.accepted(demo.text()))
        .forEach((path, text) -> assertThat(CaseFields.find(path)).as(path).isPresent());
  }
}
