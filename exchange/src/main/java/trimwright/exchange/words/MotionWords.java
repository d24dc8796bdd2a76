package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.motion.ChopAnswer;
import trimwright.kernel.motion.Hold;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;

/** How a case behaves, in sentences for who rides it: what to do first. */
public final class MotionWords {
  /** A swing that loses less than this of critical damping is worth a word [1]. Chosen. */
  private static final double LIVELY = 0.3;

  private final Amounts amounts;

  private MotionWords(Measures measures) {
    amounts = Amounts.of(measures);
  }

  /**
   * What holding a trim takes.
   *
   * @param hold what the motions say
   * @return a few words without a capital
   */
  public static String brief(Hold hold) {
    return switch (hold) {
      case STEADY -> "stays by itself";
      case RIDEABLE -> "grows slowly: a rider holds it";
      case NOBODY -> "nobody can hold it";
    };
  }

  /**
   * What a mode moves most.
   *
   * @param mainly the quantity
   * @return such as {@code the speed}
   */
  public static String of(Mode.Mainly mainly) {
    return switch (mainly) {
      case SPEED -> "the speed";
      case HEIGHT -> "the height";
      case PITCH -> "the pitch";
    };
  }

  /**
   * The manners of a case in sentences.
   *
   * @param caseFile the case
   * @param points its manners over speed, rising
   * @param measures that the reader reads
   * @return sentences
   */
  public static List<String> of(CaseFile caseFile, List<MannersAt> points, Measures measures) {
    return new MotionWords(measures).all(caseFile, points);
  }

  private List<String> all(CaseFile caseFile, List<MannersAt> points) {
    List<Manners> ridden = listManners(points, true);
    if (ridden.isEmpty()) {
      ridden = listManners(points, false);
    }
    List<String> all = new ArrayList<>();
    if (ridden.isEmpty()) {
      all.add(
          "Choose other speeds: at none of these it flies, so that there is no manner to tell.");
      return all;
    }
    double wished = caseFile.rideCase().rider().wishedSpeed();
    Manners near =
        ridden.stream()
            .min(Comparator.comparingDouble(m -> Math.abs(m.speed() - wished)))
            .orElseThrow();
    runaways(ridden).ifPresent(all::add);
    all.add(hold(near));
    swing(near).ifPresent(all::add);
    all.add(pitchy(near, ridden));
    all.add(lockedIn(near));
    all.add(near.chop().map(c -> chop(c, near)).orElse("The case has no chop: flat water."));
    all.add(
        "Computed for a rider who stays upright over the feet, with forces as in a steady flow. It"
            + " says how the ride moves, not that it is safe.");
    return all;
  }

  private static List<Manners> listManners(List<MannersAt> points, boolean rideable) {
    return points.stream()
        .filter(p -> !rideable || p.rideable())
        .map(MannersAt::manners)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Speeds that nobody holds. */
  private Optional<String> runaways(List<Manners> ridden) {
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < ridden.size(); i++) {
      if (ridden.get(i).hold() != Hold.NOBODY) {
        continue;
      }
      int from = i;
      while (i + 1 < ridden.size() && ridden.get(i + 1).hold() == Hold.NOBODY) {
        i++;
      }
      String end = amounts.speed(ridden.get(i).speed());
      ranges.add(from == i ? end : amounts.bareSpeed(ridden.get(from).speed()) + " to " + end);
    }
    return ranges.isEmpty()
        ? Optional.empty()
        : Optional.of("Stay off " + String.join(", ", ranges) + ": there nobody can hold it.");
  }

  private String hold(Manners m) {
    String at = "At " + amounts.speed(m.speed());
    Optional<Mode> growing = MannersAt.growing(m);
    String grows =
        growing
            .filter(g -> g.timeToDouble().isPresent())
            .map(
                g ->
                    "what is off doubles in "
                        + seconds(g.timeToDouble().getAsDouble())
                        + ", "
                        + of(g.mainly())
                        + " most")
            .orElse("");
    return switch (m.hold()) {
      case STEADY ->
          at + " let it run and keep upright: it stays by itself, nothing grows that is off.";
      case RIDEABLE ->
          at
              + " keep it there with small shifts of your weight: by itself it does not stay, "
              + grows
              + ". Who answers a quarter of a second late can hold that.";
      case NOBODY ->
          at
              + " do not ride it: "
              + grows
              + ", faster than anybody answers. Another speed or another setup comes first.";
    };
  }

  private static Optional<String> swing(Manners m) {
    return MannersAt.swing(m)
        .filter(s -> s.dampingRatio() < LIVELY)
        .map(
            s ->
                "Do not chase its swing of "
                    + seconds(s.period().orElseThrow())
                    + ": it moves "
                    + of(s.mainly())
                    + " most and "
                    + (s.growth() > 0 ? "grows." : "dies away slowly."));
  }

  /** A peak pitch rate per centimetre as people see it. */
  static String rate(double rate) {
    return Shown.decimals(Shown.degrees(rate), 1) + "° a second";
  }

  private String pitchy(Manners m, List<Manners> ridden) {
    Comparator<Manners> byRate = Comparator.comparingDouble(Manners::peakPitchRate);
    Manners calm = ridden.stream().min(byRate).orElseThrow();
    Manners quick = ridden.stream().max(byRate).orElseThrow();
    String text =
        "How pitchy: "
            + amounts.length(Manners.STEP)
            + " of foot pressure turn the nose by up to "
            + rate(m.peakPitchRate())
            + " within half a second";
    return calm == quick
        ? text + "."
        : text
            + "; calmest is "
            + amounts.speed(calm.speed())
            + " with "
            + rate(calm.peakPitchRate())
            + ", quickest "
            + amounts.speed(quick.speed())
            + " with "
            + rate(quick.peakPitchRate())
            + ".";
  }

  private String lockedIn(Manners m) {
    String height = amounts.length(Manners.HEIGHT);
    String step = "How locked in: " + amounts.length(Manners.STEP) + " that you do not notice ";
    return m.lockedIn().isPresent()
        ? step
            + "change the height by "
            + height
            + " in "
            + seconds(m.lockedIn().getAsDouble())
            + "; look at your height oftener than that."
        : step
            + "have not changed the height by "
            + height
            + " after "
            + seconds(Manners.LONGEST)
            + ".";
  }

  private String chop(ChopAnswer c, Manners m) {
    boolean followed = c.frequency() <= ChopAnswer.FOLLOWED;
    String met =
        "At "
            + amounts.speed(m.speed())
            + " the chop of "
            + amounts.length(c.height())
            + " comes "
            + Shown.decimals(c.frequency(), 1)
            + " times a second";
    String shakes =
        " The deck shakes by "
            + Shown.decimals(c.acceleration(), 2)
            + " m/s² (root mean square)"
            + ", and to hold its pitch still the foot pressure would have to move by "
            + amounts.length(c.footCorrection())
            + ".";
    return (followed
            ? "Ride the chop with your feet: "
                + Sentence.lowerFirst(met)
                + ", slowly enough for them."
            : "Do not chase the chop, let the knees take it: "
                + Sentence.lowerFirst(met)
                + ", faster than feet follow.")
        + shakes;
  }

  static String seconds(double time) {
    return Shown.decimals(time, 1) + " s";
  }
}
