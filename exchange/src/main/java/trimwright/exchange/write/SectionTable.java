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
 * @param repairs sentences on what was put right in a coordinates file
 */
public record SectionTable(
    String name,
    String digest,
    double reynolds,
    double zeroLiftAngle,
    double liftSlope,
    OptionalDouble maximumLift,
    List<PolarRow> rows,
    List<String> repairs) {
  /** Copies the lists. */
  public SectionTable {
    rows = List.copyOf(rows);
    repairs = List.copyOf(repairs);
  }

  /** The same of a section that came from a coordinates file in which this was put right. */
  public SectionTable withRepairs(List<String> sentences) {
    return new SectionTable(
        name, digest, reynolds, zeroLiftAngle, liftSlope, maximumLift, rows, sentences);
  }
}
