package trimwright.desk;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import trimwright.exchange.read.WingFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.SectionCode;
import trimwright.exchange.write.WingTable;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.WingAlone;
import trimwright.kernel.surface.WingCoefficients;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.water.Water;

/** One wing alone. Holds the wing's work space: not safe for use by several threads at once. */
public final class WingStudy {
  /** Halvings of the angle in the search for stall: from 45 degrees to under a thousandth. */
  private static final int HALVINGS = 16;

  private final WingFile file;
  private final OptionalDouble immersion;
  private final boolean inviscid;
  private final WingAlone wing;

  private WingStudy(WingFile file, OptionalDouble immersion, boolean inviscid) {
    this.file = Objects.requireNonNull(file, "file");
    this.immersion = Objects.requireNonNull(immersion, "immersion");
    this.inviscid = inviscid;
    this.wing = WingAlone.of(file.shape(), file.finish(), immersion, LatticeSize.FINE, inviscid);
  }

  /**
   * A study of one wing.
   *
   * @param file the wing as it was read
   * @param immersion depth of the root's quarter chord below the surface [m]; empty for deep water
   * @param inviscid whether friction, and so its drag and stall, is left out
   * @return its study
   */
  public static WingStudy of(WingFile file, OptionalDouble immersion, boolean inviscid) {
    return new WingStudy(file, immersion, inviscid);
  }

  /**
   * The wing over a range of angles.
   *
   * @param range angles of the root's chord line to the stream
   * @param speed through the water [m/s], above 0
   * @param water the water
   * @return what the wing document holds; the largest lift coefficient is the largest at which no
   *     strip of the wing has stalled
   */
  public WingTable table(AngleRange range, double speed, Water water) {
    List<WingCoefficients> points =
        range.list().stream().map(angle -> wing.at(angle, speed, water)).toList();
    WingShape shape = file.shape();
    return new WingTable(
        file.name(),
        file.digest(),
        inviscid ? SectionCode.INVISCID : SectionCode.of(shape.stations().get(0).section()),
        speed,
        immersion,
        shape.area(),
        shape.span(),
        wing.zeroLiftAngle(),
        wing.liftSlope(),
        wing.momentSlope(),
        wing.inducedDragFactor(),
        inviscid ? OptionalDouble.empty() : largestLift(speed, water),
        points.stream().map(WingStudy::row).toList());
  }

  /** Lift where the first strip stalls; empty when none does up to the largest angle. */
  private OptionalDouble largestLift(double speed, Water water) {
    double attached = wing.zeroLiftAngle();
    double stalled = Unit.DEGREE.toSi(AngleRange.LARGEST_DEGREES);
    if (wing.at(attached, speed, water).stalled() || !wing.at(stalled, speed, water).stalled()) {
      return OptionalDouble.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (attached + stalled);
      if (wing.at(middle, speed, water).stalled()) {
        stalled = middle;
      } else {
        attached = middle;
      }
    }
    return OptionalDouble.of(wing.at(attached, speed, water).lift());
  }

  private static PolarRow row(WingCoefficients point) {
    return new PolarRow(
        point.angleOfAttack(),
        point.lift(),
        point.drag(),
        point.moment(),
        point.minimumPressure(),
        !point.stalled() && point.converged());
  }
}
