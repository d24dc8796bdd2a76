package trimwright.exchange.read;

import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaProblems;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.read.internal.YamlTree;

/** Reads case files: a rider on a setup in a water. Stateless and safe for several threads. */
public final class CaseReader {
  private CaseReader() {}

  /**
   * Reads a case file.
   *
   * @param text YAML or JSON
   * @param files finds the coordinates files that the text names
   * @return the case, or everything that is wrong with the text; no text makes it throw
   */
  public static Reading<CaseFile> read(String text, SectionFiles files) {
    YamlTree tree = YamlParser.parse(text);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    SchemaProblems.list(SchemaBook.CASE, tree, document).forEach(findings::add);
    return CaseAssembly.of(document, () -> text, files, findings)
        .<Reading<CaseFile>>map(Accepted::new)
        .orElseGet(() -> new Refused<>(Problem.all(findings)));
  }
}
