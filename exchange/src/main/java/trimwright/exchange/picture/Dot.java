package trimwright.exchange.picture;

/**
 * A place in a picture.
 *
 * @param x from the left [px]
 * @param y from the top [px]
 */
record Dot(double x, double y) {
  double distance(Dot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
