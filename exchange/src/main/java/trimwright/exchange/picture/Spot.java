package trimwright.exchange.picture;

/**
 * A place in the plane of symmetry, in level axes from the datum (mast's axis on fuselage's axis).
 *
 * @param ahead [m]
 * @param above [m]
 */
record Spot(double ahead, double above) {
  Spot plus(double furtherAhead, double higher) {
    return new Spot(ahead + furtherAhead, above + higher);
  }

  double distance(Spot other) {
    return Math.hypot(ahead - other.ahead, above - other.above);
  }
}
