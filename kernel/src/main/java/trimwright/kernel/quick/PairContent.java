package trimwright.kernel.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.water.Water;

/**
 * All that a {@link PairTable} is computed from, number for number: crafts with equal content have
 * the same table bit for bit. For whoever keeps tables. Each list is preceded by its length, so
 * that nothing runs into its neighbour.
 */
public final class PairContent {
  /** Where a section is asked what it does, beside its outline and its straight line [1]. */
  private static final double[] REYNOLDS = {2e5, 1e6};

  private static final double[] ANGLES = {-0.1, 0, 0.1, 0.3};

  private PairContent() {}

  /**
   * The content.
   *
   * @param craft the craft; its shim is not in it
   * @return numbers, all finite
   */
  public static double[] of(Craft craft) {
    RideCase c = craft.rideCase();
    Water water = c.water();
    Fuselage f = c.setup().fuselage();
    DoubleStream.Builder out = DoubleStream.builder();
    out.add(c.immersion())
        .add(water.density())
        .add(water.kinematicViscosity())
        .add(f.length())
        .add(f.diameter())
        .add(c.setup().stabilizer().setting());
    // The second wing stands with its shim; its setting is all that counts here.
    PlacedWing front = craft.wings().get(0);
    PlacedWing tail = craft.wings().get(1);
    out.add(front.incidence());
    write(front, c.setup().frontWing().finish(), out);
    write(tail, c.setup().stabilizer().finish(), out);
    return out.build().toArray();
  }

  private static void write(PlacedWing wing, Finish finish, DoubleStream.Builder out) {
    out.add(wing.ahead())
        .add(wing.above())
        .add(wing.size().stripsPerHalf())
        .add(wing.size().panelsAlongChord())
        .add(wing.size().even() ? 1 : 0)
        .add(finish.ordinal())
        .add(wing.shape().span());
    List<Section> sections = new ArrayList<>();
    List<Station> stations = wing.shape().stations();
    out.add(stations.size());
    for (Station s : stations) {
      int known = sections.indexOf(s.section());
      if (known < 0) {
        known = sections.size();
        sections.add(s.section());
      }
      out.add(s.fraction()).add(s.chord()).add(s.ahead()).add(s.above()).add(s.twist()).add(known);
    }
    out.add(sections.size());
    for (Section section : sections) {
      write(section, finish, out);
    }
  }

  private static void write(Section section, Finish finish, DoubleStream.Builder out) {
    double[] x = section.shape().x();
    double[] y = section.shape().y();
    out.add(x.length);
    for (int i = 0; i < x.length; i++) {
      out.add(x[i]).add(y[i]);
    }
    out.add(section.zeroLiftAngle())
        .add(section.liftSlope())
        .add(section.momentAtZeroLift())
        .add(section.aerodynamicCentre());
    // An outline does not tell all: sections may be changed for asking what an error matters.
    for (double reynolds : REYNOLDS) {
      Polar polar = section.polar(reynolds, finish);
      out.add(polar.angleOfMaximumLift()).add(polar.angleOfMinimumLift());
      for (double angle : ANGLES) {
        out.add(polar.lift(angle)).add(polar.dragAt(angle)).add(polar.moment(angle));
      }
    }
  }
}
