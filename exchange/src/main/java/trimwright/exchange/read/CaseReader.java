package trimwright.exchange.read;

import java.util.List;
import java.util.OptionalInt;
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

  /**
   * The name of a case file, without looking at what it says: some fifty times quicker than reading
   * it, for long lists.
   *
   * @param text YAML or JSON
   * @return the name; refused where the text cannot be read at all or has no rider or setup
   */
  public static Reading<String> readName(String text) {
    YamlTree tree = YamlParser.parse(text);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty() || !findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    if (!document.path("rider").isObject() || !document.path("setup").isObject()) {
      String message = "The text is no case file: it has no rider or no setup.";
      return new Refused<>(List.of(new Problem("", OptionalInt.empty(), message)));
    }
    String name = document.path("name").asString("").strip();
    return new Accepted<>(name.isEmpty() ? CaseAssembly.NO_NAME : name);
  }
}
