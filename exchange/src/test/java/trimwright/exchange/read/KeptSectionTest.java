package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.section.Section;
import trimwright.kernel.surface.WingShape;

/** Sections and planforms are built once for every text that names the same ones. */
class KeptSectionTest {
  @Test
  void oneSectionForAllTextsThatNameIt() {
    Section first = section(read("naca2412", SectionFiles.NONE));
    assertThat(section(read("NACA 2412", SectionFiles.NONE))).isSameAs(first);
    assertThat(section(read("naca2413", SectionFiles.NONE))).isNotSameAs(first);
  }

  @Test
  void aFileIsKnownByItsContent() {
    Section first = section(read("own.dat", name -> Optional.of(outline(0.1))));
    assertThat(section(read("own.dat", name -> Optional.of(outline(0.1))))).isSameAs(first);
    Section other = section(read("own.dat", name -> Optional.of(outline(0.12))));
    assertThat(other).isNotSameAs(first);
    assertThat(other.shape().thickness()).isGreaterThan(first.shape().thickness());
    assertThat(CaseReader.read(Texts.with("naca2412", "own.dat"), SectionFiles.NONE).problems())
        .hasSize(1);
  }

  @Test
  void aPlanformIsBuiltAnewWhenItsSheetChanges() {
    Map<String, String> fields =
        new LinkedHashMap<>(CaseDraft.fields(Texts.accepted(Texts.EXAMPLE)));
    WingShape first = shape(fields);
    fields.put("rider.mass_kg", "70");
    assertThat(shape(fields)).isSameAs(first);
    fields.put("setup.front_wing.area_cm2", "1501");
    assertThat(shape(fields).area()).isGreaterThan(first.area());
  }

  private static WingShape shape(Map<String, String> fields) {
    return CaseDraft.of(fields)
        .read(Measures.METRIC, SectionFiles.NONE)
        .caseFile()
        .orElseThrow()
        .rideCase()
        .setup()
        .frontWing()
        .shape();
  }

  private static CaseFile read(String section, SectionFiles files) {
    Reading<CaseFile> reading = CaseReader.read(Texts.with("naca2412", section), files);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }

  private static Section section(CaseFile file) {
    return file.rideCase().setup().frontWing().shape().stations().get(0).section();
  }

  private static String outline(double half) {
    StringBuilder outline = new StringBuilder();
    for (int i = 0; i <= 60; i++) {
      double turn = 2 * Math.PI * i / 60;
      double x = (1 + Math.cos(turn)) / 2;
      outline.append(x).append(' ').append(half * Math.sin(turn) * (1 - x)).append('\n');
    }
    return outline.toString();
  }
}
