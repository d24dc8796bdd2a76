package trimwright.kernel.section;

/**
 * A {@link ViscousSection} at one Reynolds number: the table's curves between the computed limits
 * of lift, beyond them {@link DeepStall}, which starts level at the limit as the curve ends there.
 * What was computed past the limit, without anything to hold it against, is not used. Immutable.
 */
final class ViscousPolar implements Polar {
  private static final int HALVINGS = 40;

  private final PolarRow row;
  private final double zero;
  private final double highest;
  private final double lowest;
  private final DeepStall upwards;
  private final DeepStall downwards;

  ViscousPolar(PolarRow row) {
    this.row = row;
    zero = row.zeroLiftAngle();
    highest = row.angleOfMaximumLift();
    lowest = row.angleOfMinimumLift();
    upwards = new DeepStall(row.lift(highest), highest - zero, row.drag(highest));
    downwards = new DeepStall(-row.lift(lowest), zero - lowest, row.drag(lowest));
  }

  @Override
  public double lift(double angle) {
    if (angle > highest) {
      return upwards.lift(angle - zero);
    }
    return angle < lowest ? -downwards.lift(zero - angle) : row.lift(angle);
  }

  @Override
  public double slope(double angle) {
    if (angle > highest) {
      return upwards.slope(angle - zero);
    }
    return angle < lowest ? downwards.slope(zero - angle) : row.slope(angle);
  }

  @Override
  public double dragAt(double angle) {
    if (angle > highest) {
      return upwards.drag(angle - zero);
    }
    return angle < lowest ? downwards.drag(zero - angle) : row.drag(angle);
  }

  @Override
  public double moment(double angle) {
    if (angle > highest) {
      return upwards.moment(angle - zero, row.moment(highest));
    }
    return angle < lowest
        ? -downwards.moment(zero - angle, -row.moment(lowest))
        : row.moment(angle);
  }

  @Override
  public double angleOfMaximumLift() {
    return highest;
  }

  @Override
  public double angleOfMinimumLift() {
    return lowest;
  }

  /** {@inheritDoc} Beyond either limit it stays as it is there. */
  @Override
  public double drag(double liftCoefficient) {
    double low = lowest;
    double high = highest;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (row.lift(middle) < liftCoefficient) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return row.drag(0.5 * (low + high));
  }

  @Override
  public double maximumLift() {
    return row.lift(highest);
  }

  @Override
  public double minimumLift() {
    return row.lift(lowest);
  }
}
