package trimwright.kernel.band;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/**
 * Which inputs two cases have from one and the same source, so that an error of it acts on both.
 *
 * <p>A part is taken for the same where every number of it is equal and it is known the same way.
 * The method's errors are the same for the same wing; downwash and drags err alike in every case.
 */
public final class SharedInputs {
  /** All inputs: those of one case at two speeds. */
  public static final Set<Input> ALL = Set.of(Input.values());

  private SharedInputs() {}

  /**
   * The inputs that two cases share.
   *
   * @param a one case
   * @param knownA how its parts are known
   * @param b another
   * @param knownB how its parts are known
   * @return the shared inputs
   */
  public static Set<Input> between(RideCase a, Knowledge knownA, RideCase b, Knowledge knownB) {
    EnumSet<Input> shared = EnumSet.noneOf(Input.class);
    for (Input input : Input.values()) {
      if (knownA.of(input.origin()) == knownB.of(input.origin()) && same(input, a, b)) {
        shared.add(input);
      }
    }
    return shared;
  }

  private static boolean same(Input input, RideCase a, RideCase b) {
    return switch (input) {
      case FRONT_WING_ZERO_LIFT, FRONT_WING_LIFT_SLOPE -> same(a, b, Setup::frontWing);
      case STABILIZER_ZERO_LIFT, STABILIZER_LIFT_SLOPE -> same(a, b, Setup::stabilizer);
      case TRACK -> a.setup().board().track() == b.setup().board().track();
      case FRONT_FOOT -> a.rider().frontFoot() == b.rider().frontFoot();
      case BACK_FOOT -> a.rider().backFoot() == b.rider().backFoot();
      case RIDER_MASS -> a.rider().mass() == b.rider().mass();
      case KIT_MASS -> a.rider().kitMass() == b.rider().kitMass();
      case MAST_BASE_ANGLE -> a.setup().mast().baseAngle() == b.setup().mast().baseAngle();
      case FRONT_WING_PLACE ->
          a.setup().fuselage().frontWingAhead() == b.setup().fuselage().frontWingAhead();
      case STABILIZER_PLACE ->
          a.setup().fuselage().stabilizerBehind() == b.setup().fuselage().stabilizerBehind();
      default -> same(input.origin(), a, b);
    };
  }

  private static boolean same(Origin origin, RideCase a, RideCase b) {
    return switch (origin) {
      case WATER, RIDE, METHOD -> true;
      case RIDER -> a.rider().airDragArea() == b.rider().airDragArea();
      case BOARD ->
          a.setup().board().mass() == b.setup().board().mass()
              && a.setup().board().massCentreAhead() == b.setup().board().massCentreAhead();
      case BATTERY -> a.setup().battery().equals(b.setup().battery());
      case MAST ->
          a.setup().mast().length() == b.setup().mast().length()
              && a.setup().mast().chord() == b.setup().mast().chord()
              && a.setup().mast().thickness() == b.setup().mast().thickness()
              && a.setup().mast().rake() == b.setup().mast().rake()
              && a.setup().mast().mass() == b.setup().mast().mass();
      case DRIVE -> a.setup().drive().equals(b.setup().drive());
      case FUSELAGE -> a.setup().fuselage().mass() == b.setup().fuselage().mass();
      case FRONT_WING -> same(a, b, Setup::frontWing);
      case STABILIZER -> same(a, b, Setup::stabilizer);
      case SHIM -> a.setup().shim() == b.setup().shim();
    };
  }

  private static boolean same(RideCase a, RideCase b, Function<Setup, FittedWing> wing) {
    FittedWing one = wing.apply(a.setup());
    FittedWing other = wing.apply(b.setup());
    return one.setting() == other.setting()
        && one.height() == other.height()
        && one.mass() == other.mass()
        && same(one.shape(), other.shape());
  }

  private static boolean same(WingShape a, WingShape b) {
    return a == b
        || a.span() == b.span()
            && a.stations().size() == b.stations().size()
            && numbers(a).equals(numbers(b));
  }

  /** Sections that were read twice are two objects with one outline. */
  private static List<Object> numbers(WingShape shape) {
    return shape.stations().stream().flatMap(s -> numbers(s).stream()).toList();
  }

  private static List<Object> numbers(Station s) {
    return List.of(
        s.fraction(),
        s.chord(),
        s.ahead(),
        s.above(),
        s.twist(),
        s.section().name(),
        s.section().shape());
  }
}
