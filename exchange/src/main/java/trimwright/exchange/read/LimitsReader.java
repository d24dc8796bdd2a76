package trimwright.exchange.read;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Finding;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaProblems;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.read.internal.YamlTree;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/**
 * Reads a shop's limits: each key that stands in the file tightens one limit, the others stay as
 * they are chosen. Stateless and safe for several threads.
 */
public final class LimitsReader {
  private static final String NO_NAME = "unnamed limits";

  private LimitsReader() {}

  /**
   * Reads a limits file.
   *
   * @param text YAML or JSON
   * @return the limits, or everything that is wrong with the text; no text makes it throw
   */
  public static Reading<LimitsFile> read(String text) {
    YamlTree tree = YamlParser.parse(text);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    SchemaProblems.list(SchemaBook.LIMITS, tree, document).stream()
        .map(finding -> loosened(finding, document))
        .forEach(findings::add);
    if (!findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    Values root = new Values("", document, findings.bad());
    Map<RideLimit, Double> tightened = new EnumMap<>(RideLimit.class);
    for (LimitKey key : LimitKey.values()) {
      OptionalDouble value = root.find(key.key());
      if (value.isPresent()) {
        tightened.put(key.limit(), inside(key.limit(), value.getAsDouble()));
      }
    }
    return new Accepted<>(
        LimitsFile.of(root.findText("name").orElse(NO_NAME), RideLimits.tightened(tightened)));
  }

  /** Says of a figure beyond the chosen one that a shop may tighten only. */
  private static Finding loosened(Finding finding, ObjectNode document) {
    for (LimitKey key : LimitKey.values()) {
      boolean number = finding.key().equals(key.key()) && document.path(key.key()).isNumber();
      if (number) {
        return new Finding(
            finding.keys(),
            finding.line(),
            finding.message() + " A shop may tighten a limit, not loosen it.");
      }
    }
    return finding;
  }

  /** A figure that the schema has let pass, without the last bit that its unit may have cost. */
  private static double inside(RideLimit limit, double value) {
    double low = Math.min(limit.chosen(), limit.strictest());
    double high = Math.max(limit.chosen(), limit.strictest());
    return Math.max(low, Math.min(high, value));
  }
}
