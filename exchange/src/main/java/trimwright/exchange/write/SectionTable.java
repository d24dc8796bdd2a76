package trimwright.exchange.write;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the section document holds.
 *
 * @param name of the section
 * @param digest of what it was computed from
 * @param reynolds on the chord [1]
 * @param zeroLiftAngle [rad]
 * @param liftSlope [1/rad]
 * @param maximumLift coefficient [1]; empty where friction is left out
 * @param rows one per angle, moment about the quarter chord
 */
public record SectionTable(
    String name,
    String digest,
    double reynolds,
    double zeroLiftAngle,
    double liftSlope,
    OptionalDouble maximumLift,
    List<PolarRow> rows) {
  /** Copies the list. */
  public SectionTable {
    rows = List.copyOf(rows);
  }
}
