package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.trim.ExampleCase;
import trimwright.seed.RunSeed;

class MovedWaterPropertyTest {
  /** Eight strips between two stations, where a chord's square is integrated exactly here. */
  private static final double STRIPS = 2e-3;

  private static final double ROUNDING = 1e-12;

  @Test
  void itIsThatOfTheWingsByStripsAndOfTheBodiesByWhatTheyDisplace() {
    Craft craft = new Craft(ExampleCase.PLAIN.build());
    Fuselage f = craft.rideCase().setup().fuselage();
    Drive d = craft.rideCase().setup().drive().orElseThrow();
    double volume = cylinder(f.diameter(), f.length()) + cylinder(d.diameter(), d.length());
    for (PlacedWing wing : craft.wings()) {
      volume += wing(wing);
    }
    double mass = MovedWater.of(craft).mass();
    assertThat(mass).isCloseTo(craft.rideCase().water().density() * volume, within(STRIPS * mass));
  }

  @Test
  void withoutADriveItLacksThePodsWater() {
    Craft with = new Craft(ExampleCase.PLAIN.build());
    Craft without = new Craft(ExampleCase.PLAIN.withoutDrive(OptionalDouble.of(1.0)).build());
    Drive d = with.rideCase().setup().drive().orElseThrow();
    double pod = with.rideCase().water().density() * cylinder(d.diameter(), d.length());
    MovedWater a = MovedWater.of(with);
    MovedWater b = MovedWater.of(without);
    near(a.mass() - b.mass(), pod);
    near(a.ahead() - b.ahead(), pod * with.podAhead());
    near(a.square() - b.square(), pod * (square(with.podAhead()) + square(d.length()) / 12));
  }

  @Property(seed = RunSeed.VALUE)
  void aFrontWingFartherForwardTakesItsWaterAlong(
      @ForAll @DoubleRange(min = 0.05, max = 0.2) double from,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double by) {
    Craft here = new Craft(ExampleCase.PLAIN.withFrontAhead(from).build());
    Craft there = new Craft(ExampleCase.PLAIN.withFrontAhead(from + by).build());
    double density = here.rideCase().water().density();
    Fuselage f = here.rideCase().setup().fuselage();
    MovedWater a = MovedWater.of(here);
    MovedWater b = MovedWater.of(there);
    near(b.mass(), a.mass());
    // The fuselage's middle goes half as far.
    double wanted =
        density * by * (wing(here.wings().get(0)) + 0.5 * cylinder(f.diameter(), f.length()));
    assertThat(b.ahead() - a.ahead()).isCloseTo(wanted, within(STRIPS * wanted));
  }

  @Property(seed = RunSeed.VALUE)
  void itsMomentsAreThoseOfMassesAboveNothing(
      @ForAll @DoubleRange(min = 0.05, max = 0.3) double frontAhead) {
    MovedWater moved =
        MovedWater.of(new Craft(ExampleCase.PLAIN.withFrontAhead(frontAhead).build()));
    assertThat(moved.mass()).isPositive();
    // About their own centre, too, masses have a moment of inertia.
    assertThat(moved.square() * moved.mass()).isGreaterThan(square(moved.ahead()));
    // The force of a turning plate's flow acts behind its middle.
    assertThat(moved.behind()).isLessThan(moved.ahead());
  }

  /** Per density: strips, less what an elliptic plate of the same aspect ratio loses [m³]. */
  private static double wing(PlacedWing wing) {
    double chordSquares = 0;
    List<Station> s = wing.shape().stations();
    for (int i = 1; i < s.size(); i++) {
      double a = s.get(i - 1).chord();
      double b = s.get(i).chord();
      double width = wing.shape().span() * (s.get(i).fraction() - s.get(i - 1).fraction());
      chordSquares += width * (a * a + a * b + b * b) / 3;
    }
    return EllipticPlate.shareOfStrips(wing.shape().aspectRatio()) * Math.PI / 4 * chordSquares;
  }

  private static double cylinder(double diameter, double length) {
    return Math.PI / 4 * diameter * diameter * length;
  }

  private static double square(double x) {
    return x * x;
  }

  private static void near(double computed, double wanted) {
    assertThat(computed).isCloseTo(wanted, within(ROUNDING * 10));
  }
}
