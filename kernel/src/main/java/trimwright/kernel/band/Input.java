package trimwright.kernel.band;

import java.util.Optional;
import trimwright.kernel.propel.PowerBasis;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.ModelFactors;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;

/**
 * What a trim is computed from, each with its tolerance: numbers of the case and errors of the
 * method.
 */
public enum Input {
  /** Viscosity of the water, as its temperature gives it. */
  WATER_TEMPERATURE(
      Origin.WATER, Tolerance.VISCOSITY, (c, by) -> CaseChange.ride(c, by, 0, 0), Flow.SAME),
  /** Wind along the course. */
  WIND(Origin.WATER, Tolerance.WIND, (c, by) -> CaseChange.ride(c, 0, by, 0), Flow.SAME),
  /** The rider's body. */
  RIDER_MASS(Origin.RIDER, Tolerance.RIDER_MASS, CaseChange.rider(0), Flow.SAME),
  /** What the rider wears. */
  KIT_MASS(Origin.RIDER, Tolerance.KIT_MASS, CaseChange.rider(1), Flow.SAME),
  /** Drag area of the rider in the air. */
  AIR_DRAG(Origin.RIDER, Tolerance.AIR_DRAG, CaseChange.riderShare(3), Flow.SAME),
  /** Where the front foot presses. */
  FRONT_FOOT(Origin.RIDER, Tolerance.FOOT, CaseChange.rider(4), Flow.SAME),
  /** Where the back foot presses. */
  BACK_FOOT(Origin.RIDER, Tolerance.FOOT, CaseChange.rider(5), Flow.SAME),
  /** Depth of the front wing. */
  IMMERSION(Origin.RIDE, Tolerance.IMMERSION, (c, by) -> CaseChange.ride(c, 0, 0, by), Flow.OWN),

  /** The board's mass. */
  BOARD_MASS(Origin.BOARD, Tolerance.MASS, CaseChange.board(0), Flow.SAME),
  /** The board's mass centre along the deck. */
  BOARD_MASS_CENTRE(Origin.BOARD, Tolerance.MASS_CENTRE, CaseChange.board(1), Flow.SAME),
  /** Where the mast stands in its track. */
  TRACK(Origin.BOARD, Tolerance.TRACK, CaseChange.board(2), Flow.SAME),
  /** The battery's mass. */
  BATTERY_MASS(Origin.BATTERY, Tolerance.MASS, CaseChange.battery(0), Flow.SAME),
  /** The battery's mass centre along the deck. */
  BATTERY_MASS_CENTRE(Origin.BATTERY, Tolerance.MASS_CENTRE, CaseChange.battery(1), Flow.SAME),

  /** The mast's length. */
  MAST_LENGTH(Origin.MAST, Tolerance.LENGTH, CaseChange.mast(0), Flow.SAME),
  /** The deck's angle to the fuselage. */
  MAST_BASE_ANGLE(Origin.MAST, Tolerance.ANGLE, CaseChange.mast(1), Flow.SAME),
  /** The mast's angle to the fuselage. */
  MAST_RAKE(Origin.MAST, Tolerance.ANGLE, CaseChange.mast(2), Flow.SAME),
  /** The mast's chord. */
  MAST_CHORD(Origin.MAST, Tolerance.CHORD, CaseChange.mast(4), Flow.SAME),
  /** The mast's thickness. */
  MAST_THICKNESS(Origin.MAST, Tolerance.MAST_THICKNESS, CaseChange.mast(5), Flow.SAME),
  /** The mast's mass. */
  MAST_MASS(Origin.MAST, Tolerance.MASS, CaseChange.mast(3), Flow.SAME),

  /** Height of the thrust line. */
  THRUST_HEIGHT(Origin.DRIVE, Tolerance.HEIGHT, CaseChange.drive(0), Flow.SAME),
  /** Angle of the thrust line. */
  THRUST_ANGLE(Origin.DRIVE, Tolerance.ANGLE, CaseChange.drive(1), Flow.SAME),
  /** The drive's efficiency. */
  DRIVE_EFFICIENCY(Origin.DRIVE, Tolerance.EFFICIENCY_ESTIMATED, CaseChange.drive(2), Flow.SAME),
  /** The drive's mass. */
  DRIVE_MASS(Origin.DRIVE, Tolerance.MASS, CaseChange.drive(3), Flow.SAME),

  /** The front wing's place along the fuselage. */
  FRONT_WING_PLACE(Origin.FUSELAGE, Tolerance.LENGTH, CaseChange.fuselage(0), Flow.OWN),
  /** The stabilizer's place along the fuselage. */
  STABILIZER_PLACE(Origin.FUSELAGE, Tolerance.LENGTH, CaseChange.fuselage(1), Flow.OWN),
  /** The fuselage's mass. */
  FUSELAGE_MASS(Origin.FUSELAGE, Tolerance.MASS, CaseChange.fuselage(2), Flow.SAME),

  /** The front wing's angle on the fuselage. */
  FRONT_WING_SETTING(
      Origin.FRONT_WING, Tolerance.ANGLE, CaseChange.frontWing(WingChange::setting), Flow.OWN),
  /** The front wing's height. */
  FRONT_WING_HEIGHT(
      Origin.FRONT_WING, Tolerance.HEIGHT, CaseChange.frontWing(WingChange::height), Flow.OWN),
  /** The front wing's area. */
  FRONT_WING_AREA(
      Origin.FRONT_WING, Tolerance.AREA, CaseChange.frontWing(WingChange::area), Flow.OWN),
  /** The front wing's span. */
  FRONT_WING_SPAN(
      Origin.FRONT_WING, Tolerance.LENGTH, CaseChange.frontWing(WingChange::span), Flow.OWN),
  /** The front wing's chords at root and tip. */
  FRONT_WING_CHORDS(
      Origin.FRONT_WING, Tolerance.CHORD, CaseChange.frontWing(WingChange::taper), Flow.OWN),
  /** The front wing's sweep. */
  FRONT_WING_SWEEP(
      Origin.FRONT_WING, Tolerance.TIP_PLACE, CaseChange.frontWing(WingChange::sweep), Flow.OWN),
  /** How far the front wing's tips hang. */
  FRONT_WING_TIP_DROP(
      Origin.FRONT_WING, Tolerance.TIP_PLACE, CaseChange.frontWing(WingChange::tipDrop), Flow.OWN),
  /** The front wing's twist. */
  FRONT_WING_TWIST(
      Origin.FRONT_WING, Tolerance.TWIST, CaseChange.frontWing(WingChange::twist), Flow.OWN),
  /** Thickness of the front wing's section. */
  FRONT_WING_THICKNESS(
      Origin.FRONT_WING,
      Tolerance.THICKNESS,
      CaseChange.frontWing(WingChange::thickness),
      Flow.OWN),
  /** Camber of the front wing's section. */
  FRONT_WING_CAMBER(
      Origin.FRONT_WING, Tolerance.CAMBER, CaseChange.frontWing(WingChange::camber), Flow.OWN),
  /** The front wing's mass. */
  FRONT_WING_MASS(
      Origin.FRONT_WING, Tolerance.MASS, CaseChange.frontWing(WingChange::mass), Flow.SAME),

  /** The stabilizer's angle on the fuselage, without its shim. */
  STABILIZER_SETTING(
      Origin.STABILIZER, Tolerance.ANGLE, CaseChange.stabilizer(WingChange::setting), Flow.OWN),
  /** The stabilizer's height. */
  STABILIZER_HEIGHT(
      Origin.STABILIZER, Tolerance.HEIGHT, CaseChange.stabilizer(WingChange::height), Flow.OWN),
  /** The stabilizer's area. */
  STABILIZER_AREA(
      Origin.STABILIZER, Tolerance.AREA, CaseChange.stabilizer(WingChange::area), Flow.OWN),
  /** The stabilizer's span. */
  STABILIZER_SPAN(
      Origin.STABILIZER, Tolerance.LENGTH, CaseChange.stabilizer(WingChange::span), Flow.OWN),
  /** The stabilizer's chords at root and tip. */
  STABILIZER_CHORDS(
      Origin.STABILIZER, Tolerance.CHORD, CaseChange.stabilizer(WingChange::taper), Flow.OWN),
  /** The stabilizer's sweep. */
  STABILIZER_SWEEP(
      Origin.STABILIZER, Tolerance.TIP_PLACE, CaseChange.stabilizer(WingChange::sweep), Flow.OWN),
  /** How far the stabilizer's tips hang. */
  STABILIZER_TIP_DROP(
      Origin.STABILIZER, Tolerance.TIP_PLACE, CaseChange.stabilizer(WingChange::tipDrop), Flow.OWN),
  /** The stabilizer's twist. */
  STABILIZER_TWIST(
      Origin.STABILIZER, Tolerance.TWIST, CaseChange.stabilizer(WingChange::twist), Flow.OWN),
  /** Thickness of the stabilizer's section. */
  STABILIZER_THICKNESS(
      Origin.STABILIZER,
      Tolerance.THICKNESS,
      CaseChange.stabilizer(WingChange::thickness),
      Flow.OWN),
  /** Camber of the stabilizer's section. */
  STABILIZER_CAMBER(
      Origin.STABILIZER, Tolerance.CAMBER, CaseChange.stabilizer(WingChange::camber), Flow.OWN),
  /** The stabilizer's mass. */
  STABILIZER_MASS(
      Origin.STABILIZER, Tolerance.MASS, CaseChange.stabilizer(WingChange::mass), Flow.SAME),
  /** The shim's angle. */
  SHIM_ANGLE(
      Origin.SHIM,
      Tolerance.SHIM,
      CaseChange.stabilizer(WingChange::setting),
      Flow.AS_STABILIZER_SETTING),

  /** Method: zero-lift angle of the front wing's section. */
  FRONT_WING_ZERO_LIFT(
      Origin.METHOD,
      Tolerance.ZERO_LIFT_CAMBERED,
      CaseChange.frontWing(WingChange::setting),
      Flow.AS_FRONT_WING_SETTING),
  /** Method: zero-lift angle of the stabilizer's section. */
  STABILIZER_ZERO_LIFT(
      Origin.METHOD,
      Tolerance.ZERO_LIFT_CAMBERED,
      CaseChange.stabilizer(WingChange::setting),
      Flow.AS_STABILIZER_SETTING),
  /** Method: lift slope of the front wing's section. */
  FRONT_WING_LIFT_SLOPE(
      Origin.METHOD, Tolerance.LIFT_SLOPE, CaseChange.frontWing(WingChange::slope), Flow.OWN),
  /** Method: lift slope of the stabilizer's section. */
  STABILIZER_LIFT_SLOPE(
      Origin.METHOD, Tolerance.LIFT_SLOPE, CaseChange.stabilizer(WingChange::slope), Flow.OWN),
  /** Method: the front wing's downwash at the stabilizer, which turns it by its share. */
  DOWNWASH(
      Origin.METHOD,
      Tolerance.DOWNWASH,
      CaseChange.stabilizer(WingChange::setting),
      Flow.AS_STABILIZER_SETTING),
  /** Method: viscous drag of both wings. */
  SECTION_DRAG(
      Origin.METHOD, Tolerance.SECTION_DRAG, CaseChange.bothWings(WingChange::drag), Flow.SAME),
  /** Method: moment of both wings' sections. */
  SECTION_MOMENT(
      Origin.METHOD, Tolerance.SECTION_MOMENT, CaseChange.bothWings(WingChange::moment), Flow.OWN),
  /** Method: friction and form drag of the mast. */
  MAST_DRAG(Tolerance.MAST_DRAG),
  /** Method: spray where the mast pierces the surface. */
  SPRAY_DRAG(Tolerance.SPRAY_DRAG),
  /** Method: drag of the corners of mast, wings, fuselage and pod. */
  CORNER_DRAG(Tolerance.CORNER_DRAG),
  /** Method: drag of fuselage and pod. */
  BODY_DRAG(Tolerance.BODY_DRAG),
  /** Method: what the waves do at the wings besides the surface's image. */
  WAVES(Tolerance.WAVES),
  /** Method: what the front wing's wake has lost at the stabilizer. */
  WAKE(Tolerance.WAKE),
  /** Method: lift limit of both wings. */
  LIFT_LIMIT(
      Origin.METHOD, Tolerance.LIFT_LIMIT, CaseChange.bothWings(WingChange::limit), Flow.SAME);

  /** Whose table of the lifting surfaces an input's change needs. */
  enum Flow {
    /** That of the case as it is. */
    SAME,
    /** One of its own. */
    OWN,
    /** That of the front wing turned: the change acts as a turn does. */
    AS_FRONT_WING_SETTING,
    /** That of the stabilizer turned. */
    AS_STABILIZER_SETTING
  }

  private final Origin origin;
  private final Tolerance tolerance;
  private final CaseChange change;
  private final Flow flow;

  Input(Origin origin, Tolerance tolerance, CaseChange change, Flow flow) {
    this.origin = origin;
    this.tolerance = tolerance;
    this.change = change;
    this.flow = flow;
  }

  /** Of a part of the model that a craft multiplies. */
  Input(Tolerance tolerance) {
    this(Origin.METHOD, tolerance, (c, by) -> c, Flow.SAME);
  }

  /** Where it comes from. */
  public Origin origin() {
    return origin;
  }

  Flow flow() {
    return flow;
  }

  /** The case with this input moved. */
  RideCase moved(RideCase rideCase, double by) {
    return change.of(rideCase, by);
  }

  /** The factors of the model with this input's moved by a share, none below 0. */
  ModelFactors moved(ModelFactors factors, double by) {
    double factor = Math.max(0, 1 + by);
    return switch (this) {
      case MAST_DRAG -> factors.withMast(factor);
      case SPRAY_DRAG -> factors.withSpray(factor);
      case CORNER_DRAG -> factors.withCorners(factor);
      case BODY_DRAG -> factors.withBodies(factor);
      case WAVES -> factors.withWaves(factor);
      case WAKE -> factors.withWake(factor);
      default -> factors;
    };
  }

  /** The craft with this input moved. */
  Craft craft(RideCase rideCase, double by) {
    return new Craft(moved(rideCase, by)).with(moved(ModelFactors.NONE, by));
  }

  /**
   * One standard deviation of this input.
   *
   * @param rideCase the case
   * @param knowledge how its parts are known
   * @return in the input's unit, SI or a share; empty where the case has no such part
   */
  Optional<Double> deviation(RideCase rideCase, Knowledge knowledge) {
    boolean battery = rideCase.setup().battery().isPresent();
    boolean drive = rideCase.setup().drive().isPresent();
    if (origin == Origin.BATTERY && !battery || origin == Origin.DRIVE && !drive) {
      return Optional.empty();
    }
    return Optional.of(actual(rideCase).deviation(knowledge.of(origin)));
  }

  /**
   * What of this input's variance would be left if its part were measured with a calliper.
   *
   * @param rideCase the case
   * @param knowledge how its parts are known now
   * @return share of the present variance, at most 1 [1]; 1 where a calliper tells nothing
   */
  public double left(RideCase rideCase, Knowledge knowledge) {
    Tolerance table = actual(rideCase);
    double ratio = table.deviation(KnownBy.CALLIPER) / table.deviation(knowledge.of(origin));
    return Math.min(1, ratio * ratio);
  }

  private Tolerance actual(RideCase rideCase) {
    return switch (this) {
      case FRONT_WING_ZERO_LIFT -> SectionTolerances.zeroLift(rideCase.setup().frontWing());
      case STABILIZER_ZERO_LIFT -> SectionTolerances.zeroLift(rideCase.setup().stabilizer());
      case FRONT_WING_LIFT_SLOPE -> SectionTolerances.liftSlope(rideCase.setup().frontWing());
      case STABILIZER_LIFT_SLOPE -> SectionTolerances.liftSlope(rideCase.setup().stabilizer());
      case LIFT_LIMIT -> SectionTolerances.liftLimit(rideCase.setup());
      case DRIVE_EFFICIENCY -> efficiency(Propulsion.find(rideCase).orElseThrow().basis());
      default -> tolerance;
    };
  }

  private static Tolerance efficiency(PowerBasis basis) {
    return switch (basis) {
      case ESTIMATED -> Tolerance.EFFICIENCY_ESTIMATED;
      case GIVEN_EFFICIENCY -> Tolerance.EFFICIENCY_GIVEN;
      case SERIES -> Tolerance.EFFICIENCY_SERIES;
      case OPEN_WATER -> Tolerance.EFFICIENCY_OPEN_WATER;
    };
  }
}
