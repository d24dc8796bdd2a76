package trimwright.kernel.section;

/**
 * A {@link CorrelatedSection} at one Reynolds number.
 *
 * <p>Lift follows the slope up to 0.6 of the limit and eases into the limit, which it reaches where
 * the slope asks for 1.2 of it: 0.8 % low at 80 % of the limit and 6 % low where the two meet (the
 * shape of NACA 0012's lift curve at 0.36 million, SAND80-2114, from memory). Beyond: {@link
 * DeepStall}. Drag is a parabola over lift about the ideal lift and what the approach to the limit
 * adds.
 */
final class CorrelatedPolar implements Polar {
  /**
   * Drag that the approach to the lift limit adds at the limit itself [1]; from memory of the
   * 0012's polars.
   */
  private static final double DRAG_AT_LIMIT = 0.010;

  /** Share of the lift limit from which that drag begins [1]. */
  private static final double LIMIT_ONSET = 0.8;

  /** Share of the limit up to which lift is straight, and what the slope asks for at the limit. */
  private static final double STRAIGHT = 0.6;

  private static final double EASED = 1.2;

  /**
   * What the section is at every Reynolds number.
   *
   * @param zeroLiftAngle [rad]
   * @param liftSlope [1/rad]
   * @param momentAtZeroLift about the quarter chord [1]
   * @param aerodynamicCentre behind the leading edge [chords]
   * @param idealLift lift coefficient of least drag [1]
   */
  record Line(
      double zeroLiftAngle,
      double liftSlope,
      double momentAtZeroLift,
      double aerodynamicCentre,
      double idealLift) {}

  private final Line line;
  private final double least;
  private final double rise;
  private final double maximumLift;
  private final double minimumLift;
  private DeepStall upwards;
  private DeepStall downwards;

  /**
   * A polar.
   *
   * @param line the section at every Reynolds number
   * @param least drag at the ideal lift [1]
   * @param rise of drag with the square of the distance to it [1]
   * @param maximumLift lift limit upwards, above 0 [1]
   * @param minimumLift lift limit downwards, below 0 [1]
   */
  CorrelatedPolar(Line line, double least, double rise, double maximumLift, double minimumLift) {
    this.line = line;
    this.least = least;
    this.rise = rise;
    this.maximumLift = maximumLift;
    this.minimumLift = minimumLift;
  }

  @Override
  public double lift(double angle) {
    double asked = asked(angle);
    double limit = limit(asked);
    double share = asked / limit;
    if (share <= STRAIGHT) {
      return asked;
    }
    if (share <= EASED) {
      double t = (share - STRAIGHT) / (EASED - STRAIGHT);
      return limit * (STRAIGHT + (EASED - STRAIGHT) * t * (1 - t * t / 3));
    }
    return Math.signum(asked) * deep(limit).lift(fromNoLift(angle));
  }

  @Override
  public double slope(double angle) {
    double asked = asked(angle);
    double limit = limit(asked);
    double share = asked / limit;
    if (share <= STRAIGHT) {
      return line.liftSlope;
    }
    if (share <= EASED) {
      double t = (share - STRAIGHT) / (EASED - STRAIGHT);
      return line.liftSlope * (1 - t * t);
    }
    return deep(limit).slope(fromNoLift(angle));
  }

  @Override
  public double dragAt(double angle) {
    double asked = asked(angle);
    double limit = limit(asked);
    return asked / limit <= EASED ? drag(lift(angle)) : deep(limit).drag(fromNoLift(angle));
  }

  @Override
  public double moment(double angle) {
    double asked = asked(angle);
    double limit = limit(asked);
    double attached = line.momentAtZeroLift + lift(angle) * (0.25 - line.aerodynamicCentre);
    if (asked / limit <= EASED) {
      return attached;
    }
    double up = Math.signum(asked);
    return up * deep(limit).moment(fromNoLift(angle), up * attached);
  }

  @Override
  public double angleOfMaximumLift() {
    return line.zeroLiftAngle + EASED * maximumLift / line.liftSlope;
  }

  @Override
  public double angleOfMinimumLift() {
    return line.zeroLiftAngle + EASED * minimumLift / line.liftSlope;
  }

  @Override
  public double drag(double liftCoefficient) {
    double away = liftCoefficient - line.idealLift;
    double attached = least + rise * away * away;
    double beyond = (liftCoefficient / limit(liftCoefficient) - LIMIT_ONSET) / (1 - LIMIT_ONSET);
    if (!(beyond > 0)) {
      return attached;
    }
    // Starts with the cube, so that slope and curvature are continuous; 1 at the limit; ends as a
    // straight line, so that lift asked for far beyond the limit does not end in absurd drag.
    double square = beyond * beyond;
    return attached + DRAG_AT_LIMIT * 1.25 * beyond * square / (1 + 0.25 * square);
  }

  @Override
  public double maximumLift() {
    return maximumLift;
  }

  @Override
  public double minimumLift() {
    return minimumLift;
  }

  /** Lift that the slope asks for [1]. */
  private double asked(double angle) {
    return line.liftSlope * (angle - line.zeroLiftAngle);
  }

  private double fromNoLift(double angle) {
    return Math.abs(angle - line.zeroLiftAngle);
  }

  private double limit(double lift) {
    return lift >= 0 ? maximumLift : minimumLift;
  }

  /** Made when first asked for: most strips never stall. Whoever makes it makes the same. */
  private DeepStall deep(double limit) {
    DeepStall made = limit > 0 ? upwards : downwards;
    if (made == null) {
      double size = Math.abs(limit);
      made = new DeepStall(size, EASED * size / line.liftSlope, drag(limit));
      if (limit > 0) {
        upwards = made;
      } else {
        downwards = made;
      }
    }
    return made;
  }
}
