package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.fall.Breach;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.fall.NoseDrop;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionEnd;

/** The falls of a case in sentences for who teaches first flights: what to do first. */
public final class FallWords {
  private final Amounts amounts;
  private final RideLimits limits;
  private final FallAnswer answer;

  private FallWords(CaseFile caseFile, FallAnswer answer, Measures measures) {
    amounts = Amounts.of(measures);
    limits = caseFile.rideCase().limits();
    this.answer = answer;
  }

  /**
   * The falls in sentences.
   *
   * @param caseFile the case
   * @param answer its falls
   * @param measures that the reader reads
   * @return sentences, the caution first
   */
  public static List<String> of(CaseFile caseFile, FallAnswer answer, Measures measures) {
    return new FallWords(caseFile, answer, measures).all(caseFile);
  }

  /**
   * A posture as a word.
   *
   * @param posture of the rider
   * @return such as {@code standing}
   */
  public static String of(Posture posture) {
    return posture.name().toLowerCase(Locale.ROOT);
  }

  /**
   * What met the water first when the nose dropped, and when.
   *
   * @param drop the nose-drop margin
   * @return such as {@code bow at 0.48 s}
   */
  public static String contact(NoseDrop drop) {
    if (drop.contact().isPresent()) {
      return (drop.bowFirst() ? "bow" : "stern") + " at " + seconds(drop.contact().getAsDouble());
    }
    return drop.trace().end() == MotionEnd.LIMIT_OF_MODEL
        ? "not followed after " + seconds(drop.trace().last().time())
        : "nothing";
  }

  /**
   * What came out of the water first, and when.
   *
   * @param breach the breach margin
   * @return such as {@code propeller at 0.41 s}
   */
  public static String out(Breach breach) {
    return switch (breach.end()) {
      case WING_BREACHES -> "wing at " + seconds(breach.margin());
      case PROPELLER_BREACHES -> "propeller at " + seconds(breach.margin());
      case RAN_OUT -> "nothing";
      default -> "not followed after " + seconds(breach.margin());
    };
  }

  private List<String> all(CaseFile caseFile) {
    List<String> all = new ArrayList<>();
    all.add(CautionWords.first());
    FallStudy study = answer.study();
    if (study.points().isEmpty()) {
      all.add("Find a setup that is rideable first: at no speed this one is, so no fall begins.");
      return all;
    }
    if (study.caps().isEmpty()) {
      all.add(
          "Do not give this setup to somebody who flies for the first time: no cap on "
              + (hasDrive(caseFile) ? "speed, power or throttle ramp" : "the speed")
              + " brings it inside the limits of first flights ("
              + asked()
              + "), in no posture. The weight goes to a foot sooner than "
              + (hasDrive(caseFile) ? "any throttle acts." : "anybody answers."));
    }
    for (Posture posture : Posture.values()) {
      study
          .findCaps(posture)
          .ifPresentOrElse(
              caps -> all.add(caps(caps)),
              () ->
                  answer.findNearest(posture).ifPresent(n -> all.add(none(n, hasDrive(caseFile)))));
    }
    all.add(noseDrop(caseFile));
    all.add(breach(caseFile));
    all.add(ramp(caseFile));
    OptionalDouble permitted = study.drive().mostPower();
    if (permitted.isPresent()) {
      all.add(
          "You permit "
              + watts(permitted)
              + ": a speed that takes more is shown all the same, with what it takes.");
    }
    all.add(whose());
    return all;
  }

  private static boolean hasDrive(CaseFile caseFile) {
    return caseFile.rideCase().setup().drive().isPresent();
  }

  private String asked() {
    return "the bow clear for "
        + seconds(limits.of(RideLimit.BOW_CLEAR_TIME))
        + ", nothing out of the water for "
        + seconds(limits.of(RideLimit.BREACH_TIME));
  }

  private String caps(FallCaps caps) {
    List<String> settings = new ArrayList<>();
    FallDrive drive = answer.study().drive();
    if (!caps.whole()) {
      settings.add("a speed of at most " + amounts.speed(caps.speed()));
    }
    if (caps.ramp() > drive.ramp()) {
      settings.add("a throttle ramp of at least " + seconds(caps.ramp()));
    }
    if (caps.power().isPresent() && !caps.power().equals(drive.mostPower())) {
      settings.add("at most " + watts(caps.power()));
    }
    String start = Sentence.upperFirst(of(caps.posture()));
    return settings.isEmpty()
        ? start + ": as the remote is, it is inside the limits of first flights: " + asked() + "."
        : start
            + ": set the remote to "
            + join(settings)
            + "; then it is inside the limits of first flights: "
            + asked()
            + ".";
  }

  private static String join(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private String none(FallAnswer.Nearest nearest, boolean hasDrive) {
    FallPoint p = nearest.point();
    return Sentence.upperFirst(of(p.posture()))
        + ": no cap brings it inside. Nearest it comes at "
        + amounts.speed(p.speed())
        + nearest.drive().mostPower().stream()
            .mapToObj(w -> ", with " + Shown.decimals(w, 0) + " W at most")
            .findFirst()
            .orElse("")
        + (hasDrive ? " and a ramp of " : ", the pull let go over ")
        + seconds(nearest.drive().ramp())
        + ": weight to the front foot, "
        + contactWords(p.noseDrop())
        + "; weight to the back foot, "
        + outWords(p.breach())
        + ".";
  }

  private static String contactWords(NoseDrop drop) {
    if (drop.contact().isPresent()) {
      return "the "
          + (drop.bowFirst() ? "bow" : "stern")
          + " meets the water after "
          + seconds(drop.contact().getAsDouble());
    }
    return drop.trace().end() == MotionEnd.LIMIT_OF_MODEL
        ? "it goes beyond what is computed after " + seconds(drop.trace().last().time())
        : "nothing meets the water";
  }

  private static String outWords(Breach breach) {
    return switch (breach.end()) {
      case WING_BREACHES -> "a wing comes out after " + seconds(breach.margin());
      case PROPELLER_BREACHES -> "the propeller comes out after " + seconds(breach.margin());
      case RAN_OUT -> "nothing comes out";
      default -> "it goes beyond what is computed after " + seconds(breach.margin());
    };
  }

  /** The fall nearest to the wished speed in the case's own posture. */
  private FallPoint own(CaseFile caseFile) {
    Posture posture = caseFile.notes().posture().body();
    double wished = caseFile.rideCase().rider().wishedSpeed();
    return answer.study().of(posture).stream()
        .min(Comparator.comparingDouble(p -> Math.abs(p.speed() - wished)))
        .orElseThrow();
  }

  private String noseDrop(CaseFile caseFile) {
    FallPoint p = own(caseFile);
    return "Letting go while the weight goes to the front foot, "
        + of(p.posture())
        + " at "
        + amounts.speed(p.speed())
        + ": the deck goes down to "
        + Shown.nose(Shown.degrees(p.noseDrop().lowestPitch()))
        + ", "
        + contactWords(p.noseDrop())
        + ".";
  }

  private String breach(CaseFile caseFile) {
    FallPoint p = own(caseFile);
    return (hasDrive(caseFile)
            ? "All the throttle that is permitted while the weight goes to the back foot, there: "
            : "Weight to the back foot, there, the pull held: ")
        + outWords(p.breach())
        + ".";
  }

  private String ramp(CaseFile caseFile) {
    String ramp = seconds(answer.study().drive().ramp());
    if (!hasDrive(caseFile)) {
      return "Without a drive it is the pull that goes to nothing in "
          + ramp
          + (answer.ramp() == RampSource.USUAL ? ": chosen, no source." : ".");
    }
    return switch (answer.ramp()) {
      case ASKED -> "The throttle goes in the " + ramp + " that you asked for.";
      case CASE -> "The throttle goes in " + ramp + ", as the case says.";
      case USUAL ->
          "Find out how quickly the remote lets go: the case says no throttle_ramp_s, so that "
              + ramp
              + " is taken, as quick as weight goes to one foot. Chosen, no source.";
    };
  }

  private String whose() {
    boolean tightened =
        limits.isTightened(RideLimit.BOW_CLEAR_TIME) || limits.isTightened(RideLimit.BREACH_TIME);
    return (tightened
            ? "The limits of first flights are tightened by your shop"
            : "The limits of first flights are chosen, with no published source")
        + ". Still water, a rider who does not step off, forces as in a steady flow. Nothing here"
        + " says that a fall does no harm.";
  }

  private static String watts(OptionalDouble power) {
    // A cap that is shown must not permit more than the one that was found.
    return Shown.decimals(Math.floor(power.orElseThrow()), 0) + " W";
  }

  static String seconds(double time) {
    return Shown.decimals(time, 2) + " s";
  }
}
