package trimwright.exchange.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;

/** The stock that comes with the program: of realistic size, and home of every demo case. */
class DemoStockTest {
  private static final StockFile DEMO = stock();

  /** Also in docs/stock.md. */
  private static final long SETUPS = 1_254_960;

  private static StockFile stock() {
    Reading<StockFile> reading = StockReader.read(DemoStock.text(), SectionFiles.NONE);
    assertThat(reading.problems().stream().map(Problem::text)).isEmpty();
    return reading.findValue().orElseThrow();
  }

  static List<DemoCase> cases() {
    return DemoCases.list();
  }

  private static CaseFile read(DemoCase demo) {
    return CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow();
  }

  @Test
  void isOfRealisticSize() {
    assertThat(DEMO.stock().frontWings()).hasSize(24);
    assertThat(DEMO.stock().stabilizers()).hasSize(12);
    // Nine shims from -2 to 2 degrees, where none is one of them
    assertThat(DEMO.stock().shims()).hasSize(8);
    assertThat(DEMO.stock().masts()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(DEMO.stock().boards()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(DEMO.stock().drives()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(
            DEMO.stock().fuselages().stream()
                .map(part -> part.piece().length())
                .collect(Collectors.toSet()))
        .hasSizeGreaterThan(4);
    assertThat(DEMO.stock().boards())
        .allSatisfy(board -> assertThat(board.piece().track().count()).isEqualTo(7));
  }

  @Test
  void hasTheSetupsThatItsPageNames() {
    SetupSpace space = SetupSpace.of(DEMO.stock(), Propulsion.DRIVEN);
    assertThat(space.count()).isEqualTo(SETUPS);
    assertThat(space.setups().count()).isEqualTo(space.count());
  }

  /** A part that no setup has would only be in the way. */
  @Test
  void everyPartThatIsThereIsOnSomeSetup() {
    SetupSpace space = SetupSpace.of(DEMO.stock(), Propulsion.DRIVEN);
    List<String> used =
        Stream.concat(
                space.boardSets().flatMap(set -> set.parts()),
                space.stock().masts().stream()
                    .flatMap(space::foilSetsOn)
                    .flatMap(foil -> foil.parts()))
            .<String>map(StockPart::id)
            .distinct()
            .toList();
    List<String> there =
        Stream.of(PartKind.values())
            .flatMap(kind -> space.stock().list(kind).stream())
            .<String>map(StockPart::id)
            .toList();
    assertThat(used).containsExactlyInAnyOrderElementsOf(there);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void eachDemoCaseIsOneOfItsSetups(DemoCase demo) {
    CaseFile own = read(demo);
    StockCases cases = StockCases.of(own, DEMO);
    StockSetup setup = cases.findOwn().orElseThrow();
    CaseFile made = cases.caseFile(setup).findValue().orElseThrow();
    assertThat(made.digest()).isEqualTo(own.digest());
    assertThat(made.rideCase()).isEqualTo(own.rideCase());
    assertThat(made.notes()).isEqualTo(own.notes());
    assertThat(cases.rideCase(setup)).isEqualTo(own.rideCase());
    CaseFile again = CaseReader.read(made.text(), SectionFiles.NONE).findValue().orElseThrow();
    assertThat(again.digest()).isEqualTo(own.digest());
  }

  /** The quick way and the way through a case file are one, all over the stock. */
  @ParameterizedTest
  @MethodSource("cases")
  void bothWaysToACaseAgree(DemoCase demo) {
    StockCases cases = StockCases.of(read(demo), DEMO);
    long every = 5_003; // prime, so that all parts and settings come by
    long[] index = {0};
    List<StockSetup> some =
        cases.space().setups().filter(setup -> index[0]++ % every == 0).toList();
    assertThat(some).hasSizeGreaterThan(200);
    for (StockSetup setup : some) {
      CaseFile made = cases.caseFile(setup).findValue().orElseThrow();
      assertThat(cases.rideCase(setup))
          .usingRecursiveComparison()
          .withEqualsForType((a, b) -> Math.abs(a - b) < 1e-12, Double.class)
          .isEqualTo(made.rideCase());
    }
  }
}
