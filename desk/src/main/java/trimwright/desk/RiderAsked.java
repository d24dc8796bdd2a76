package trimwright.desk;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Skill;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.fall.FallDrive;

/** What the rider of a case file asks of every setup. */
public final class RiderAsked {
  private RiderAsked() {}

  /** Whose wishes a rider has. */
  public static RidingKind kind(CaseFile file) {
    return RidingKind.valueOf(file.notes().skill().name());
  }

  /**
   * What is asked.
   *
   * @param file the case
   * @param span the speeds
   * @param feetReach how far both feet may be moved, either way [m]
   * @param weights of wishes that are not those of the kind of riding
   */
  public static RideAsked of(
      CaseFile file, RideSpan span, double feetReach, Map<Wish, Integer> weights) {
    Wishes wishes = Wishes.of(kind(file));
    for (Map.Entry<Wish, Integer> weight : weights.entrySet()) {
      wishes = wishes.weighing(weight.getKey(), weight.getValue());
    }
    Optional<FallDrive> first =
        file.notes().skill() == Skill.FIRST_FLIGHTS
            ? Optional.of(
                new FallDrive(
                    file.notes().throttleRamp().orElse(FallDrive.USUAL_RAMP),
                    OptionalDouble.empty()))
            : Optional.empty();
    return new RideAsked(
        file.rideCase(), span, wishes, feetReach, file.notes().posture().body(), first);
  }
}
