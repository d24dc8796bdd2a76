package trimwright.desk;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import trimwright.exchange.read.Digest;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.SectionTable;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PanelMethod;
import trimwright.kernel.section.Section;

/** A wing section alone, in two-dimensional flow. Immutable. */
public final class SectionStudy {
  private static final double QUARTER_CHORD = 0.25;

  private final Section section;
  private final Finish finish;
  private final boolean inviscid;

  private SectionStudy(Section section, Finish finish, boolean inviscid) {
    this.section = Objects.requireNonNull(section, "section");
    this.finish = Objects.requireNonNull(finish, "finish");
    this.inviscid = inviscid;
  }

  /**
   * A study of one section.
   *
   * @param section the section
   * @param finish state of its surface
   * @param inviscid whether friction, and so drag and stall, is left out
   * @return its study
   */
  public static SectionStudy of(Section section, Finish finish, boolean inviscid) {
    return new SectionStudy(section, finish, inviscid);
  }

  /**
   * The section over a range of angles.
   *
   * <p>With friction, lift grows straight with the angle between the section's lift limits; past
   * one of them the lift stays at the limit, drag, moment and pressure are those at the limit, and
   * the row says that the computation does not hold there. Without friction every angle holds.
   *
   * @param range angles of the chord line to the stream
   * @param reynolds Reynolds number on the chord [1], above 0
   * @return what the section document holds
   */
  public SectionTable table(AngleRange range, double reynolds) {
    return inviscid ? inviscid(range, reynolds) : viscous(range, reynolds);
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
        range.list().stream().map(angle -> row(angle, flow)).toList());
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
    double highest = section.maximumLift(reynolds, finish);
    double lowest = section.minimumLift(reynolds, finish);
    return new SectionTable(
        section.name(),
        digest(reynolds),
        reynolds,
        section.zeroLiftAngle(),
        section.liftSlope(),
        OptionalDouble.of(highest),
        range.list().stream().map(angle -> row(angle, reynolds, lowest, highest)).toList());
  }

  private PolarRow row(double angle, double reynolds, double lowest, double highest) {
    double straight = section.liftSlope() * (angle - section.zeroLiftAngle());
    double lift = Math.min(Math.max(straight, lowest), highest);
    // Lift acts at the aerodynamic centre: ahead of the quarter chord it turns the nose up.
    double lever = QUARTER_CHORD - section.aerodynamicCentre();
    return new PolarRow(
        angle,
        lift,
        section.drag(lift, reynolds, finish),
        section.momentAtZeroLift() + lift * lever,
        section.minimumPressure(lift),
        straight == lift);
  }

  private String digest(double reynolds) {
    return Digest.of(
        String.format(
            Locale.ROOT,
            "section %s %s %s %s %s",
            Arrays.toString(section.shape().x()),
            Arrays.toString(section.shape().y()),
            reynolds,
            finish,
            inviscid));
  }
}
