package trimwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.Shown;
import trimwright.kernel.band.Spread;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.SlowFlight.BankedStall;
import trimwright.kernel.hull.TakeOff;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.propel.BatteryPack;
import trimwright.kernel.range.HomeRide;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.sheet.SheetPage.Row;

/** From the start to the way home, in a few rows. */
final class SheetLimits {
  /** A power known worse than this says nothing of the time [1]. */
  private static final double MOST_BAND = 0.9;

  private final CaseFile caseFile;
  private final Envelope envelope;
  private final SheetNumbers numbers;

  SheetLimits(CaseFile caseFile, Envelope envelope, SheetNumbers numbers) {
    this.caseFile = caseFile;
    this.envelope = envelope;
    this.numbers = numbers;
  }

  /**
   * The rows.
   *
   * @param outcome of the sheet's speed
   * @param power how far off its power may be, where that is known
   */
  List<Row> rows(TrimOutcome outcome, Optional<Spread> power) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("From start to home", "", true));
    rows.add(row("Leaves the water", takeOff(envelope.takeOff())));
    rows.add(row("Stalls", stall()));
    if (caseFile.rideCase().setup().drive().isEmpty()) {
      outcome
          .findPoint()
          .ifPresent(
              p -> rows.add(row("Pull at " + numbers.speed(p.speed()), numbers.force(p.thrust()))));
    }
    outcome.findPoint().flatMap(point -> battery(point, power)).ifPresent(rows::add);
    envelope.range().flatMap(range -> range.home()).ifPresent(home -> rows.add(home(home)));
    if (caseFile.rideCase().setup().drive().isEmpty()) {
      envelope
          .glide()
          .ifPresent(
              g ->
                  rows.add(
                      row(
                          "Glides best",
                          "at "
                              + numbers.speed(g.bestRatioSpeed())
                              + ", "
                              + Shown.decimals(g.bestRatio(), 1)
                              + " to 1")));
    }
    return rows;
  }

  private String takeOff(TakeOff t) {
    String at = t.liftOff().map(s -> "at " + numbers.speed(s.speed())).orElse("");
    return switch (t.verdict()) {
      case LIFTS ->
          at
              + (t.length().isPresent()
                  ? ", " + numbers.distance(t.length().getAsDouble()) + " at full thrust"
                  : "");
      case LIFTS_WHEN_PULLED -> at + ", pulled by " + numbers.force(t.mostNeeded());
      case THRUST_SHORT -> "not: too little thrust";
      case FEET_CANNOT_REACH -> "not: beyond the feet's reach";
      case NEVER_CARRIED -> "not: too little wing";
      case SINKS -> "not: it sinks at rest";
    };
  }

  /** Straight ahead, and at the steepest bank that was looked at. */
  private String stall() {
    return envelope
        .slowFlight()
        .map(
            slow -> {
              StringBuilder text = new StringBuilder("at " + numbers.speed(slow.stallSpeed()));
              if (!slow.banked().isEmpty()) {
                BankedStall banked = slow.banked().get(slow.banked().size() - 1);
                text.append(", banked ")
                    .append(Shown.decimals(Shown.degrees(banked.bank()), 0))
                    .append("° ")
                    .append(numbers.speed(banked.speed()));
              }
              return text.toString();
            })
        .orElse("never flies");
  }

  /**
   * Time and way with the reserve kept, and how short or long they may be: they go as one over the
   * power, which no ride has measured.
   */
  private Optional<Row> battery(TrimPoint point, Optional<Spread> power) {
    if (envelope.range().isEmpty() || point.electricPower().isEmpty()) {
      return Optional.empty();
    }
    BatteryPack pack = caseFile.rideCase().setup().battery().map(Battery::pack).orElseThrow();
    double reserve = caseFile.rideCase().limits().of(RideLimit.BATTERY_RESERVE);
    double seconds = (1 - reserve) * pack.duration(point.electricPower().getAsDouble());
    double about =
        power
            .map(spread -> spread.reach() / spread.value())
            .orElse(2 * envelope.range().get().basis().deviation());
    return Optional.of(
        row(
            "Battery, " + Shown.decimals(100 * reserve, 0) + "\u00a0% kept",
            Shown.decimals(seconds / 60, 0)
                + "\u00a0min, "
                + numbers.way(seconds * point.speed())
                + " ("
                + Shown.decimals(Math.floor(seconds / 60 / (1 + about)), 0)
                + " to "
                + Shown.decimals(Math.ceil(seconds / 60 / (1 - Math.min(MOST_BAND, about))), 0)
                + "\u00a0min)"));
  }

  private static Row home(HomeRide home) {
    return row(
        "Way home",
        Shown.decimals(100 * home.shareOfUsable(), 0)
            + "\u00a0% of a full battery"
            + (home.enough() ? "" : ": too far"));
  }

  private static Row row(String name, String value) {
    return new Row(name, value, false);
  }
}
