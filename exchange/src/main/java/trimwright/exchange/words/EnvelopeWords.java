package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.Glide;
import trimwright.kernel.envelope.SlowFlight;
import trimwright.kernel.envelope.SlowFlight.BankedStall;
import trimwright.kernel.envelope.SlowFlight.StallWarning;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.hull.TakeOff;
import trimwright.kernel.hull.TakeOffVerdict;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.range.RangePoint;
import trimwright.kernel.range.RideRange;
import trimwright.kernel.turn.TurnLimit;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnStudy;

/** The limits of a case in sentences. */
public final class EnvelopeWords {
  /** A move of the foot-pressure centre that people notice [m]. Chosen. */
  private static final double NOTICED = 0.01;

  /** Drags nearer to each other than this are the same in words [1]. */
  private static final double SAME_DRAG = 0.02;

  /** A run longer by less than this is the same in words [1]. */
  private static final double SAME_RUN = 1.15;

  private final Amounts amounts;

  private EnvelopeWords(Measures measures) {
    amounts = Amounts.of(measures);
  }

  /**
   * The limits in sentences, in the order in which a ride meets them.
   *
   * @param caseFile the case
   * @param envelope its limits
   * @param measures that the reader reads
   * @return sentences
   */
  public static List<String> of(CaseFile caseFile, Envelope envelope, Measures measures) {
    return new EnvelopeWords(measures)
        .topics(caseFile, envelope).values().stream().flatMap(List::stream).toList();
  }

  /** What the sentences are about. */
  enum Topic {
    TAKE_OFF,
    SLOW_FLIGHT,
    TURNS,
    MARGINS,
    GLIDE,
    RANGE
  }

  /** The sentences by what they are about. */
  static Map<Topic, List<String>> byTopic(CaseFile caseFile, Envelope envelope, Measures measures) {
    return new EnvelopeWords(measures).topics(caseFile, envelope);
  }

  private Map<Topic, List<String>> topics(CaseFile caseFile, Envelope envelope) {
    Map<Topic, List<String>> topics = new EnumMap<>(Topic.class);
    Arrays.stream(Topic.values()).forEach(topic -> topics.put(topic, new ArrayList<>()));
    RideLimits limits = caseFile.rideCase().limits();
    takeOff(topics.get(Topic.TAKE_OFF), envelope, limits);
    envelope
        .slowFlight()
        .ifPresentOrElse(
            slow -> slow(topics.get(Topic.SLOW_FLIGHT), slow),
            () ->
                topics
                    .get(Topic.SLOW_FLIGHT)
                    .add("Nothing flies: at no speed do the wings carry this weight."));
    ScuffWords.find(caseFile).ifPresent(topics.get(Topic.SLOW_FLIGHT)::add);
    envelope.turns().ifPresent(turns -> turns(topics.get(Topic.TURNS), turns));
    margins(topics.get(Topic.MARGINS), envelope, limits);
    envelope.glide().ifPresent(glide -> glide(topics.get(Topic.GLIDE), glide, envelope.speed()));
    envelope.range().ifPresent(range -> range(topics.get(Topic.RANGE), range));
    return topics;
  }

  private void takeOff(List<String> all, Envelope envelope, RideLimits limits) {
    TakeOff t = envelope.takeOff();
    String lift = t.liftOff().map(s -> amounts.speed(s.speed())).orElse("");
    all.add(
        switch (t.verdict()) {
          case LIFTS ->
              "The drive lifts this rider: off the water at "
                  + lift
                  + " at the earliest, after some "
                  + metres(t.length())
                  + " m and "
                  + Shown.decimals(t.time().orElse(0), 0)
                  + " s of full thrust. Drags on the water are known to "
                  + Shown.decimals(100 * t.dragBand(), 0)
                  + " % only, and riders who give thrust slowly need more.";
          case LIFTS_WHEN_PULLED ->
              "It lifts at "
                  + lift
                  + " when pulled: the pull must reach "
                  + amounts.force(t.mostNeeded())
                  + ".";
          case THRUST_SHORT ->
              "The drive does not lift this rider"
                  + t.shortage()
                      .map(
                          p ->
                              ": at "
                                  + amounts.speed(p.speed())
                                  + " it is short of "
                                  + amounts.force(p.shortBy()))
                      .orElse("")
                  + ".";
          case FEET_CANNOT_REACH ->
              "It does not lift: on the way the feet would have to press beyond the deck's ends.";
          case NEVER_CARRIED ->
              "It does not lift: at no speed do the wings carry this weight with room to the stall.";
          case SINKS -> "Board, foil and rider are heavier than water: they sink at rest.";
        });
    if (limits.breaks(RideLimit.TAKE_OFF_THRUST_RATIO, envelope.takeOffThrustRatio())
        && t.verdict() == TakeOffVerdict.LIFTS) {
      all.add(
          "It is close: at the worst place the thrust is "
              + Shown.decimals(envelope.takeOffThrustRatio(), 2)
              + " times the drag, and drags on the water may be off by "
              + Shown.decimals(100 * t.dragBand(), 0)
              + " % either way.");
    }
    t.hump()
        .ifPresent(
            p ->
                all.add(
                    "The hump to get over lies at "
                        + amounts.speed(p.speed())
                        + ", with "
                        + amounts.force(p.drag())
                        + " of drag."));
    envelope
        .ramped()
        .filter(r -> t.length().isEmpty() || r.length() > SAME_RUN * t.length().getAsDouble())
        .ifPresent(
            r ->
                all.add(
                    "With the throttle brought up over "
                        + Shown.decimals(r.ramp(), 0)
                        + " s it takes some "
                        + Shown.decimals(r.length(), 0)
                        + " m and "
                        + Shown.decimals(r.time(), 0)
                        + " s."));
    if (t.lifts() && t.standing().isEmpty()) {
      all.add("The feet have to move on the way to lift-off.");
    }
    all.add(otherPosture(t, envelope.otherTakeOff()));
  }

  /** What another posture changes: the body's buoyancy and drag where the deck is under water. */
  private String otherPosture(TakeOff first, TakeOff other) {
    String start = other.posture() == Posture.KNEELING ? "Kneeling" : "Standing";
    if (!other.lifts()) {
      return start + (first.lifts() ? " it does not lift." : " it does not lift either.");
    }
    if (!first.lifts()) {
      return start + " it lifts, with at most " + amounts.force(other.mostNeeded()) + " of drag.";
    }
    double less = first.mostNeeded() - other.mostNeeded();
    if (Math.abs(less) < SAME_DRAG * first.mostNeeded()) {
      return start
          + " the water asks for the same: what it changes is how high the weight stands, which is"
          + " not counted.";
    }
    return start
        + " it needs at most "
        + amounts.force(other.mostNeeded())
        + ", "
        + amounts.force(Math.abs(less))
        + (less > 0 ? " less." : " more.");
  }

  private static String metres(OptionalDouble length) {
    return length.isPresent() ? Shown.decimals(length.getAsDouble(), 0) : "?";
  }

  private void range(List<String> all, RideRange range) {
    if (range.longest().isEmpty() || range.farthest().isEmpty()) {
      return;
    }
    RangePoint longest = range.longest().get();
    RangePoint farthest = range.farthest().get();
    all.add(
        "A full battery lasts longest at "
            + amounts.speed(longest.speed())
            + ", some "
            + Shown.decimals(longest.duration() / 60, 0)
            + " min, and carries farthest at "
            + amounts.speed(farthest.speed())
            + ", some "
            + Shown.decimals(farthest.distance() / 1000, 0)
            + " km in still water. Until a ride has measured the power, count on "
            + Shown.decimals(200 * range.basis().deviation(), 0)
            + " % either way.");
    range
        .home()
        .ifPresent(
            home ->
                all.add(
                    home.enough()
                        ? "The way home takes "
                            + Shown.decimals(100 * home.shareOfUsable(), 0)
                            + " % of a full battery, at "
                            + amounts.speed(home.speed())
                            + " through the water."
                        : "The way home takes more than a full battery may give with "
                            + Shown.decimals(100 * home.reserve(), 0)
                            + " % in reserve."));
  }

  private void slow(List<String> all, SlowFlight slow) {
    all.add("It stalls at " + amounts.speed(slow.stallSpeed()) + " straight ahead.");
    slow.warning().ifPresent(w -> all.add(warning(w)));
    for (BankedStall b : slow.banked()) {
      all.add(
          "Banked "
              + degrees(b.bank())
              + " it needs "
              + amounts.speed(b.speed())
              + (b.circle() ? ": slower there is no circle with this bank." : "."));
    }
  }

  private String warning(StallWarning w) {
    String nose = "Coming down to it the nose rises " + degreesOne(w.pitchRise());
    double move = w.footPressureMove();
    String end = " over the last steps of speed.";
    if (Math.abs(move) < NOTICED) {
      return nose + end + " The feet hardly feel it: watch the nose.";
    }
    return nose
        + " and the load goes "
        + amounts.length(Math.abs(move))
        + (move > 0 ? " to the front foot" : " to the back foot")
        + end;
  }

  private void turns(List<String> all, TurnStudy turns) {
    String end = because(turns.limit());
    if (turns.tightest().isEmpty()) {
      all.add("At " + amounts.speed(turns.speed()) + " no turn stays inside the limits: " + end);
      return;
    }
    TurnPoint t = turns.tightest().get();
    all.add(
        "At "
            + amounts.speed(turns.speed())
            + " it turns with up to "
            + degrees(t.bank())
            + " of bank on a circle of "
            + Shown.decimals(t.radius(), 1)
            + " m radius; the legs then carry "
            + Shown.decimals(t.loadFactor(), 2)
            + " times the weight. "
            + (turns.limit() == TurnLimit.NONE ? "Nothing that is computed ends it there." : end));
  }

  /**
   * What ends turns of growing bank.
   *
   * @param limit what the next bank breaks
   * @return a sentence; empty where nothing does
   */
  public static String because(TurnLimit limit) {
    return switch (limit) {
      case TIP -> "Beyond it a wing tip comes too near the surface and draws air.";
      case RAIL -> "Beyond it the board's edge comes down to the water.";
      case FEET -> "Beyond it the weight would have to stand too near one foot.";
      case STALL -> "Beyond it a wing comes too near its stall.";
      case POWER -> "Beyond it the drive cannot push hard enough.";
      case NO_CIRCLE -> "Beyond it there is no circle with that bank at this speed.";
      case NONE -> "";
    };
  }

  private void margins(List<String> all, Envelope envelope, RideLimits limits) {
    envelope
        .propellerDepth()
        .ifPresent(
            d ->
                all.add(
                    d > 0
                        ? "The propeller's upper blades run "
                            + amounts.length(d)
                            + " below the troughs of the chop"
                            + (limits.breaks(RideLimit.PROPELLER_DEPTH, d)
                                ? ", too little: it will draw air."
                                : ".")
                        : "The propeller's upper blades come out in the troughs of the chop: it will"
                            + " draw air."));
    envelope
        .straight()
        .map(TurnPoint::cavitationSpeedRatio)
        .ifPresent(
            ratio ->
                all.add(
                    limits.breaks(RideLimit.CAVITATION_SPEED_RATIO, ratio)
                        ? "Cavitation is near: it begins at "
                            + Shown.decimals(ratio, 1)
                            + " times this speed."
                        : "Cavitation would begin at "
                            + Shown.decimals(ratio, 1)
                            + " times this speed at the same angles."));
    if (envelope.broken(limits).contains(RideLimit.RATING_SHARE)) {
      all.add("A part is loaded beyond the permitted share of its maker's rating: see the loads.");
    }
  }

  private void glide(List<String> all, Glide glide, double speed) {
    all.add(
        "Without thrust it falls from "
            + amounts.speed(speed)
            + " to the stall in about "
            + Shown.decimals(glide.secondsToStall(), 1)
            + " s and "
            + Shown.decimals(glide.metresToStall(), 0)
            + " m. It glides best at "
            + amounts.speed(glide.bestRatioSpeed())
            + ", with "
            + Shown.decimals(glide.bestRatio(), 1)
            + " times more weight than drag.");
  }

  private static String degrees(double angle) {
    return Shown.decimals(Shown.degrees(angle), 0) + "°";
  }

  private static String degreesOne(double angle) {
    return Shown.decimals(Shown.degrees(angle), 1) + "°";
  }
}
