package trimwright.exchange.read;

import java.util.Optional;
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

/** Reads case files: a rider on a setup in a water. Stateless and safe for several threads. */
public final class CaseReader {
  private static final String NO_NAME = "unnamed case";

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
    ObjectNode filled = SchemaBook.CASE.filled(document);
    Values root = new Values("", filled, findings.bad());
    CaseChecks.run(root, findings);
    SectionChoice sections = new SectionChoice(files);
    Optional<WingShape> frontWing = wing(root, "front_wing", sections, findings);
    Optional<WingShape> stabilizer = wing(root, "stabilizer", sections, findings);
    if (!findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    return new Accepted<>(
        new CaseFile(
            root.findText("name").orElse(NO_NAME),
            Digest.of(Canonical.text(filled, sections)),
            CaseMapping.rideCase(root, frontWing.orElseThrow(), stabilizer.orElseThrow()),
            CaseMapping.notes(root),
            text));
  }

  private static Optional<WingShape> wing(
      Values root, String key, SectionChoice sections, Findings findings) {
    return root.findGroup("setup")
        .flatMap(setup -> setup.findGroup(key))
        .flatMap(wing -> WingBuilder.build(wing, sections, findings));
  }
}
