package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.rig.RideCase;

/**
 * Which part of the world the side view shows, and how large. Waterline and scale hang on the case
 * and not on the trim point, so that nothing jumps while a speed or a setting changes; only a trim
 * outside the usual widens the frame.
 */
final class SideFrame {
  /** Pitch that the frame always has room for [rad]. */
  private static final double USUAL_PITCH = Math.toRadians(6);

  /** Length of an arrow as long as the whole weight, over the deck's height above the fuselage. */
  private static final double WEIGHT_ARROW = 0.55;

  private static final double SHORTEST_WEIGHT_ARROW = 0.3;
  private static final double LONGEST_WEIGHT_ARROW = 0.6;

  private final double pixelsPerMetre;
  private final double metresPerNewton;
  private final double left;
  private final double top;
  private final double originX;
  private final double originY;
  private final double waterline;

  private SideFrame(
      double pixelsPerMetre,
      double metresPerNewton,
      double[] extent,
      double originX,
      double originY,
      double waterline) {
    this.pixelsPerMetre = pixelsPerMetre;
    this.metresPerNewton = metresPerNewton;
    this.left = extent[0];
    this.top = extent[3];
    this.originX = originX;
    this.originY = originY;
    this.waterline = waterline;
  }

  static SideFrame of(
      RideCase rideCase, SideGeometry now, List<SideForce> forces, PictureStyle style) {
    double weight = Unit.KILOGRAM_FORCE.toSi(rideCase.rider().allMass() + now.gearMass());
    double deckHeight = rideCase.setup().mast().length() + rideCase.setup().board().thickness();
    double arrow =
        Math.max(SHORTEST_WEIGHT_ARROW, Math.min(LONGEST_WEIGHT_ARROW, WEIGHT_ARROW * deckHeight));
    double scale = arrow / weight;
    double riderArrow = scale * Unit.KILOGRAM_FORCE.toSi(rideCase.rider().allMass());

    // Heights in the frame are counted from the water, which stays where it is.
    double[] extent = {0, 0, 0, 0};
    for (double pitch : new double[] {-USUAL_PITCH, 0, USUAL_PITCH}) {
      SideGeometry usual = new SideGeometry(rideCase, pitch);
      widen(extent, shapes(usual), usual.waterline());
      for (Spot foot : List.of(usual.frontFoot(), usual.backFoot())) {
        widen(extent, List.of(foot.plus(0, 0.75 * riderArrow)), usual.waterline());
      }
    }
    widen(extent, shapes(now), now.waterline());
    for (SideForce force : forces) {
      widen(extent, List.of(force.tail(scale), force.head(scale)), now.waterline());
    }
    double line = TextSize.LINE * style.fontSize();
    double side = 0.06 * style.width();
    double above = line + 6;
    double below = 0.8 * line;
    double wide = extent[1] - extent[0];
    double high = extent[3] - extent[2];
    double pixels =
        Math.min((style.width() - 2 * side) / wide, (style.height() - above - below) / high);
    double originX = (style.width() - wide * pixels) / 2;
    double originY = above + (style.height() - above - below - high * pixels) / 2;
    return new SideFrame(pixels, scale, extent, originX, originY, now.waterline());
  }

  private static List<Spot> shapes(SideGeometry place) {
    List<Spot> all = new ArrayList<>(place.board());
    all.addAll(place.mast());
    all.addAll(place.fuselage());
    all.addAll(place.frontWingShadow());
    all.addAll(place.stabilizerShadow());
    place.findDrive().ifPresent(all::addAll);
    place.findPropeller().ifPresent(all::addAll);
    all.add(new Spot(0, place.waterline()));
    return all;
  }

  private static void widen(double[] extent, List<Spot> spots, double waterline) {
    for (Spot spot : spots) {
      extent[0] = Math.min(extent[0], spot.ahead());
      extent[1] = Math.max(extent[1], spot.ahead());
      extent[2] = Math.min(extent[2], spot.above() - waterline);
      extent[3] = Math.max(extent[3], spot.above() - waterline);
    }
  }

  Dot dot(Spot spot) {
    return new Dot(
        originX + (spot.ahead() - left) * pixelsPerMetre,
        originY + (top - (spot.above() - waterline)) * pixelsPerMetre);
  }

  List<Dot> dots(List<Spot> spots) {
    return spots.stream().map(this::dot).toList();
  }

  double waterY() {
    return dot(new Spot(0, waterline)).y();
  }

  double pixelsPerMetre() {
    return pixelsPerMetre;
  }

  double metresPerNewton() {
    return metresPerNewton;
  }

  double pixelsPerNewton() {
    return pixelsPerMetre * metresPerNewton;
  }
}
