package trimwright.command;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.quick.PairTable;

/** What a rider asks of every setup. */
final class RideOptions {
  /** Farther nobody moves both feet at once [mm]. */
  private static final double MOST_FEET = 400;

  private static final String FROM = "--from-kmh";
  private static final String TO = "--to-kmh";
  private static final String FEET = "--feet-mm";
  private static final String WEIGH = "--weigh";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = FROM,
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      description = "Slowest speed of the ride (default: a fifth below the wished one).")
  private Double from;

  @Option(
      names = TO,
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      description = "Fastest speed of the ride (default: a fifth above the wished one).")
  private Double to;

  @Option(
      names = FEET,
      paramLabel = "DISTANCE",
      converter = Numbers.Decimal.class,
      defaultValue = "100",
      description =
          "How far both feet may be moved, either way, 0 to 400 mm (default: ${DEFAULT-VALUE}).")
  private double feet;

  @Option(
      names = WEIGH,
      paramLabel = "WISH=WEIGHT",
      description =
          "Weight of a wish, 0 for not at all to 4 for most; may be given several times. Wishes:"
              + " level, feet, growth, take_off, stall, manners, turn, range, gear_mass, feet_moved (default:"
              + " those of the kind of riding).")
  private List<String> weights = new ArrayList<>();

  /** How far both feet may be moved [m]. */
  double feetReach() {
    if (!(feet >= 0 && feet <= MOST_FEET)) {
      throw usage(FEET + " must be from 0 to 400 mm, was " + Numbers.text(feet) + ".");
    }
    return Unit.MILLIMETRE.toSi(feet);
  }

  /**
   * The ride's speeds.
   *
   * @param wished the rider's wished speed [m/s]
   */
  RideSpan span(double wished) {
    RideSpan usual = RideSpan.about(wished);
    double low = from == null ? usual.from() : Unit.KILOMETRE_PER_HOUR.toSi(from);
    double high = to == null ? usual.to() : Unit.KILOMETRE_PER_HOUR.toSi(to);
    // A hundredth of a km/h for the way there and back between the units.
    double play = Unit.KILOMETRE_PER_HOUR.toSi(0.01);
    for (double speed : new double[] {low, high, wished}) {
      if (speed < PairTable.slowest() - play || speed > PairTable.fastest() + play) {
        throw usage(
            "Setups are looked through at speeds from "
                + Shown.decimals(Shown.kmh(PairTable.slowest()), 1)
                + " to "
                + Shown.decimals(Shown.kmh(PairTable.fastest()), 1)
                + " km/h; "
                + FROM
                + ", "
                + TO
                + " or the wished speed is "
                + Shown.decimals(Shown.kmh(speed), 1)
                + " km/h.");
      }
    }
    if (!(high > low)) {
      throw usage(
          FROM
              + " must lie below "
              + TO
              + ", were "
              + Shown.decimals(Shown.kmh(low), 1)
              + " and "
              + Shown.decimals(Shown.kmh(high), 1)
              + " km/h.");
    }
    return new RideSpan(
        Math.max(low, PairTable.slowest()),
        Math.min(high, PairTable.fastest()),
        RideSpan.USUAL_COUNT);
  }

  /** Weights that differ from those of the kind of riding. */
  Map<Wish, Integer> weights() {
    Map<Wish, Integer> all = new EnumMap<>(Wish.class);
    for (String word : weights) {
      String[] halves = word.split("=", -1);
      if (halves.length != 2 || !halves[1].matches("[0-" + Wishes.MOST_WEIGHT + "]")) {
        throw usage(
            WEIGH
                + " must be a wish and a weight from 0 to "
                + Wishes.MOST_WEIGHT
                + ", such as range=0, was "
                + word
                + ".");
      }
      all.put(wish(WEIGH, halves[0]), Integer.valueOf(halves[1]));
    }
    return all;
  }

  /** The wish that a word names. */
  Wish wish(String option, String word) {
    return Stream.of(Wish.values())
        .filter(wish -> WishWords.code(wish).equals(word.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                usage(
                    option
                        + " knows no wish "
                        + word
                        + "; there are "
                        + Stream.of(Wish.values())
                            .map(WishWords::code)
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  private ParameterException usage(String words) {
    return new ParameterException(spec.commandLine(), words);
  }
}
