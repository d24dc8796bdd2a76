package trimwright.reference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The page of checks, written from the tables and the results. */
final class ValidationPage {
  private static final Map<String, String> HEADINGS =
      Map.ofEntries(
          Map.entry("water", "Water"),
          Map.entry("section", "Sections"),
          Map.entry("wing", "Wings alone, deep water"),
          Map.entry("free-surface", "Below the surface"),
          Map.entry("tail", "Wing and tail"),
          Map.entry("strut", "Mast, bodies, junctions"),
          Map.entry("propeller", "Propellers"),
          Map.entry("planing", "Boards on the water"),
          Map.entry("limit", "Turns and cavitation"),
          Map.entry("wave", "Waves"),
          Map.entry("motion", "Motion"));

  private ValidationPage() {}

  /** The page as Markdown. */
  static String markdown(List<Check> checks, List<CheckResult> results, Ledger ledger) {
    Map<String, CheckResult> byId =
        results.stream().collect(Collectors.toMap(CheckResult::id, Function.identity()));
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Validation

        Published values beside what the program computes, each with its source ([references.md](references.md)), how
        the figure came here, and a tolerance with its reason in the tables of the module `reference`. `./run checks`
        computes the same rows. Computed values and errors are rounded to a hundredth of the tolerance.

        This page is written by a test from the tables and the results; the test fails when it is out of date.

        """);
    counts(page, checks, CheckSummary.of(results));
    misses(page, ledger);
    for (String topic : CheckTable.TOPICS) {
      page.append("\n## ").append(HEADINGS.get(topic)).append("\n\n");
      page.append(
          "| check | quantity | source | came by | expected | computed | error | tolerance | unit |"
              + " met |\n");
      page.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
      checks.stream()
          .filter(check -> check.topic().equals(topic))
          .forEach(check -> row(page, check, byId.get(check.id())));
    }
    return page.toString();
  }

  private static void counts(StringBuilder page, List<Check> checks, CheckSummary summary) {
    long fitted = checks.stream().filter(check -> check.notes().contains("fitted to")).count();
    page.append("| came by | met | missed, all in the ledger |\n| --- | --- | --- |\n");
    for (Provenance provenance : Provenance.values()) {
      CheckSummary.Tally tally = summary.byProvenance().get(provenance);
      page.append(
          String.format(
              Locale.ROOT, "| %s | %d | %d |%n", provenance.text(), tally.met(), tally.missed()));
    }
    page.append(
        String.format(
            Locale.ROOT,
            "| all | %d | %d |%n%nSources not in hand: %d, listed in [references.md](references.md). Of the"
                + " checks, %d measure what a section model was fitted to: that they are met shows that the"
                + " fit is close and no more; their notes in the tables say so.%n",
            summary.total().met(),
            summary.total().missed(),
            summary.notInHand(),
            fitted));
  }

  private static void misses(StringBuilder page, Ledger ledger) {
    page.append("\n## Known misses\n\n| check | computed | why |\n| --- | --- | --- |\n");
    for (Ledger.Entry entry : ledger.list()) {
      page.append(
          String.format(
              Locale.ROOT, "| %s | %s | %s |%n", entry.id(), entry.computed(), entry.reason()));
    }
  }

  private static void row(StringBuilder page, Check check, CheckResult result) {
    page.append(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %s | %s | %s | %s | %s | %s | %s |%n",
            check.id(),
            check.quantity(),
            check.source(),
            check.provenance().text(),
            plain(new BigDecimal(Double.toString(check.expected()))),
            rounded(result.computed(), check.tolerance()),
            rounded(result.error(), check.tolerance()),
            plain(new BigDecimal(String.format(Locale.ROOT, "%.2g", check.tolerance()))),
            check.unit().equals("1") ? "" : check.unit(),
            result.met() ? "yes" : "**no**"));
  }

  /** Rounded to a hundredth of the tolerance, so that the last bits of a machine do not show. */
  private static String rounded(double value, double tolerance) {
    int decimals = 2 - (int) Math.floor(Math.log10(tolerance));
    return plain(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  private static String plain(BigDecimal value) {
    if (value.signum() == 0) {
      return "0";
    }
    // Very small and very large figures are easier read with an exponent.
    double size = Math.abs(value.doubleValue());
    return size < 1e-4 || size >= 1e7
        ? value.stripTrailingZeros().toString().replace("E", "e")
        : value.stripTrailingZeros().toPlainString();
  }
}
