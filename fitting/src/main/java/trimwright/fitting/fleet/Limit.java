package trimwright.fitting.fleet;

/**
 * A limit on items: the sum of the weights of those that are there.
 *
 * @param items limited ones
 * @param weights of each
 * @param most largest sum
 */
record Limit(int[] items, double[] weights, double most) {}
