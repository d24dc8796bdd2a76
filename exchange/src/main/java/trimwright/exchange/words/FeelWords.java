package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * What a rider feels on the water: the load on each leg, how deck and feet change with speed, how
 * little a shift of weight does, and how the stall announces itself. Every number is read from the
 * case's own curve.
 */
public final class FeelWords {
  /** A leg that carries this part more than the other tires first [1]. Chosen. */
  private static final double TIRING = 0.04;

  /** How much faster the comparison is made [km/h], [mph]: a change that a rider makes at will. */
  private static final double FASTER_KMH = 5;

  private static final double FASTER_MPH = 3;

  /** Changes smaller than this few riders feel [degrees], [kg]. Chosen. */
  private static final double FELT_DEGREES = 0.3;

  private static final double FELT_KILOGRAMS = 1;

  /** The shift of weight that the words speak of [m]. */
  private static final double SHIFT = 0.02;

  /** Beyond this a steady turn is near neutral, and its number means little [degrees]. Chosen. */
  private static final double SHARPEST_DEGREES = 5;

  private final CaseFile caseFile;
  private final Curve curve;
  private final Measures measures;
  private final Amounts amounts;

  private FeelWords(CaseFile caseFile, Curve curve, Measures measures) {
    this.caseFile = caseFile;
    this.curve = curve;
    this.measures = measures;
    this.amounts = Amounts.of(measures);
  }

  /**
   * What to feel for at a speed and around it.
   *
   * @param caseFile the case
   * @param curve its curve, in steps small enough to read a change over a few km/h from
   * @param outcome what the speed gives
   * @param measures units of the numbers
   * @return sentences, the most telling first; at least one
   */
  public static List<String> of(
      CaseFile caseFile, Curve curve, TrimOutcome outcome, Measures measures) {
    FeelWords words = new FeelWords(caseFile, curve, measures);
    List<String> all = new ArrayList<>();
    outcome
        .findPoint()
        .ifPresentOrElse(
            point -> {
              all.add(words.legs(point));
              words.faster(point).ifPresent(all::add);
              words.shift(point).ifPresent(all::add);
            },
            () ->
                all.add(
                    "At "
                        + words.amounts.speed(outcome.speed())
                        + " there is no steady ride to feel: "
                        + Sentence.lowerFirst(
                            ReasonWords.of((TrimOutcome.NoTrim) outcome, measures))));
    all.addAll(words.evenFeet());
    all.add(words.stall());
    return List.copyOf(all);
  }

  private String legs(TrimPoint point) {
    double share = point.footShare();
    String carried =
        "At "
            + amounts.speed(point.speed())
            + " your front foot carries "
            + amounts.mass(point.frontLeg())
            + " and your back foot "
            + amounts.mass(point.backLeg());
    if (Math.abs(share - 0.5) < TIRING) {
      return carried + ": both legs work alike.";
    }
    return carried + ": the " + (share > 0.5 ? "front" : "back") + " leg tires first.";
  }

  /** What a little more speed does to deck and feet, read from the curve. */
  private Optional<String> faster(TrimPoint point) {
    double step =
        measures == Measures.METRIC
            ? Unit.KILOMETRE_PER_HOUR.toSi(FASTER_KMH)
            : Unit.MILE_PER_HOUR.toSi(FASTER_MPH);
    return at(point.speed() + step)
        .map(state -> changed(point, state, amounts.speed(step) + " faster: "))
        .or(
            () ->
                at(point.speed() - step)
                    .map(state -> changed(point, state, amounts.speed(step) + " slower: ")));
  }

  private String changed(TrimPoint point, State other, String pace) {
    double turn = Shown.degrees(other.pitch() - point.pitch());
    double load = other.frontLeg() - point.frontLeg();
    List<String> parts = new ArrayList<>();
    if (Math.abs(turn) >= FELT_DEGREES) {
      parts.add(
          "the nose " + (turn > 0 ? "rises " : "drops ") + Shown.decimals(Math.abs(turn), 1) + "°");
    }
    if (Math.abs(load) >= FELT_KILOGRAMS) {
      parts.add(
          amounts.mass(Math.abs(load)) + " go to your " + (load > 0 ? "front" : "back") + " foot");
    }
    return pace + (parts.isEmpty() ? "hardly anything changes" : String.join(" and ", parts)) + ".";
  }

  /**
   * What the curve gives between its speeds.
   *
   * @param pitch [rad]
   * @param frontLeg [kg]
   */
  private record State(double pitch, double frontLeg) {}

  /** The state at a speed, on the straight line between the curve's neighbours. */
  private Optional<State> at(double speed) {
    List<TrimOutcome> all = curve.outcomes();
    for (int i = 1; i < all.size(); i++) {
      Optional<TrimPoint> low = all.get(i - 1).findPoint();
      Optional<TrimPoint> high = all.get(i).findPoint();
      double from = all.get(i - 1).speed();
      double to = all.get(i).speed();
      if (low.isPresent() && high.isPresent() && from <= speed && speed <= to) {
        double part = (speed - from) / (to - from);
        return Optional.of(
            new State(
                low.get().pitch() + part * (high.get().pitch() - low.get().pitch()),
                low.get().frontLeg() + part * (high.get().frontLeg() - low.get().frontLeg())));
      }
    }
    return Optional.empty();
  }

  private Optional<String> shift(TrimPoint point) {
    if (point.pitchPerShift().isEmpty()) {
      return Optional.empty();
    }
    double turn = Shown.degrees(point.pitchPerShift().getAsDouble() * SHIFT);
    if (turn > 0) {
      return Optional.of("The ride does not hold its balance by itself here: expect to correct.");
    }
    if (turn < -SHARPEST_DEGREES) {
      return Optional.of("A lean of a finger's breadth turns the deck a lot here: move little.");
    }
    return Optional.of(
        "Lean "
            + amounts.length(SHIFT)
            + " forward and the deck settles "
            + Shown.decimals(-turn, 1)
            + "° lower at the nose.");
  }

  /** Where the load changes feet. */
  private List<String> evenFeet() {
    List<EvenFeetSpeed> speeds = curve.evenFeetSpeeds();
    if (speeds.size() == 2 && speeds.get(0).rising() != speeds.get(1).rising()) {
      boolean backBetween = !speeds.get(0).rising();
      return List.of(
          "Between "
              + amounts.bareSpeed(speeds.get(0).speed())
              + " and "
              + amounts.speed(speeds.get(1).speed())
              + " the weight is on your "
              + (backBetween ? "back" : "front")
              + " foot, slower and faster on your "
              + (backBetween ? "front" : "back")
              + " foot.");
    }
    List<String> all = new ArrayList<>();
    for (EvenFeetSpeed even : speeds) {
      all.add(
          "Slower than "
              + amounts.speed(even.speed())
              + (even.rising()
                  ? " the weight goes to your back foot, faster to your front foot."
                  : " the weight goes to your front foot, faster to your back foot."));
    }
    return all;
  }

  private String stall() {
    Optional<SpeedInterval> window = curve.rideableWindow();
    String from =
        window
            .map(w -> "Below " + amounts.speed(w.from()) + " you leave the limits: ")
            .orElse("No speed here is inside every limit: ");
    return from
        + "the stall shows as a nose that keeps rising, a soft feel and "
        + (caseFile.rideCase().setup().drive().isPresent()
            ? "more throttle for less height"
            : "less height for the same pull")
        + ". Weight forward and add speed; never pull the nose up.";
  }
}
