package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.Values;

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
  private final Naming names;

  private CaseChecks(Values root, Findings findings) {
    this.root = root;
    this.findings = findings;
    names = findings.naming();
  }

  /** Runs all checks on a filled document. */
  static void run(Values root, Findings findings) {
    CaseChecks checks = new CaseChecks(root, findings);
    root.findGroup("rider").ifPresent(rider -> feet(rider, findings));
    root.findGroup("setup").ifPresent(checks::setup);
    checks.pull();
  }

  /** What joins the keys of a rider. */
  static void feet(Values rider, Findings findings) {
    Naming names = findings.naming();
    if (!rider.has("front_foot_mm", "back_foot_mm")) {
      return;
    }
    String front = rider.at("front_foot_mm");
    String back = rider.at("back_foot_mm");
    double frontPlace = rider.findWritten("front_foot_mm").getAsDouble();
    double backPlace = rider.findWritten("back_foot_mm").getAsDouble();
    if (frontPlace - backPlace < LEAST_STANCE) {
      findings.report(
          List.of(front, back),
          names.opening(front)
              + " is "
              + names.value(front, frontPlace)
              + " and "
              + names.name(back)
              + " is "
              + names.value(back, backPlace)
              + "; the front foot must stand at least "
              + names.amount(front, LEAST_STANCE)
              + " ahead of the back foot.");
    }
  }

  private void setup(Values setup) {
    Optional<Values> mast = setup.findGroup("mast");
    mast.ifPresent(m -> mast(m, findings));
    Optional<Values> frontWing = setup.findGroup("front_wing");
    Optional<Values> ride = root.findGroup("ride");
    if (mast.isPresent() && ride.isPresent()) {
      immersion(ride.get(), mast.get(), frontWing);
    }
    Optional<Values> drive = setup.findGroup("drive");
    if (drive.isPresent() && ride.isPresent()) {
      driveUnderWater(drive.get(), ride.get(), frontWing);
    }
    setup.findGroup("board").ifPresent(board -> volume(board, findings));
    wingsApart(setup);
    DriveChecks.run(setup, findings);
  }

  private static double height(Optional<Values> wing) {
    return wing.map(w -> w.findWritten("height_mm").orElse(0)).orElse(0.0);
  }

  private void immersion(Values ride, Values mast, Optional<Values> wing) {
    if (!ride.has("mast_immersion_mm") || !mast.has("length_mm")) {
      return;
    }
    String depthKey = ride.at("mast_immersion_mm");
    String lengthKey = mast.at("length_mm");
    double depth = ride.findWritten("mast_immersion_mm").getAsDouble();
    double length = mast.findWritten("length_mm").getAsDouble();
    double height = height(wing);
    if (depth < length - height) {
      return;
    }
    List<String> keys = new ArrayList<>(List.of(depthKey, lengthKey));
    String raised = "";
    if (height != 0) {
      String heightKey = wing.get().at("height_mm");
      keys.add(heightKey);
      raised = " and " + names.name(heightKey) + " " + names.value(heightKey, height);
    }
    findings.report(
        keys,
        names.opening(depthKey)
            + " is "
            + names.value(depthKey, depth)
            + ", permitted is below "
            + names.value(depthKey, length - height)
            + ": with "
            + names.name(lengthKey)
            + " "
            + names.value(lengthKey, length)
            + raised
            + " the board would be in the water.");
  }

  private void driveUnderWater(Values drive, Values ride, Optional<Values> wing) {
    if (!drive.has("height_above_fuselage_mm") || !ride.has("mast_immersion_mm")) {
      return;
    }
    String heightKey = drive.at("height_above_fuselage_mm");
    String depthKey = ride.at("mast_immersion_mm");
    double height = drive.findWritten("height_above_fuselage_mm").getAsDouble();
    double depth = ride.findWritten("mast_immersion_mm").getAsDouble();
    double most = depth + height(wing);
    if (height >= most) {
      List<String> keys = new ArrayList<>(List.of(heightKey, depthKey));
      if (height(wing) != 0) {
        keys.add(wing.get().at("height_mm"));
      }
      findings.report(
          keys,
          names.opening(heightKey)
              + " is "
              + names.value(heightKey, height)
              + ", permitted is below "
              + names.value(heightKey, most)
              + ": with "
              + names.name(depthKey)
              + " "
              + names.value(depthKey, depth)
              + " the thrust line would be out of the water.");
    }
  }

  /** What joins the keys of a mast. */
  static void mast(Values mast, Findings findings) {
    TooLarge.check(mast, "thickness_mm", mast, "chord_mm", findings);
  }

  /** What joins the keys of a board. */
  static void volume(Values board, Findings findings) {
    Naming names = findings.naming();
    if (!board.has("volume_l", "length_mm", "width_mm", "thickness_mm")) {
      return;
    }
    String key = board.at("volume_l");
    double box = board.get("length_mm") * board.get("width_mm") * board.get("thickness_mm") * 1000;
    double volume = board.findWritten("volume_l").getAsDouble();
    if (volume > box * (1 + VOLUME_PLAY)) {
      List<String> sides =
          List.of(board.at("length_mm"), board.at("width_mm"), board.at("thickness_mm"));
      findings.report(
          List.of(key, sides.get(0), sides.get(1), sides.get(2)),
          names.opening(key)
              + " is "
              + names.value(key, volume)
              + ", permitted is no more than "
              + names.amount(key, Math.round(box))
              + ": "
              + String.join(" times ", sides.stream().map(names::brief).toList())
              + " has no room for more.");
    }
  }

  private void wingsApart(Values setup) {
    Optional<Values> fuselage = setup.findGroup("fuselage");
    if (fuselage.isEmpty()
        || !fuselage.get().has("front_wing_ahead_of_mast_mm", "stabilizer_behind_mast_mm")) {
      return;
    }
    Optional<Values> front = rootPlace(setup.findGroup("front_wing"));
    Optional<Values> back = rootPlace(setup.findGroup("stabilizer"));
    double frontChord = rootChord(front);
    double backChord = rootChord(back);
    double distance =
        fuselage.get().findWritten("front_wing_ahead_of_mast_mm").getAsDouble()
            + fuselage.get().findWritten("stabilizer_behind_mast_mm").getAsDouble();
    // Three quarters of the front chord lie behind its quarter chord, one of the rear ahead of its
    // own
    double least = 0.75 * frontChord + 0.25 * backChord;
    if (frontChord > 0 && backChord > 0 && distance <= least) {
      String ahead = fuselage.get().at("front_wing_ahead_of_mast_mm");
      String behind = fuselage.get().at("stabilizer_behind_mast_mm");
      findings.report(
          List.of(
              behind,
              ahead,
              front.get().at(chordKey(front.get())),
              back.get().at(chordKey(back.get()))),
          names.opening(ahead)
              + " and "
              + names.name(behind)
              + " put the wings' quarter chords "
              + names.amount(behind, distance)
              + " apart, permitted is above "
              + names.value(behind, least)
              + ": the wings would overlap.");
    }
  }

  /** Where a wing's chord at the root stands: in the wing, or in the first of its stations. */
  private static Optional<Values> rootPlace(Optional<Values> wing) {
    return wing.flatMap(
        w ->
            w.group().has("stations")
                ? w.listGroups("stations").stream().findFirst()
                : Optional.of(w));
  }

  private static String chordKey(Values rootPlace) {
    return rootPlace.path().endsWith("]") ? "chord_mm" : "root_chord_mm";
  }

  private static double rootChord(Optional<Values> place) {
    return place.map(p -> p.findWritten(chordKey(p)).orElse(0)).orElse(0.0);
  }

  private void pull() {
    if (root.group().has("pull")
        && root.findGroup("setup").filter(s -> s.group().has("drive")).isPresent()) {
      findings.report(
          List.of("pull", "setup.drive"),
          names.opening("pull")
              + " and "
              + names.name("setup.drive")
              + " stand together; permitted is one of them: leave out the drive for a ride under a"
              + " wing, kite or tow line, or leave out "
              + names.name("pull")
              + ".");
    }
  }
}
