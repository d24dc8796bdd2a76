package trimwright.exchange.read;

import java.util.Optional;
import java.util.function.Supplier;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Values;
import trimwright.kernel.surface.WingShape;

/** Makes a case of a document that the schema has been asked about. */
final class CaseAssembly {
  /** What a case without a name is called. */
  static final String NO_NAME = "unnamed case";

  private CaseAssembly() {}

  /**
   * Fills in the defaults, checks what joins several keys, and builds the case.
   *
   * @param document as it was handed in
   * @param text the document as a case file; asked for where the case is accepted
   * @param files finds the coordinates files that it names
   * @param findings what was found wrong before; takes what is found now
   * @return the case; empty where anything was found
   */
  static Optional<CaseFile> of(
      ObjectNode document, Supplier<String> text, SectionFiles files, Findings findings) {
    ObjectNode filled = SchemaBook.CASE.filled(document);
    Values root = new Values("", filled, findings.bad());
    CaseChecks.run(root, findings);
    SectionChoice sections = new SectionChoice(files);
    Optional<WingShape> frontWing = wing(root, "front_wing", sections, findings);
    Optional<WingShape> stabilizer = wing(root, "stabilizer", sections, findings);
    if (!findings.none()) {
      return Optional.empty();
    }
    return Optional.of(
        new CaseFile(
            root.findText("name").orElse(NO_NAME),
            Digest.of(Canonical.text(filled, sections)),
            CaseMapping.rideCase(root, frontWing.orElseThrow(), stabilizer.orElseThrow()),
            CaseMapping.notes(root),
            text.get()));
  }

  private static Optional<WingShape> wing(
      Values root, String key, SectionChoice sections, Findings findings) {
    return root.findGroup("setup")
        .flatMap(setup -> setup.findGroup(key))
        .flatMap(wing -> WingBuilder.build(wing, sections, findings));
  }
}
