package trimwright.kernel.hull;

import java.util.Optional;

/**
 * The trims of a board on the water at one speed: that of least drag, and where the feet may press
 * so that the trim stays workable.
 *
 * @param best state of least drag
 * @param feet see {@link RunPoint#feet}
 */
record TrimChoice(WaterState best, Optional<FootRange> feet) {
  /** Trims looked at. */
  private static final int TRIMS = 9;

  /** The same feet with another state. */
  TrimChoice withBest(WaterState other) {
    return new TrimChoice(other, feet);
  }

  /** Chooses among the trims within the limits at which the board is on the water. */
  static TrimChoice of(WaterBalance.AtSpeed here, TakeOffLimits limits) {
    double from = limits.leastTrim();
    double step = (limits.mostTrim() - from) / (TRIMS - 1);
    WaterState[] at = new WaterState[TRIMS];
    int count = 0;
    int least = 0;
    while (count < TRIMS) {
      WaterState state = here.at(from + count * step);
      if (state.sternDepth() == 0 && count > 0) {
        // Steeper than this it flies.
        break;
      }
      at[count] = state;
      if (state.drag() < at[least].drag()) {
        least = count;
      }
      count++;
    }
    WaterState best = at[least];
    if (least > 0 && least < count - 1) {
      double place = lowest(at[least - 1].drag(), best.drag(), at[least + 1].drag());
      WaterState between = here.at(best.trim() + place * step);
      if (between.drag() < best.drag()) {
        best = between;
      }
    }
    return new TrimChoice(best, feet(here, at, count, least));
  }

  /** Where the parabola through three values at -1, 0 and 1 is lowest. */
  private static double lowest(double before, double middle, double after) {
    double bend = before - 2 * middle + after;
    return bend > 0 ? 0.5 * (before - after) / bend : 0;
  }

  private static Optional<FootRange> feet(
      WaterBalance.AtSpeed here, WaterState[] at, int count, int least) {
    if (surplus(here, at[least]) < 0) {
      return Optional.empty();
    }
    double low = at[least].footPressure();
    double high = low;
    for (int way = -1; way <= 1; way += 2) {
      for (int i = least + way; i >= 0 && i < count; i += way) {
        double over = surplus(here, at[i]);
        double foot = at[i].footPressure();
        if (over < 0) {
          double before = surplus(here, at[i - way]);
          double inner = at[i - way].footPressure();
          foot = inner + before / (before - over) * (foot - inner);
        }
        low = Math.min(low, foot);
        high = Math.max(high, foot);
        if (over < 0) {
          break;
        }
      }
    }
    return Optional.of(new FootRange(low, high));
  }

  private static double surplus(WaterBalance.AtSpeed here, WaterState state) {
    return Double.isNaN(here.greatest()) ? 0 : state.level(here.greatest()) - state.drag();
  }
}
