package trimwright.exchange.picture;

/**
 * A turn about the origin, its sine and cosine worked out once for many places.
 *
 * @param cos of the angle, nose up positive [1]
 * @param sin of it [1]
 */
record Turn(double cos, double sin) {
  static Turn by(double angle) {
    return new Turn(Math.cos(angle), Math.sin(angle));
  }

  /** Where a place comes to lie. */
  Spot of(double ahead, double above) {
    return new Spot(ahead * cos - above * sin, ahead * sin + above * cos);
  }

  Spot of(Spot spot) {
    return of(spot.ahead(), spot.above());
  }

  /** One turn after another. */
  Turn then(Turn next) {
    return new Turn(cos * next.cos - sin * next.sin, sin * next.cos + cos * next.sin);
  }
}
