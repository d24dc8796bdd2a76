package trimwright.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.Digest;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.SectionTable;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PanelMethod;
import trimwright.kernel.section.PointKind;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionPoint;
import trimwright.kernel.section.ViscousSection;

/** A wing section alone, in two-dimensional flow. Immutable. */
public final class SectionStudy {
  /** Angles from no lift within which a polar's slope is its mean [rad]. */
  private static final double SLOPE_HALF_RANGE = Math.toRadians(4);

  /** What turning degrees into radians may do to an angle [rad]. */
  private static final double ROUNDING = 1e-9;

  private final Section section;
  private final Finish finish;
  private final boolean inviscid;
  private final Optional<PolarTable> layers;

  private SectionStudy(
      Section section, Finish finish, boolean inviscid, Optional<PolarTable> layers) {
    this.section = Objects.requireNonNull(section, "section");
    this.finish = Objects.requireNonNull(finish, "finish");
    this.inviscid = inviscid;
    this.layers = layers;
  }

  /**
   * A study of one section.
   *
   * @param section the section; one on polars by boundary layers is shown by them
   * @param finish state of its surface
   * @param inviscid whether friction, and so drag and stall, is left out
   * @return its study
   */
  public static SectionStudy of(Section section, Finish finish, boolean inviscid) {
    Optional<PolarTable> layers =
        !inviscid && section instanceof ViscousSection viscous
            ? Optional.of(viscous.table())
            : Optional.empty();
    return new SectionStudy(section, finish, inviscid, layers);
  }

  /**
   * The section over a range of angles.
   *
   * <p>With friction, rows past a lift limit say that the computation does not hold there; what
   * stands in them is described at {@link Section#at}. Without friction every angle holds.
   *
   * @param range angles of the chord line to the stream
   * @param reynolds Reynolds number on the chord [1], above 0
   * @return what the section document holds
   */
  public SectionTable table(AngleRange range, double reynolds) {
    if (layers.isPresent()) {
      return layered(layers.get().at(reynolds, finish), range, reynolds);
    }
    return inviscid ? inviscid(range, reynolds) : viscous(range, reynolds);
  }

  private SectionTable layered(
      trimwright.kernel.section.PolarRow polar, AngleRange range, double reynolds) {
    trimwright.kernel.section.PolarRow.Counts counts = polar.counts();
    return new SectionTable(
            section.name(),
            digest(reynolds),
            reynolds,
            polar.zeroLiftAngle(),
            polar.meanSlope(SLOPE_HALF_RANGE),
            OptionalDouble.of(polar.maximumLift()),
            range.list().stream().map(angle -> row(angle, polar)).toList(),
            List.of())
        .withLayers(
            new SectionTable.Layers(counts.computed(), counts.bridged(), counts.extended()));
  }

  /** Beyond the angles of the polar there is no number at all. */
  private static PolarRow row(double angle, trimwright.kernel.section.PolarRow polar) {
    boolean reached = angle >= polar.from() - ROUNDING && angle <= polar.to() + ROUNDING;
    if (!reached) {
      return new PolarRow(angle, Double.NaN, Double.NaN, Double.NaN, Double.NaN, false);
    }
    PointKind kind = polar.kind(angle);
    return new PolarRow(
        angle,
        polar.lift(angle),
        polar.drag(angle),
        polar.moment(angle),
        polar.minimumPressure(angle),
        kind == PointKind.COMPUTED
            && angle >= polar.angleOfMinimumLift()
            && angle <= polar.angleOfMaximumLift(),
        Optional.of(kind));
  }

  private SectionTable inviscid(AngleRange range, double reynolds) {
    PanelMethod flow = PanelMethod.of(section.shape());
    return new SectionTable(
        section.name(),
        digest(reynolds),
        reynolds,
        flow.zeroLiftAngle(),
        flow.liftSlope(),
        OptionalDouble.empty(),
        range.list().stream().map(angle -> row(angle, flow)).toList(),
        List.of());
  }

  private static PolarRow row(double angle, PanelMethod flow) {
    // Without friction a closed outline has no drag (d'Alembert).
    return new PolarRow(
        angle,
        flow.lift(angle),
        0,
        flow.quarterChordMoment(angle),
        flow.minimumPressure(angle),
        true);
  }

  private SectionTable viscous(AngleRange range, double reynolds) {
    return new SectionTable(
        section.name(),
        digest(reynolds),
        reynolds,
        section.zeroLiftAngle(),
        section.liftSlope(),
        OptionalDouble.of(section.maximumLift(reynolds, finish)),
        range.list().stream().map(angle -> row(angle, reynolds)).toList(),
        List.of());
  }

  private PolarRow row(double angle, double reynolds) {
    SectionPoint point = section.at(angle, reynolds, finish);
    return new PolarRow(
        angle,
        point.lift(),
        point.drag(),
        point.quarterChordMoment(),
        point.minimumPressure(),
        point.attached());
  }

  private String digest(double reynolds) {
    return Digest.of(
        String.format(
            Locale.ROOT,
            "section %s %s %s %s %s%s",
            Arrays.toString(section.shape().x()),
            Arrays.toString(section.shape().y()),
            reynolds,
            finish,
            inviscid,
            layers.isPresent() ? " layers " + PolarTable.VERSION : ""));
  }
}
