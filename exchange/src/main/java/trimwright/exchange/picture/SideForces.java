package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.TrimPoint;

/** The forces that the side view shows, the most important first. */
final class SideForces {
  private SideForces() {}

  static List<SideForce> of(
      RideCase rideCase, TrimPoint point, SideGeometry place, Palette palette, Measures measures) {
    List<SideForce> all = new ArrayList<>();
    all.add(
        foot(
            "front-foot-load",
            place.frontFoot(),
            point.frontLeg(),
            palette.front(),
            false,
            measures));
    all.add(
        foot("back-foot-load", place.backFoot(), point.backLeg(), palette.back(), true, measures));
    all.add(
        lift(
            "front-wing-lift",
            "front wing",
            place.frontWingRoot(),
            point.frontWingLift(),
            palette.front(),
            false,
            measures));
    all.add(
        lift(
            "stabilizer-lift",
            "stabilizer",
            place.stabilizerRoot(),
            point.stabilizerLift(),
            palette.back(),
            true,
            measures));
    all.add(thrust(rideCase, point, place, palette, measures));
    all.add(drag(rideCase, point, place, palette, measures));
    double gear = Unit.KILOGRAM_FORCE.toSi(place.gearMass());
    all.add(
        new SideForce(
            "gear-weight",
            place.gearMassCentre(),
            false,
            0,
            -gear,
            palette.ink(),
            false,
            List.of("weight of gear " + force(gear, measures), "gear " + force(gear, measures)),
            unit(Unit.NEWTON, measures),
            Label.Side.RIGHT));
    return all;
  }

  private static SideForce foot(
      String kind, Spot at, double kilograms, String colour, boolean dashed, Measures measures) {
    double newtons = Unit.KILOGRAM_FORCE.toSi(kilograms);
    return new SideForce(
        kind,
        at,
        true,
        0,
        -newtons,
        colour,
        dashed,
        List.of(whole(Unit.KILOGRAM, kilograms, measures)),
        unit(Unit.KILOGRAM, measures),
        Label.Side.ABOVE);
  }

  private static SideForce lift(
      String kind,
      String name,
      Spot at,
      double newtons,
      String colour,
      boolean dashed,
      Measures measures) {
    String size = force(Math.abs(newtons), measures);
    String way = newtons < 0 ? " down" : " up";
    return new SideForce(
        kind,
        at,
        false,
        0,
        newtons,
        colour,
        dashed,
        List.of(name + way + " " + size, size),
        unit(Unit.NEWTON, measures),
        newtons < 0 ? Label.Side.BELOW : Label.Side.RIGHT);
  }

  private static SideForce thrust(
      RideCase rideCase, TrimPoint point, SideGeometry place, Palette palette, Measures measures) {
    List<String> words = List.of("thrust " + force(point.thrust(), measures));
    if (rideCase.setup().drive().isPresent()) {
      Drive drive = rideCase.setup().drive().get();
      double angle = place.fuselagePitch() + drive.thrustAngle();
      double nose = drive.length() / 2;
      Spot at =
          place.body(
              rideCase.setup().podAhead() + nose * Math.cos(drive.thrustAngle()),
              drive.heightAboveFuselage() + nose * Math.sin(drive.thrustAngle()));
      double ahead = point.thrust() * Math.cos(angle);
      double up = point.thrust() * Math.sin(angle);
      return new SideForce(
          "thrust",
          at,
          false,
          ahead,
          up,
          palette.action(),
          false,
          words,
          unit(Unit.NEWTON, measures),
          Label.Side.RIGHT);
    }
    OptionalDouble pull = rideCase.pullAboveDeck();
    Spot at =
        pull.isPresent()
            ? place.deck(point.footPressureAheadOfMast(), 0).plus(0, pull.getAsDouble())
            : place.fuselageNose();
    return new SideForce(
        "thrust",
        at,
        false,
        point.thrust(),
        0,
        palette.action(),
        false,
        pull.isPresent() ? List.of("pull " + force(point.thrust(), measures)) : words,
        unit(Unit.NEWTON, measures),
        Label.Side.RIGHT);
  }

  private static SideForce drag(
      RideCase rideCase, TrimPoint point, SideGeometry place, Palette palette, Measures measures) {
    double low =
        rideCase.setup().drive().map(d -> d.heightAboveFuselage() + d.diameter() / 2).orElse(0.0);
    // Half way up what is wet of the bare mast, where the arrow crosses nothing.
    double wet = Math.max(low, rideCase.immersion() + rideCase.setup().frontWing().height());
    Spot at = place.body(-rideCase.setup().mast().chord() / 2, (low + wet) / 2);
    return new SideForce(
        "drag",
        at,
        false,
        -point.drag(),
        0,
        palette.ink(),
        false,
        List.of("drag " + force(point.drag(), measures)),
        unit(Unit.NEWTON, measures),
        Label.Side.LEFT);
  }

  private static String force(double newtons, Measures measures) {
    return whole(Unit.NEWTON, newtons, measures);
  }

  private static String whole(Unit carried, double si, Measures measures) {
    return CurvePanel.signed(measures.unit(carried).fromSi(si), 0);
  }

  private static String unit(Unit carried, Measures measures) {
    return measures.unit(carried).symbol();
  }
}
