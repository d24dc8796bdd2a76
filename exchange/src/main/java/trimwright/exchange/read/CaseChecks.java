package trimwright.exchange.read;

import java.util.Optional;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.Words;

/**
 * Checks that join several keys of a case; each runs only where its keys are good by themselves.
 */
final class CaseChecks {
  /** Least distance between the feet [mm]: closer ones could not hold a board. */
  private static final double LEAST_STANCE = 100;

  /** Share by which rounding may lift a volume above its box. */
  private static final double VOLUME_PLAY = 0.02;

  private final Values root;
  private final Findings findings;

  private CaseChecks(Values root, Findings findings) {
    this.root = root;
    this.findings = findings;
  }

  /** Runs all checks on a filled document. */
  static void run(Values root, Findings findings) {
    CaseChecks checks = new CaseChecks(root, findings);
    root.findGroup("rider").ifPresent(checks::feet);
    root.findGroup("setup").ifPresent(checks::setup);
    checks.pull();
  }

  private void feet(Values rider) {
    if (!rider.has("front_foot_mm", "back_foot_mm")) {
      return;
    }
    double front = rider.findWritten("front_foot_mm").getAsDouble();
    double back = rider.findWritten("back_foot_mm").getAsDouble();
    if (front - back < LEAST_STANCE) {
      findings.report(
          rider.at("front_foot_mm"),
          rider.at("front_foot_mm")
              + " is "
              + Words.number(front)
              + " and "
              + rider.at("back_foot_mm")
              + " is "
              + Words.number(back)
              + "; the front foot must stand at least "
              + Words.number(LEAST_STANCE)
              + " mm ahead of the back foot.");
    }
  }

  private void setup(Values setup) {
    Optional<Values> mast = setup.findGroup("mast");
    mast.ifPresent(m -> notAbove(m, "thickness_mm", m, "chord_mm", 0));
    double wingHeight =
        setup.findGroup("front_wing").map(w -> w.findWritten("height_mm").orElse(0)).orElse(0.0);
    Optional<Values> ride = root.findGroup("ride");
    if (mast.isPresent() && ride.isPresent()) {
      immersion(ride.get(), mast.get(), wingHeight);
    }
    Optional<Values> drive = setup.findGroup("drive");
    if (drive.isPresent() && ride.isPresent()) {
      driveUnderWater(drive.get(), ride.get(), wingHeight);
    }
    setup.findGroup("board").ifPresent(this::volume);
    wingsApart(setup);
  }

  private void notAbove(Values low, String lowKey, Values high, String highKey, double play) {
    if (!low.has(lowKey) || !high.has(highKey)) {
      return;
    }
    double value = low.findWritten(lowKey).getAsDouble();
    double limit = high.findWritten(highKey).getAsDouble();
    if (value > limit + play) {
      findings.report(
          low.at(lowKey),
          low.at(lowKey)
              + " is "
              + Words.number(value)
              + ", permitted is no more than "
              + high.at(highKey)
              + ", which is "
              + Words.number(limit)
              + ".");
    }
  }

  private void immersion(Values ride, Values mast, double wingHeight) {
    if (!ride.has("mast_immersion_mm") || !mast.has("length_mm")) {
      return;
    }
    double depth = ride.findWritten("mast_immersion_mm").getAsDouble();
    double length = mast.findWritten("length_mm").getAsDouble();
    if (depth >= length - wingHeight) {
      findings.report(
          ride.at("mast_immersion_mm"),
          ride.at("mast_immersion_mm")
              + " is "
              + Words.number(depth)
              + ", permitted is below "
              + Words.number(length - wingHeight)
              + ": with "
              + mast.at("length_mm")
              + " "
              + Words.number(length)
              + (wingHeight == 0
                  ? ""
                  : " and setup.front_wing.height_mm " + Words.number(wingHeight))
              + " the board would be in the water.");
    }
  }

  private void driveUnderWater(Values drive, Values ride, double wingHeight) {
    if (!drive.has("height_above_fuselage_mm") || !ride.has("mast_immersion_mm")) {
      return;
    }
    double height = drive.findWritten("height_above_fuselage_mm").getAsDouble();
    double depth = ride.findWritten("mast_immersion_mm").getAsDouble();
    if (height >= depth + wingHeight) {
      findings.report(
          drive.at("height_above_fuselage_mm"),
          drive.at("height_above_fuselage_mm")
              + " is "
              + Words.number(height)
              + ", permitted is below "
              + Words.number(depth + wingHeight)
              + ": with "
              + ride.at("mast_immersion_mm")
              + " "
              + Words.number(depth)
              + " the thrust line would be out of the water.");
    }
  }

  private void volume(Values board) {
    if (!board.has("volume_l", "length_mm", "width_mm", "thickness_mm")) {
      return;
    }
    double box = board.get("length_mm") * board.get("width_mm") * board.get("thickness_mm") * 1000;
    double volume = board.findWritten("volume_l").getAsDouble();
    if (volume > box * (1 + VOLUME_PLAY)) {
      findings.report(
          board.at("volume_l"),
          board.at("volume_l")
              + " is "
              + Words.number(volume)
              + ", permitted is no more than "
              + Math.round(box)
              + " l: length_mm times width_mm times thickness_mm has no room for more.");
    }
  }

  private void wingsApart(Values setup) {
    Optional<Values> fuselage = setup.findGroup("fuselage");
    if (fuselage.isEmpty()
        || !fuselage.get().has("front_wing_ahead_of_mast_mm", "stabilizer_behind_mast_mm")) {
      return;
    }
    double front = rootChord(setup.findGroup("front_wing"));
    double back = rootChord(setup.findGroup("stabilizer"));
    double distance =
        fuselage.get().findWritten("front_wing_ahead_of_mast_mm").getAsDouble()
            + fuselage.get().findWritten("stabilizer_behind_mast_mm").getAsDouble();
    // Three quarters of the front chord lie behind its quarter chord, one of the rear ahead of its
    // own
    double least = 0.75 * front + 0.25 * back;
    if (front > 0 && back > 0 && distance <= least) {
      findings.report(
          fuselage.get().at("stabilizer_behind_mast_mm"),
          fuselage.get().at("front_wing_ahead_of_mast_mm")
              + " and stabilizer_behind_mast_mm put the wings' quarter chords "
              + Words.number(distance)
              + " mm apart, permitted is above "
              + Words.number(least)
              + ": the wings would overlap.");
    }
  }

  private static double rootChord(Optional<Values> wing) {
    if (wing.isEmpty()) {
      return 0;
    }
    return wing.get().group().has("stations")
        ? wing.get().listGroups("stations").stream()
            .findFirst()
            .map(s -> s.findWritten("chord_mm").orElse(0))
            .orElse(0.0)
        : wing.get().findWritten("root_chord_mm").orElse(0);
  }

  private void pull() {
    if (root.group().has("pull")
        && root.findGroup("setup").filter(s -> s.group().has("drive")).isPresent()) {
      findings.report(
          "pull",
          "pull and setup.drive stand together; permitted is one of them: leave out the drive for a"
              + " ride under a wing, kite or tow line, or leave out pull.");
    }
  }
}
