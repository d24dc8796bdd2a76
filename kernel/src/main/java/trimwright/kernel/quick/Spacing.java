package trimwright.kernel.quick;

/**
 * Evenly spaced nodes.
 *
 * @param from first
 * @param to last
 * @param count at least four
 */
record Spacing(double from, double to, int count) {

  /**
   * Weights of the cubic through the four nodes around.
   *
   * @param x argument between first and last
   * @param weights receives them
   * @return node of the first weight
   */
  int weights(double x, double[] weights) {
    double place = (x - from) * (count - 1) / (to - from);
    int first = Math.max(0, Math.min(count - 4, (int) place - 1));
    double t = place - first;
    double t1 = t - 1;
    double t2 = t - 2;
    double t3 = t - 3;
    weights[0] = -t1 * t2 * t3 / 6;
    weights[1] = t * t2 * t3 / 2;
    weights[2] = -t * t1 * t3 / 2;
    weights[3] = t * t1 * t2 / 6;
    return first;
  }
}
