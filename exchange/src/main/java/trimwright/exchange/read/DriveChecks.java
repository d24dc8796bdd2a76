package trimwright.exchange.read;

import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.Values;
import trimwright.kernel.propel.OpenWaterRow;
import trimwright.kernel.propel.SeriesPropeller;

/** Checks that join several keys of drive and battery. */
final class DriveChecks {
  private final Findings findings;
  private final Naming names;

  private DriveChecks(Findings findings) {
    this.findings = findings;
    names = findings.naming();
  }

  /** Runs them on a filled setup. */
  static void run(Values setup, Findings findings) {
    setup.findGroup("drive").ifPresent(drive -> drive(drive, findings));
    setup.findGroup("battery").ifPresent(battery -> battery(battery, findings));
  }

  /** Runs those of a drive alone. */
  static void drive(Values drive, Findings findings) {
    new DriveChecks(findings).drive(drive);
  }

  /** Runs those of a battery alone. */
  static void battery(Values battery, Findings findings) {
    new DriveChecks(findings).current(battery);
  }

  private void drive(Values drive) {
    List<Values> table = drive.listGroups("open_water");
    drive.findGroup("propeller").ifPresent(p -> propeller(drive, p, table.isEmpty()));
    for (int i = 0; i < table.size(); i++) {
      Optional<Values> before = i == 0 ? Optional.empty() : Optional.of(table.get(i - 1));
      row(table.get(i), before, i == table.size() - 1);
    }
    boolean known = drive.group().has("propeller") || !table.isEmpty();
    for (String other : List.of("propeller", "open_water", "motor_efficiency")) {
      boolean motor = other.equals("motor_efficiency");
      if (drive.has("efficiency") && drive.group().has(other) && !(motor && known)) {
        both(drive.at("efficiency"), drive.at(other));
      }
    }
  }

  private void both(String efficiency, String other) {
    findings.report(
        List.of(efficiency, other),
        names.opening(efficiency)
            + " and "
            + names.name(other)
            + " stand together; permitted is one of them: the first is all of propeller, motor and"
            + " controller already.");
  }

  private void propeller(Values drive, Values propeller, boolean series) {
    if (propeller.has("blades")) {
      double blades = propeller.findWritten("blades").getAsDouble();
      if (blades != Math.rint(blades)) {
        String key = propeller.at("blades");
        findings.report(
            key,
            names.opening(key)
                + " is "
                + names.value(key, blades)
                + ", permitted is a whole number from "
                + SeriesPropeller.FEWEST_BLADES
                + " to "
                + SeriesPropeller.MOST_BLADES
                + ".");
      }
    }
    if (series && propeller.has("pitch_mm") && drive.has("propeller_diameter_mm")) {
      pitch(propeller, drive);
    }
  }

  private void pitch(Values propeller, Values drive) {
    String key = propeller.at("pitch_mm");
    String diameterKey = drive.at("propeller_diameter_mm");
    double pitch = propeller.findWritten("pitch_mm").getAsDouble();
    double diameter = drive.findWritten("propeller_diameter_mm").getAsDouble();
    double ratio = propeller.get("pitch_mm") / drive.get("propeller_diameter_mm");
    if (ratio < SeriesPropeller.LEAST_PITCH || ratio > SeriesPropeller.MOST_PITCH) {
      findings.report(
          List.of(key, diameterKey),
          names.opening(key)
              + " is "
              + names.value(key, pitch)
              + ", permitted is "
              + names.range(
                  key,
                  SeriesPropeller.LEAST_PITCH * diameter,
                  SeriesPropeller.MOST_PITCH * diameter)
              + ": with "
              + names.name(diameterKey)
              + " "
              + names.value(diameterKey, diameter)
              + " no propeller of the published series is pitched so; give its measured table"
              + " (open_water) or leave the propeller out.");
    }
  }

  private void row(Values row, Optional<Values> before, boolean last) {
    if (!row.has("advance_ratio", "thrust_coefficient", "torque_coefficient")) {
      return;
    }
    String advance = row.at("advance_ratio");
    String thrust = row.at("thrust_coefficient");
    String torque = row.at("torque_coefficient");
    if (before.isPresent() && before.get().has("advance_ratio", "thrust_coefficient")) {
      double advanceBefore = before.get().get("advance_ratio");
      if (row.get("advance_ratio") <= advanceBefore) {
        out(advance, row.get("advance_ratio"), "above " + names.amount(advance, advanceBefore));
      }
      double thrustBefore = before.get().get("thrust_coefficient");
      if (row.get("thrust_coefficient") >= thrustBefore) {
        out(thrust, row.get("thrust_coefficient"), "below " + names.amount(thrust, thrustBefore));
      }
    }
    if (!last && row.get("thrust_coefficient") <= 0) {
      out(thrust, row.get("thrust_coefficient"), "above 0 in all rows but the last");
    }
    OpenWaterRow point =
        new OpenWaterRow(
            row.get("advance_ratio"), row.get("thrust_coefficient"), row.get("torque_coefficient"));
    if (point.efficiency() >= 1) {
      double least = up(row.get("torque_coefficient") * point.efficiency());
      out(
          torque,
          row.get("torque_coefficient"),
          "above "
              + names.amount(torque, least)
              + " at this advance ratio and thrust: the propeller would give more power than it"
              + " takes (KQ is wanted, not ten times it)");
    }
  }

  /** Rounded up to what a table prints. */
  private static double up(double coefficient) {
    return Math.ceil(coefficient * 1e4) / 1e4;
  }

  private void out(String key, double value, String permitted) {
    findings.report(
        key,
        names.opening(key)
            + " is "
            + names.value(key, value)
            + ", permitted is "
            + permitted
            + ".");
  }

  private void current(Values battery) {
    for (String key : List.of("max_current_a", "resistance_mohm")) {
      if (battery.has(key) && !battery.group().has("voltage_v")) {
        String path = battery.at(key);
        String voltage = battery.at("voltage_v");
        findings.report(
            List.of(path, voltage),
            names.opening(path)
                + " is "
                + names.value(path, battery.findWritten(key).getAsDouble())
                + " and "
                + names.name(voltage)
                + " is missing; permitted is with it alone.");
      }
    }
  }
}
