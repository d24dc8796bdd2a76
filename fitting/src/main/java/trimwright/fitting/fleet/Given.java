package trimwright.fitting.fleet;

/**
 * What a rider is given.
 *
 * @param rider the line's place in the table
 * @param set the hardware's place in the table
 * @param mark of the rider's best card on it [1]
 */
public record Given(int rider, int set, double mark) {}
