package trimwright.kernel.range;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.propel.GreatestThrust;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.propel.PropellerDepth;
import trimwright.kernel.propel.ScrewState;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * A drive at one trim point.
 *
 * @param speed [m/s]
 * @param thrust that the trim takes [N]
 * @param most the most that the drive gives at this speed
 * @param state how the propeller runs, where it is known
 * @param cavitationThrust thrust up to which its blades are free of harmful cavitation [N], where
 *     they are known
 * @param depth of the propeller
 */
public record DrivePoint(
    double speed,
    double thrust,
    GreatestThrust most,
    Optional<ScrewState> state,
    Optional<Double> cavitationThrust,
    PropellerDepth depth) {

  /**
   * The drive at each trim point of a curve.
   *
   * @param solver of the case
   * @param outcomes of its curve
   * @return one for each outcome with a trim point, in order; none without a drive
   */
  public static List<DrivePoint> list(CaseSolver solver, List<TrimOutcome> outcomes) {
    Optional<Powertrain> drive = solver.findPowertrain();
    if (drive.isEmpty()) {
      return List.of();
    }
    Craft craft = new Craft(solver.rideCase());
    return outcomes.stream()
        .flatMap(outcome -> outcome.findPoint().stream())
        .map(point -> of(craft, drive.get(), point))
        .toList();
  }

  private static DrivePoint of(Craft craft, Powertrain drive, TrimPoint point) {
    double fuselage = point.pitch() - craft.deck().baseAngle();
    return new DrivePoint(
        point.speed(),
        point.thrust(),
        drive.greatestThrust(point.speed()),
        drive.findState(point.thrust(), point.speed()),
        Propulsion.cavitationThrust(craft, fuselage),
        Propulsion.depth(craft, fuselage));
  }

  /** Whether the blades cavitate by that rule at this thrust; never where they are not known. */
  public boolean cavitates() {
    return cavitationThrust.isPresent() && thrust > cavitationThrust.get();
  }
}
