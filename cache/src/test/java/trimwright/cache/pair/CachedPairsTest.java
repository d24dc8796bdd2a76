package trimwright.cache.pair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.Obtained;
import trimwright.cache.Obtained.Origin;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.WingSheet;
import trimwright.kernel.water.WaterModel;

class CachedPairsTest {
  private static final double DEGREE = Math.toRadians(1);
  private static final String MODEL = "1.2";

  @TempDir Path folder;

  /** What the tests change. */
  private record Change(
      double shim, double setting, double area, String section, Finish finish, double kelvin) {
    static final Change NONE = new Change(0, -2 * DEGREE, 0.15, "2412", Finish.CLEAN, 290);

    Craft craft(double riderMass) {
      FittedWing front =
          new FittedWing(
              new WingSheet(area, 0.9, 0.215, 0.06, 0.04, 0.025, 0).shape(Sections.naca(section)),
              0,
              0,
              1.6,
              0.1,
              0,
              finish);
      FittedWing tail =
          new FittedWing(
              new WingSheet(0.035, 0.42, 0.105, 0.045, 0.02, 0, 0).shape(Sections.naca("0009")),
              setting,
              0,
              0.3,
              0.1,
              0,
              Finish.CLEAN);
      Setup setup =
          new Setup(
              new Board(14, 1.65, 0.66, 0.12, 0.095, 0.06, 0.05, 0),
              Optional.empty(),
              new Mast(0.75, 0.12, 0.016, 0, 0, 3, 0.1, 0, Finish.CLEAN),
              Optional.empty(),
              new Fuselage(0.85, 0.032, 0.15, 0.56, 1.2, 0.1, 0),
              front,
              tail,
              shim);
      return new Craft(
          new RideCase(
              WaterModel.at(kelvin, 0.2e-3),
              1.225,
              0,
              0.1,
              new Rider(riderMass, 6, 1.78, 0.5, 0.52, 0.04, 7, 0.55, 0),
              setup,
              0.45,
              OptionalDouble.empty()));
    }
  }

  private CachedPairs pairs(String model) {
    return new CachedPairs(CacheStore.in(folder, 1_000_000), model);
  }

  private Obtained<PairTable> obtain(Craft craft) {
    return pairs(MODEL).of(craft, BuildWatch.NONE);
  }

  private Path onlyEntry() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> entries = files.filter(f -> f.toString().endsWith(".entry")).toList();
      assertThat(entries).hasSize(1);
      return entries.get(0);
    }
  }

  @Test
  void aSecondBuildIsReadAndTheSameBitForBit() {
    Obtained<PairTable> built = obtain(Change.NONE.craft(82));
    Obtained<PairTable> kept = obtain(Change.NONE.craft(82));
    assertThat(built.origin()).isEqualTo(Origin.BUILT);
    assertThat(kept.origin()).isEqualTo(Origin.KEPT);
    assertThat(kept.value().pitches()).isEqualTo(built.value().pitches());
    assertThat(kept.value().values()).isEqualTo(built.value().values());
  }

  @Test
  void whatTheWingsDoNotFeelIsTheSameTable() {
    String digits = pairs(MODEL).key(Change.NONE.craft(82)).digits();
    Change shimmed = new Change(DEGREE, -2 * DEGREE, 0.15, "2412", Finish.CLEAN, 290);
    assertThat(pairs(MODEL).key(Change.NONE.craft(60)).digits()).isEqualTo(digits);
    assertThat(pairs(MODEL).key(shimmed.craft(82)).digits()).isEqualTo(digits);
    // Made twice from a sheet: other objects, the same content.
    assertThat(pairs(MODEL).key(Change.NONE.craft(82)).digits()).isEqualTo(digits);
  }

  @Test
  void aChangedInputIsAnotherTable() {
    String digits = pairs(MODEL).key(Change.NONE.craft(82)).digits();
    for (Change other :
        List.of(
            new Change(0, -2.1 * DEGREE, 0.15, "2412", Finish.CLEAN, 290),
            new Change(0, -2 * DEGREE, 0.1501, "2412", Finish.CLEAN, 290),
            new Change(0, -2 * DEGREE, 0.15, "2410", Finish.CLEAN, 290),
            new Change(0, -2 * DEGREE, 0.15, "2412", Finish.SCUFFED, 290),
            new Change(0, -2 * DEGREE, 0.15, "2412", Finish.CLEAN, 291))) {
      assertThat(pairs(MODEL).key(other.craft(82)).digits()).isNotEqualTo(digits);
    }
    assertThat(pairs("1.3").key(Change.NONE.craft(82)).digits()).isNotEqualTo(digits);
  }

  @Test
  void aDamagedEntryIsBuiltAnew() throws Exception {
    PairTable built = obtain(Change.NONE.craft(82)).value();
    Path entry = onlyEntry();
    byte[] bytes = Files.readAllBytes(entry);
    assertThat(bytes.length).isLessThan(16_000);
    bytes[bytes.length / 2] ^= 1;
    Files.write(entry, bytes);
    Obtained<PairTable> again = obtain(Change.NONE.craft(82));
    assertThat(again.origin()).isEqualTo(Origin.REBUILT);
    assertThat(again.value().values()).isEqualTo(built.values());
    assertThat(obtain(Change.NONE.craft(82)).origin()).isEqualTo(Origin.KEPT);
  }

  @Test
  void aStoppedBuildKeepsNothing() {
    BuildWatch stopped =
        new BuildWatch() {
          @Override
          public void advanced(double share) {
            // Nobody looks.
          }

          @Override
          public boolean isStopped() {
            return true;
          }
        };
    assertThatThrownBy(() -> pairs(MODEL).of(Change.NONE.craft(82), stopped))
        .isInstanceOf(CancellationException.class);
    assertThat(obtain(Change.NONE.craft(82)).origin()).isEqualTo(Origin.BUILT);
  }
}
