package trimwright.exchange.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaProblems;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.read.internal.YamlTree;
import trimwright.kernel.surface.WingShape;

/** Reads stock files: what a shop owns. Stateless and safe for several threads. */
public final class StockReader {
  private static final String NO_NAME = "unnamed stock";

  private static final String CASE_INSTEAD =
      "This looks like a case file: a stock file holds lists of parts (boards, masts, front_wings"
          + " and so on).";

  private StockReader() {}

  /**
   * Reads a stock file.
   *
   * @param text YAML or JSON
   * @param files finds the coordinates files that the text names
   * @return the stock, or everything that is wrong with the text; no text makes it throw
   */
  public static Reading<StockFile> read(String text, SectionFiles files) {
    YamlTree tree = YamlParser.parse(text);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    if (document.has("rider") && document.has("setup")) {
      return new Refused<>(List.of(new Problem("", OptionalInt.empty(), CASE_INSTEAD)));
    }
    SchemaProblems.list(SchemaBook.STOCK, tree, document).forEach(findings::add);
    ObjectNode filled = SchemaBook.STOCK.filled(document);
    Values root = new Values("", filled, findings.bad());
    StockChecks.run(root, findings);
    SectionChoice sections = new SectionChoice(files);
    Map<String, WingShape> shapes = new HashMap<>();
    for (StockList list : List.of(StockList.FRONT_WINGS, StockList.STABILIZERS)) {
      for (Values wing : root.listGroups(list.key())) {
        WingBuilder.build(wing, sections, findings)
            .ifPresent(shape -> shapes.put(wing.path(), shape));
      }
    }
    if (!findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    return new Accepted<>(
        new StockFile(
            root.findText("name").orElse(NO_NAME),
            StockDigest.of(filled, sections),
            StockMapping.stock(root, shapes),
            text,
            files,
            filled));
  }
}
