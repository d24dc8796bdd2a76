package trimwright.command;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import trimwright.exchange.read.Digest;
import trimwright.exchange.write.JsonDocument;
import trimwright.exchange.write.JsonFields;
import trimwright.exchange.write.TextTable;
import trimwright.reference.CheckResult;
import trimwright.reference.CheckSummary;
import trimwright.reference.Ledger;
import trimwright.reference.NotInHand;
import trimwright.reference.Provenance;

/**
 * All checks as a document and as a table.
 *
 * @param results every published value beside the computed one
 * @param ledger the known misses
 * @param notInHand sources that could not be obtained
 * @param faults where results and ledger disagree
 */
record ChecksReport(
    List<CheckResult> results, Ledger ledger, List<NotInHand> notInHand, List<String> faults) {
  /** Name and number of the JSON document. */
  static final String FORMAT = "trimwright-checks/1";

  /** Digits of a figure in the table: one more than most sources print. */
  private static final MathContext SHOWN = new MathContext(6);

  /** The report on given results. */
  static ChecksReport of(List<CheckResult> results, Ledger ledger) {
    return new ChecksReport(results, ledger, NotInHand.list(), ledger.faults(results));
  }

  String json() {
    JsonDocument document = JsonDocument.start(FORMAT, digest());
    JsonFields fields = document.fields();
    fields.list("checks", results, ChecksReport::write);
    fields.list(
        "ledger",
        ledger.list(),
        (item, entry) -> item.text("id", entry.id()).text("reason", entry.reason()));
    fields.list(
        "not_in_hand",
        notInHand,
        (item, source) ->
            item.text("source", source.source())
                .text("would_give", source.wouldGive())
                .text("where_looked", source.whereLooked()));
    fields.texts("faults", faults);
    return document.text();
  }

  private static void write(JsonFields item, CheckResult result) {
    item.text("id", result.id())
        .text("source", result.source())
        .text("provenance", result.provenance().text())
        .number("expected", result.expected())
        .number("computed", result.computed())
        .number("error", result.error())
        .number("tolerance", result.tolerance())
        .text("unit", result.unit())
        .flag("met", result.met());
  }

  /** Which published values these are: the same for the same list, whatever is computed. */
  private String digest() {
    return Digest.of(
        results.stream()
            .map(r -> r.id() + " " + r.expected() + " " + r.tolerance() + " " + r.unit())
            .collect(Collectors.joining("\n")));
  }

  String table() {
    TextTable table =
        new TextTable()
            .words("check")
            .number("expected", "")
            .number("computed", "")
            .number("error", "")
            .number("tolerance", "")
            .words("unit")
            .words("verdict")
            .words("provenance")
            .words("source");
    for (CheckResult result : results) {
      table.row(
          List.of(
              result.id(),
              shown(result.expected()),
              shown(result.computed()),
              shown(result.error()),
              shown(result.tolerance()),
              result.unit(),
              verdict(result),
              result.provenance().text(),
              result.source()));
    }
    return table.text() + "\n" + summary() + misses() + missing();
  }

  private String verdict(CheckResult result) {
    if (result.met()) {
      return "met";
    }
    return ledger.find(result.id()).isPresent() ? "known miss" : "MISSED";
  }

  private String summary() {
    CheckSummary summary = CheckSummary.of(results);
    StringBuilder text = new StringBuilder();
    for (Provenance provenance : Provenance.values()) {
      CheckSummary.Tally tally = summary.byProvenance().get(provenance);
      text.append(provenance.text() + ": " + tally.met() + " of " + tally.all() + " met\n");
    }
    CheckSummary.Tally all = summary.total();
    return text + "all together: " + all.met() + " of " + all.all() + " met\n";
  }

  private String misses() {
    return ledger.list().isEmpty()
        ? ""
        : ledger.list().stream()
            .map(entry -> "  " + entry.id() + ": " + entry.reason() + "\n")
            .collect(Collectors.joining("", "\nKnown misses:\n", ""));
  }

  private String missing() {
    return notInHand.isEmpty()
        ? ""
        : notInHand.stream()
            .map(source -> "  " + source.source() + " (" + source.wouldGive() + ")\n")
            .collect(
                Collectors.joining("", "\nSources not in hand, nothing taken from them:\n", ""));
  }

  private static String shown(double value) {
    BigDecimal rounded = new BigDecimal(value).round(SHOWN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toString();
  }
}
