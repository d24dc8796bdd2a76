package trimwright.exchange.write;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.words.FallWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.fall.Breach;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.NoseDrop;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/** The falls of a case as JSON and as text. */
public final class FallWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-falls/1";

  private FallWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param answer its falls
   * @return text that satisfies {@code falls.schema.json}
   */
  public static String json(CaseFile caseFile, FallAnswer answer) {
    RideLimits limits = caseFile.rideCase().limits();
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    JsonFields fields =
        document
            .fields()
            .text("name", caseFile.name())
            .text("sections", SectionCode.of(caseFile))
            .number("throttle_ramp_s", answer.study().drive().ramp())
            .text("throttle_ramp_from", Codes.of(answer.ramp()))
            .number("max_power_w", answer.study().drive().mostPower())
            .number("least_bow_clear_time_s", limits.of(RideLimit.BOW_CLEAR_TIME))
            .number("least_breach_time_s", limits.of(RideLimit.BREACH_TIME));
    fields.list(
        "points",
        answer.study().points(),
        (item, p) -> {
          item.text("posture", Codes.of(p.posture()));
          point(item, p, limits);
        });
    fields.list(
        "first_flights", List.of(Posture.values()), (item, p) -> verdict(item, p, answer, limits));
    fields.texts("words", FallWords.of(caseFile, answer, Measures.METRIC));
    fields.texts("cautions", CautionWords.listFor(caseFile));
    return document.text();
  }

  private static void point(JsonFields fields, FallPoint p, RideLimits limits) {
    NoseDrop drop = p.noseDrop();
    Breach breach = p.breach();
    fields
        .number("speed_kmh", Shown.kmh(p.speed()))
        .flag("inside", p.inside(limits))
        .flag("bow_clear_inside", p.bowClear(limits))
        .flag("breach_inside", p.staysIn(limits));
    fields
        .object("nose_drop")
        .number("lowest_pitch_deg", Shown.degrees(drop.lowestPitch()))
        .number("bow_clearance_mm", Shown.mm(drop.bowClearance()))
        .text("ended_by", Codes.of(drop.trace().end()))
        .number("contact_s", drop.contact())
        .number("bow_clear_s", finite(drop.bowClearFor()));
    fields
        .object("breach")
        .text("ended_by", Codes.of(breach.end()))
        .number("breach_s", breach.time())
        .number("followed_s", breach.trace().last().time());
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private static void verdict(
      JsonFields fields, Posture posture, FallAnswer answer, RideLimits limits) {
    Optional<FallCaps> caps = answer.study().findCaps(posture);
    fields.text("posture", Codes.of(posture));
    caps.ifPresentOrElse(
        c ->
            fields
                .object("caps")
                .number("max_speed_kmh", Shown.kmh(c.speed()))
                .flag("every_rideable_speed", c.whole())
                .number("throttle_ramp_s", c.ramp())
                .number("max_power_w", c.power()),
        () -> fields.none("caps"));
    answer
        .findNearest(posture)
        .ifPresentOrElse(
            n -> {
              JsonFields nearest =
                  fields
                      .object("nearest")
                      .number("throttle_ramp_s", n.drive().ramp())
                      .number("max_power_w", n.drive().mostPower());
              point(nearest, n.point(), limits);
            },
            () -> fields.none("nearest"));
  }

  /**
   * The falls as text for a terminal.
   *
   * @param caseFile the case
   * @param answer its falls
   * @return the text
   */
  public static String table(CaseFile caseFile, FallAnswer answer) {
    RideLimits limits = caseFile.rideCase().limits();
    StringBuilder text = new StringBuilder(caseFile.name()).append("\n\n");
    FallWords.of(caseFile, answer, Measures.METRIC)
        .forEach(sentence -> text.append(sentence).append('\n'));
    for (Posture posture : Posture.values()) {
      List<FallPoint> points = answer.study().of(posture);
      if (points.isEmpty()) {
        continue;
      }
      TextTable table =
          new TextTable()
              .number("speed", "km/h")
              .number("lowest", "deg")
              .number("bow", "mm clear")
              .words("touches")
              .words("comes out")
              .words("first flights");
      for (FallPoint p : points) {
        table.row(
            List.of(
                Shown.decimals(Shown.kmh(p.speed()), 1),
                Shown.decimals(Shown.degrees(p.noseDrop().lowestPitch()), 1),
                Shown.decimals(Shown.mm(p.noseDrop().bowClearance()), 0),
                FallWords.contact(p.noseDrop()),
                FallWords.out(p.breach()),
                inside(p, limits)));
      }
      text.append("\n").append(heading(posture)).append(":\n\n").append(table.text());
    }
    return text.toString();
  }

  private static String heading(Posture posture) {
    String word = FallWords.of(posture);
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private static String inside(FallPoint p, RideLimits limits) {
    if (p.inside(limits)) {
      return "inside";
    }
    boolean bow = !p.bowClear(limits);
    boolean out = !p.staysIn(limits);
    return bow && out ? "nose drop and breach" : bow ? "nose drop" : "breach";
  }
}
