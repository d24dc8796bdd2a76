package trimwright.fitting.wish;

import static trimwright.fitting.wish.Grade.from;
import static trimwright.fitting.wish.Grade.upTo;

/**
 * Grades and weights of each kind of riding. All are chosen by judgement, none has a source; their
 * reasons stand in docs/wishes.md.
 */
final class ChosenWishes {
  private static final double KMH = 1 / 3.6;
  private static final double DEGREE = Math.toRadians(1);
  private static final double KM = 1000;

  private ChosenWishes() {}

  static Grade grade(RidingKind kind, Wish wish) {
    return switch (wish) {
      case LEVEL -> upTo(0.5 * DEGREE, 2.5 * DEGREE);
      case FEET -> upTo(0.02, 0.1);
      case GROWTH -> upTo(per(kind, 0.004, 0.006, 0.01, 0.01) / KMH, 0.015 / KMH);
      case TAKE_OFF -> upTo(per(kind, 10.5, 11.5, 12.5, 11.5) * KMH, 4 * KMH);
      case STALL -> from(per(kind, 10, 9, 8, 8) * DEGREE, 4 * DEGREE);
      case MANNERS ->
          new Grade(
              per(kind, 0, 0.6, 1, 1.5) * DEGREE,
              per(kind, 1.2, 1.6, 2.2, 3) * DEGREE,
              per(kind, 0.8, 1, 1.2, 1.5) * DEGREE);
      case TURN -> from(per(kind, 25, 35, 50, 55) * DEGREE, 15 * DEGREE);
      case RANGE -> from(per(kind, 20, 25, 25, 18) * KM, 10 * KM);
      case GEAR_MASS -> upTo(per(kind, 40, 35, 27, 25), 10);
      case FEET_MOVED -> upTo(0.01, 0.05);
    };
  }

  static int weight(RidingKind kind, Wish wish) {
    return (int)
        switch (wish) {
          case LEVEL -> 3;
          case FEET -> per(kind, 3, 4, 3, 3);
          case GROWTH -> per(kind, 4, 3, 3, 2);
          case TAKE_OFF -> per(kind, 4, 3, 2, 3);
          case STALL -> per(kind, 4, 3, 2, 2);
          case MANNERS -> per(kind, 4, 3, 3, 3);
          case TURN -> per(kind, 1, 2, 4, 4);
          case RANGE -> per(kind, 1, 2, 2, 1);
          case GEAR_MASS -> per(kind, 0, 1, 2, 3);
          case FEET_MOVED -> per(kind, 2, 2, 1, 1);
        };
  }

  private static double per(
      RidingKind kind, double firstFlights, double linking, double carving, double surf) {
    return switch (kind) {
      case FIRST_FLIGHTS -> firstFlights;
      case LINKING -> linking;
      case CARVING -> carving;
      case SURF -> surf;
    };
  }
}
