package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.EnvelopeWords.Topic;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.PartLoads;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/**
 * The limits of a case under a heading, with whose word they are.
 *
 * @param title what they are about, a word or two
 * @param sentences what is so
 * @param basis who chose the limits that the sentences speak of
 */
public record EnvelopeNote(String title, List<String> sentences, String basis) {
  /** Copies the list. */
  public EnvelopeNote {
    sentences = List.copyOf(sentences);
  }

  /**
   * The limits of a case, in the order in which a ride meets them.
   *
   * @param caseFile the case
   * @param envelope its limits
   * @param measures that the reader reads
   * @return notes, each with one sentence or more
   */
  public static List<EnvelopeNote> listFor(
      CaseFile caseFile, Envelope envelope, Measures measures) {
    Map<Topic, List<String>> said = EnvelopeWords.byTopic(caseFile, envelope, measures);
    RideLimits limits = caseFile.rideCase().limits();
    List<EnvelopeNote> notes = new ArrayList<>();
    notes.add(
        new EnvelopeNote(
            "Take-off",
            said.get(Topic.TAKE_OFF),
            whose(
                limits,
                RideLimit.TAKE_OFF_THRUST_RATIO,
                RideLimit.TAKE_OFF_LEAST_TRIM,
                RideLimit.TAKE_OFF_MOST_TRIM,
                RideLimit.TAKE_OFF_SPEED,
                RideLimit.TAKE_OFF_ACCELERATION,
                RideLimit.TAKE_OFF_RAMP)));
    notes.add(
        new EnvelopeNote(
            "Power and range", said.get(Topic.RANGE), whose(limits, RideLimit.BATTERY_RESERVE)));
    notes.add(
        new EnvelopeNote(
            "Slow flight",
            said.get(Topic.SLOW_FLIGHT),
            "Computed from the wings; nobody's choice. A stall comes earlier in chop."));
    notes.add(
        new EnvelopeNote(
            "Turns",
            said.get(Topic.TURNS),
            whose(
                limits,
                RideLimit.BANK,
                RideLimit.TIP_DEPTH,
                RideLimit.BOARD_CLEARANCE,
                RideLimit.STALL_MARGIN,
                RideLimit.LEAST_FOOT_SHARE,
                RideLimit.MOST_FOOT_SHARE)));
    notes.add(
        new EnvelopeNote(
            "Air and cavitation",
            said.get(Topic.MARGINS),
            whose(limits, RideLimit.PROPELLER_DEPTH, RideLimit.CAVITATION_SPEED_RATIO)));
    notes.add(new EnvelopeNote("Loads", loads(envelope, limits), loadBasis(envelope, limits)));
    notes.add(
        new EnvelopeNote(
            "Without the drive", said.get(Topic.GLIDE), "Computed; no limit is set here."));
    return notes.stream().filter(note -> !note.sentences().isEmpty()).toList();
  }

  private static String whose(RideLimits limits, RideLimit... used) {
    return Arrays.stream(used).anyMatch(limits::isTightened)
        ? "Limits tightened by your shop; the others are chosen, with no published source."
        : "Limits chosen, with no published source.";
  }

  private static List<String> loads(Envelope envelope, RideLimits limits) {
    List<String> all = new ArrayList<>();
    envelope.mast().ifPresent(loads -> all.add(load("Mast at its top", loads, limits)));
    envelope.frontWing().ifPresent(loads -> all.add(load("Front wing's root", loads, limits)));
    envelope.stabilizer().ifPresent(loads -> all.add(load("Stabilizer's root", loads, limits)));
    return all;
  }

  private static String load(String part, PartLoads loads, RideLimits limits) {
    StringBuilder text = new StringBuilder(part).append(": ").append(moment(loads.straight()));
    text.append(" straight");
    add(text, loads.turn(), " in the tightest turn");
    add(text, OptionalDouble.of(loads.landing()), " in a landing");
    add(text, loads.fall(), " in a fall");
    Optional<Boolean> exceeds = loads.exceeds(limits);
    if (exceeds.isEmpty()) {
      return text.append("; no maker's rating, so no verdict.").toString();
    }
    return text.append("; the maker rates it for ")
        .append(moment(loads.rating().orElseThrow()))
        .append(exceeds.get() ? ": too much." : ".")
        .toString();
  }

  private static void add(StringBuilder text, OptionalDouble value, String when) {
    value.ifPresent(moment -> text.append(", ").append(moment(moment)).append(when));
  }

  private static String moment(double value) {
    return Shown.decimals(value, 0) + "\u00a0N·m";
  }

  private static String loadBasis(Envelope envelope, RideLimits limits) {
    boolean rated =
        List.of(envelope.mast(), envelope.frontWing(), envelope.stabilizer()).stream()
            .flatMap(Optional::stream)
            .anyMatch(loads -> loads.rating().isPresent());
    return (rated ? "Ratings are the makers'. " : "")
        + "Landing and fall are cases chosen "
        + (limits.isTightened(RideLimit.LANDING_LOAD)
            ? "and made harder by your shop."
            : "with no published source.");
  }
}
