package trimwright.kernel.motion;

import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.hull.TouchingBoard;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;

/** Where what can meet the surface is, whatever the craft's attitude. */
final class MotionShape {
  private final Deck deck;
  private final TouchingBoard board;
  private final PlacedWing[] wings;
  private final double propellerAhead;
  private final double propellerAbove;
  private final boolean driven;
  private final double length;
  private final double middle;

  MotionShape(Craft craft) {
    deck = craft.deck();
    Board b = craft.rideCase().setup().board();
    length = b.length();
    middle = b.massCentreAhead() - b.track();
    board = new TouchingBoard(craft);
    wings = craft.wings().toArray(new PlacedWing[0]);
    Optional<Drive> drive = craft.rideCase().setup().drive();
    driven = drive.isPresent();
    propellerAhead = craft.podAhead();
    propellerAbove =
        drive.map(d -> d.heightAboveFuselage() + 0.5 * d.propellerDiameter()).orElse(0.0);
  }

  /** Height of the bow's bottom above the water there [m]. */
  double bow(Attitude at, double depth, double place, double time, WaterMotion water) {
    return board.bowAbove(at) - depth - water.height(place + board.bowAhead(at), time);
  }

  /** Height of the stern's bottom above the water there [m]. */
  double stern(Attitude at, double depth, double place, double time, WaterMotion water) {
    return board.sternAbove(at) - depth - water.height(place + board.sternAhead(at), time);
  }

  /** Least depth of the wings' quarter chords [m]. */
  double wings(Attitude at, double depth, double place, double time, WaterMotion water) {
    double least = Double.POSITIVE_INFINITY;
    for (PlacedWing wing : wings) {
      for (Station s : wing.shape().stations()) {
        double ahead = wing.ahead() + s.ahead();
        double above = wing.above() + s.above();
        least = Math.min(least, under(at, ahead, above, depth, place, time, water));
      }
    }
    return least;
  }

  /** Depth of the propeller's upper blade tip [m]. */
  double propeller(Attitude at, double depth, double place, double time, WaterMotion water) {
    return driven
        ? under(at, propellerAhead, propellerAbove, depth, place, time, water)
        : Double.POSITIVE_INFINITY;
  }

  private static double under(
      Attitude at,
      double ahead,
      double above,
      double depth,
      double place,
      double time,
      WaterMotion water) {
    double forward = ahead * at.cos() - above * at.sin();
    double up = ahead * at.sin() + above * at.cos();
    return depth + water.height(place + forward, time) - up;
  }

  /** How much deck is left ahead of or behind a place along it [m]; negative off the board. */
  double deckLeft(double along) {
    return 0.5 * length - Math.abs(along - middle);
  }

  /** Along the deck ahead of the mast's axis, of a point so far ahead of the datum [m]. */
  double alongDeck(double pitch, double ahead) {
    return (ahead - deck.footingAhead(pitch)) / Math.cos(pitch + deck.baseAngle());
  }

  /** Ahead of the datum, of a place along the deck [m]. */
  double aheadOfDatum(double pitch, double along) {
    return deck.footingAhead(pitch) + along * Math.cos(pitch + deck.baseAngle());
  }

  double baseAngle() {
    return deck.baseAngle();
  }
}
