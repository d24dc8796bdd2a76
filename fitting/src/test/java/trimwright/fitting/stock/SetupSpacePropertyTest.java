package trimwright.fitting.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.seed.RunSeed;

/** The enumeration against loops that know nothing of its structure. */
class SetupSpacePropertyTest {
  /** All words of a setup, so that equal ones are equal texts. */
  private record Named(List<String> ids, double track) {}

  @Property(tries = 400, seed = RunSeed.VALUE)
  void setupsAreThoseOfNestedLoops(@ForAll long seed, @ForAll Propulsion propulsion) {
    Stock stock = new RandomStock(seed).stock();
    SetupSpace space = SetupSpace.of(stock, propulsion);
    List<Named> naive = naive(stock, propulsion);
    assertThat(space.setups().map(SetupSpacePropertyTest::named).toList())
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(naive);
    assertThat(space.count()).isEqualTo(naive.size());
  }

  @Property(tries = 400, seed = RunSeed.VALUE)
  void anotherPartNeverLowersTheCount(@ForAll long seed, @ForAll Propulsion propulsion) {
    RandomStock random = new RandomStock(seed);
    Stock stock = random.stock();
    Stock grown = random.grown(stock);
    assertThat(SetupSpace.of(grown, propulsion).count())
        .isGreaterThanOrEqualTo(SetupSpace.of(stock, propulsion).count());
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void halvesTellTheirCounts(@ForAll long seed) {
    SetupSpace space = SetupSpace.of(new RandomStock(seed).stock(), Propulsion.DRIVEN);
    for (StockPart<Mast> mast : space.stock().masts()) {
      assertThat(space.countFoilSetsOn(mast)).isEqualTo(space.foilSetsOn(mast).count());
    }
  }

  /** The properties would say little if hardly any of their stocks had a setup. */
  @Test
  void manyRandomStocksHaveSetups() {
    long some =
        LongStream.range(0, 200)
            .filter(
                seed -> SetupSpace.of(new RandomStock(seed).stock(), Propulsion.DRIVEN).count() > 0)
            .count();
    assertThat(some).isGreaterThan(50);
  }

  private static Named named(StockSetup setup) {
    return new Named(setup.parts().<String>map(StockPart::id).toList(), setup.track());
  }

  private static List<Named> naive(Stock stock, Propulsion propulsion) {
    List<Named> found = new ArrayList<>();
    boolean driven = propulsion == Propulsion.DRIVEN;
    for (StockPart<TrackedBoard> board : stock.boards()) {
      for (StockPart<StockBattery> battery : orNone(stock.batteries(), driven)) {
        for (StockPart<Mast> mast : stock.masts()) {
          for (StockPart<Drive> drive : orNone(stock.drives(), driven)) {
            for (StockPart<Fuselage> fuselage : stock.fuselages()) {
              for (StockPart<FittedWing> wing : stock.frontWings()) {
                for (StockPart<FittedWing> stabilizer : stock.stabilizers()) {
                  for (Optional<StockPart<Shim>> shim : orNothing(stock.shims())) {
                    List<StockPart<?>> parts = new ArrayList<>();
                    parts.add(board);
                    parts.add(battery);
                    parts.add(mast);
                    parts.add(drive);
                    parts.add(fuselage);
                    parts.add(wing);
                    parts.add(stabilizer);
                    parts.add(shim.orElse(null));
                    if (mounts(parts) && apart(fuselage, wing, stabilizer)) {
                      List<String> ids = new ArrayList<>();
                      parts.stream().filter(p -> p != null).forEach(p -> ids.add(p.id()));
                      Track track = board.piece().track();
                      for (double at : track.places().toArray()) {
                        found.add(new Named(ids, at));
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    }
    return found;
  }

  /** Parts in the order of their kinds, null where there is none. */
  private static boolean mounts(List<StockPart<?>> parts) {
    for (StockPart<?> part : parts) {
      if (part != null
          && (part.holding().state() == PartState.OUT || part.holding().count() == 0)) {
        return false;
      }
    }
    for (Joint joint : Joint.values()) {
      StockPart<?> one = parts.get(joint.one().ordinal());
      StockPart<?> other = parts.get(joint.other().ordinal());
      if (one != null && other != null) {
        Set<String> left = one.mounts().list(joint);
        Set<String> right = other.mounts().list(joint);
        if (left.stream().noneMatch(right::contains)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean apart(
      StockPart<Fuselage> fuselage, StockPart<FittedWing> wing, StockPart<FittedWing> stabilizer) {
    double trailing =
        fuselage.piece().frontWingAhead() - 0.75 * wing.piece().shape().stations().get(0).chord();
    double leading =
        -fuselage.piece().stabilizerBehind()
            + 0.25 * stabilizer.piece().shape().stations().get(0).chord();
    return trailing > leading;
  }

  private static <P> List<StockPart<P>> orNone(List<StockPart<P>> parts, boolean wanted) {
    return wanted ? parts : Collections.singletonList(null);
  }

  private static <P> List<Optional<StockPart<P>>> orNothing(List<StockPart<P>> parts) {
    List<Optional<StockPart<P>>> all = new ArrayList<>(List.of(Optional.empty()));
    parts.forEach(part -> all.add(Optional.of(part)));
    return all;
  }
}
