package trimwright.exchange.picture;

/**
 * An upright rectangle in a picture.
 *
 * @param x left [px]
 * @param y top [px]
 * @param width [px]
 * @param height [px]
 */
record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  boolean holds(Box other) {
    return other.x >= x && other.right() <= right() && other.y >= y && other.bottom() <= bottom();
  }

  Box grown(double by) {
    return new Box(x - by, y - by, width + 2 * by, height + 2 * by);
  }

  /** The point of this box that is nearest to a place. */
  Dot nearest(Dot place) {
    return new Dot(
        Math.max(x, Math.min(right(), place.x())), Math.max(y, Math.min(bottom(), place.y())));
  }
}
