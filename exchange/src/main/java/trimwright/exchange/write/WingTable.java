package trimwright.exchange.write;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the wing document holds: one wing alone. Coefficients stand on the area; the moment is about
 * the root's quarter chord, on area and mean chord.
 *
 * @param name of the wing
 * @param digest of what it was computed from
 * @param sections what the wing's sections stand on, as {@link SectionCode} says it
 * @param speed [m/s]
 * @param immersion depth of the root's quarter chord [m]; empty for deep water
 * @param area [m²]
 * @param span [m]
 * @param zeroLiftAngle [rad]
 * @param liftSlope [1/rad]
 * @param momentSlope change of the moment coefficient with the angle of attack [1/rad]
 * @param inducedDragFactor induced drag times pi and aspect ratio over lift squared [1]
 * @param maximumLift coefficient [1]; empty where sections are taken as inviscid
 * @param rows one per angle
 */
public record WingTable(
    String name,
    String digest,
    String sections,
    double speed,
    OptionalDouble immersion,
    double area,
    double span,
    double zeroLiftAngle,
    double liftSlope,
    double momentSlope,
    double inducedDragFactor,
    OptionalDouble maximumLift,
    List<PolarRow> rows) {
  /** Copies the list. */
  public WingTable {
    rows = List.copyOf(rows);
  }
}
