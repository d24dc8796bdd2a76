package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
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
 * @param layers how the polar came about, where boundary layers were computed
 */
public record SectionTable(
    String name,
    String digest,
    double reynolds,
    double zeroLiftAngle,
    double liftSlope,
    OptionalDouble maximumLift,
    List<PolarRow> rows,
    List<String> repairs,
    Optional<Layers> layers) {

  /**
   * How the points of a polar came about, of the computed Reynolds number nearest to the asked one.
   *
   * @param computed angles at which layers and outer flow agreed [1]
   * @param bridged angles between two such, interpolated [1]
   * @param extended angles beyond the last such, by a rule for deep stall [1]
   */
  public record Layers(int computed, int bridged, int extended) {}

  /** A table without boundary layers. */
  public SectionTable(
      String name,
      String digest,
      double reynolds,
      double zeroLiftAngle,
      double liftSlope,
      OptionalDouble maximumLift,
      List<PolarRow> rows,
      List<String> repairs) {
    this(
        name,
        digest,
        reynolds,
        zeroLiftAngle,
        liftSlope,
        maximumLift,
        rows,
        repairs,
        Optional.empty());
  }

  /** Copies the lists. */
  public SectionTable {
    rows = List.copyOf(rows);
    repairs = List.copyOf(repairs);
  }

  /** The same of a section that came from a coordinates file in which this was put right. */
  public SectionTable withRepairs(List<String> sentences) {
    return new SectionTable(
        name, digest, reynolds, zeroLiftAngle, liftSlope, maximumLift, rows, sentences, layers);
  }

  /** The same, with how its polar came about. */
  public SectionTable withLayers(Layers counts) {
    return new SectionTable(
        name,
        digest,
        reynolds,
        zeroLiftAngle,
        liftSlope,
        maximumLift,
        rows,
        repairs,
        Optional.of(counts));
  }
}
