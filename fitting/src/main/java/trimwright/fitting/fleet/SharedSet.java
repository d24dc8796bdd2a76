package trimwright.fitting.fleet;

/**
 * A set that riders share.
 *
 * @param set the hardware's place in the table
 * @param persons whom it fits
 * @param worst largest mark among them [1]
 * @param mean mean mark over them [1]
 */
public record SharedSet(int set, int persons, double worst, double mean) {}
