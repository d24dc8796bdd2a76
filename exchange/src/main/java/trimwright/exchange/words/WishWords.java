package trimwright.exchange.words;

import java.util.Locale;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;

/** Wishes in words, and their values in the units that people see. */
public final class WishWords {
  private WishWords() {}

  /** The name of a wish in a document. */
  public static String code(Wish wish) {
    return wish.name().toLowerCase(Locale.ROOT);
  }

  /** The name of its value in a document, unit included. */
  public static String key(Wish wish) {
    return switch (wish) {
      case LEVEL -> "off_level_deg";
      case FEET -> "off_wished_foot_share";
      case GROWTH -> "foot_share_growth_per_kmh";
      case TAKE_OFF -> "slowest_flight_kmh";
      case STALL -> "stall_margin_deg";
      case MANNERS -> "pitch_rate_deg_s";
      case TURN -> "tip_bank_deg";
      case RANGE -> "range_km";
      case GEAR_MASS -> "gear_mass_kg";
      case FEET_MOVED -> "feet_moved_mm";
    };
  }

  /** What people call it. */
  public static String title(Wish wish) {
    return switch (wish) {
      case LEVEL -> "Level deck";
      case FEET -> "Even on the feet";
      case GROWTH -> "Feet steady over speed";
      case TAKE_OFF -> "Early take-off";
      case STALL -> "Far from stall";
      case MANNERS -> "Calm or lively";
      case TURN -> "Room to lean";
      case RANGE -> "Range";
      case GEAR_MASS -> "Light gear";
      case FEET_MOVED -> "Usual stance";
    };
  }

  /** What its number is. */
  public static String meaning(Wish wish) {
    return switch (wish) {
      case LEVEL -> "how far the deck is from the wished pitch at the wished speed";
      case FEET -> "how far the front foot's part of the load is from the wished one, on average";
      case GROWTH -> "how much that part changes for each km/h";
      case TAKE_OFF -> "the slowest speed at which the wings carry everything";
      case STALL -> "the least nose-up change of pitch that is left to the stall";
      case MANNERS ->
          "the quickest turning of the deck within half a second of one centimetre of foot pressure";
      case TURN -> "the bank at which the upper wing tip comes too near to the surface";
      case RANGE -> "how far the battery carries at the wished speed";
      case GEAR_MASS -> "what board, battery and foil weigh together";
      case FEET_MOVED -> "how far both feet stand from where the rider likes them";
    };
  }

  /** The unit that its value is carried in; growth counts per such a unit of speed. */
  public static Unit unit(Wish wish) {
    return switch (wish) {
      case LEVEL, STALL, MANNERS, TURN -> Unit.DEGREE;
      case FEET, GROWTH -> Unit.RATIO;
      case TAKE_OFF -> Unit.KILOMETRE_PER_HOUR;
      case RANGE -> Unit.KILOMETRE;
      case GEAR_MASS -> Unit.KILOGRAM;
      case FEET_MOVED -> Unit.MILLIMETRE;
    };
  }

  /**
   * A value in the unit of {@link #key}.
   *
   * @param wish which
   * @param value in SI
   */
  public static double number(Wish wish, double value) {
    return wish == Wish.GROWTH ? Unit.KILOMETRE_PER_HOUR.toSi(value) : unit(wish).fromSi(value);
  }

  /** Decimals that a value is worth, in the unit of {@link #key}. */
  private static int decimals(Wish wish) {
    return switch (wish) {
      case LEVEL, STALL, MANNERS, TAKE_OFF, RANGE, GEAR_MASS -> 1;
      case FEET -> 2;
      case GROWTH -> 3;
      case TURN, FEET_MOVED -> 0;
    };
  }

  /**
   * A value as people read it, unit included.
   *
   * @param wish which
   * @param value in SI; NaN where there is none
   * @param measures in which units
   */
  public static String text(Wish wish, double value, Measures measures) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    return switch (wish) {
      case LEVEL, STALL, TURN -> Shown.decimals(number(wish, value), decimals(wish)) + "°";
      case MANNERS -> Shown.decimals(number(wish, value), decimals(wish)) + "°/s";
      case FEET -> Shown.decimals(100 * value, 0) + " %";
      case GROWTH -> growth(value, measures);
      case TAKE_OFF, RANGE, GEAR_MASS, FEET_MOVED -> shown(unit(wish), value, measures);
    };
  }

  private static String growth(double value, Measures measures) {
    Unit speed = measures.unit(Unit.KILOMETRE_PER_HOUR);
    return Shown.decimals(100 * speed.toSi(value), 1)
        + " % per "
        + measures.shown(Unit.KILOMETRE_PER_HOUR).symbol();
  }

  private static String shown(Unit carried, double value, Measures measures) {
    return Shown.decimals(measures.unit(carried).fromSi(value), measures.shown(carried).decimals())
        + " "
        + measures.shown(carried).symbol();
  }

  /** What of a wish is good, such as {@code up to 16.0 km/h}. */
  public static String good(Wish wish, Grade grade, Measures measures) {
    if (Double.isInfinite(grade.from())) {
      return "up to " + text(wish, grade.to(), measures);
    }
    if (Double.isInfinite(grade.to())) {
      return "from " + text(wish, grade.from(), measures);
    }
    return text(wish, grade.from(), measures) + " to " + text(wish, grade.to(), measures);
  }

  /** One value of a ride, as {@link #text(Wish, double, Measures)}. */
  public static String text(Wish wish, WishValues values, Measures measures) {
    return text(wish, values.of(wish), measures);
  }

  /** A number alone, in the unit of {@link #key}, for a metric table. */
  public static String cell(Wish wish, double value) {
    return Shown.decimals(number(wish, value), decimals(wish));
  }

  /** The symbol of that unit. */
  public static String symbol(Wish wish) {
    return switch (wish) {
      case LEVEL, STALL, TURN -> "deg";
      case MANNERS -> "deg/s";
      case FEET -> "share";
      case GROWTH -> "per km/h";
      case TAKE_OFF -> "km/h";
      case RANGE -> "km";
      case GEAR_MASS -> "kg";
      case FEET_MOVED -> "mm";
    };
  }
}
