package trimwright.exchange.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
import trimwright.kernel.surface.WingShape;

/**
 * Reads wing files: the keys of a case's {@code front_wing}, below that key or by themselves.
 * Stateless and safe for several threads.
 */
public final class WingReader {
  private static final String NO_NAME = "unnamed wing";
  private static final String WRAPPER = "front_wing";
  private static final List<String> BESIDE_WRAPPER = List.of("format", "name");

  private static final String CASE_INSTEAD =
      "This looks like a case file: use curve. A wing file holds the keys of setup.front_wing alone.";

  private WingReader() {}

  /**
   * Reads a wing file.
   *
   * @param text YAML or JSON
   * @param files finds the coordinates files that the text names
   * @return the wing, or everything that is wrong with the text; no text makes it throw
   */
  public static Reading<WingFile> read(String text, SectionFiles files) {
    YamlTree whole = YamlParser.parse(text);
    if (whole.root().filter(WingReader::isCase).isPresent()) {
      return new Refused<>(List.of(new Problem("", OptionalInt.empty(), CASE_INSTEAD)));
    }
    YamlTree tree = unwrapped(whole);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    SchemaProblems.list(SchemaBook.WING, tree, document).forEach(findings::add);
    ObjectNode filled = SchemaBook.WING.filled(document);
    Values root = new Values("", filled, findings.bad());
    SectionChoice sections = new SectionChoice(files);
    Optional<WingShape> shape = WingBuilder.build(root, sections, findings);
    if (!findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    return new Accepted<>(
        new WingFile(
            root.findText("name").orElse(NO_NAME),
            Digest.of(Canonical.text(filled, sections)),
            shape.orElseThrow(),
            CaseMapping.finish(root)));
  }

  private static boolean isCase(ObjectNode root) {
    return root.has("rider") && root.has("setup");
  }

  /** The tree with the keys of the wing at its top, wherever they stood. */
  private static YamlTree unwrapped(YamlTree tree) {
    if (tree.root().isEmpty() || !(tree.root().get().get(WRAPPER) instanceof ObjectNode wing)) {
      return tree;
    }
    ObjectNode top = tree.root().get().deepCopy();
    top.remove(WRAPPER);
    ObjectNode joined = wing.deepCopy();
    top.properties()
        .forEach(
            property -> {
              // What stands beside the wing and is no name is left to the schema to refuse
              if (BESIDE_WRAPPER.contains(property.getKey()) || !joined.has(property.getKey())) {
                joined.set(property.getKey(), property.getValue());
              }
            });
    String prefix = WRAPPER + ".";
    return new YamlTree(
        Optional.of(joined),
        cut(tree.lines(), prefix),
        cut(tree.written(), prefix),
        tree.problems().stream()
            .map(
                p ->
                    new Finding(
                        p.keys().stream().map(key -> cut(key, prefix)).toList(),
                        p.line(),
                        p.message()))
            .toList());
  }

  private static <T> Map<String, T> cut(Map<String, T> paths, String prefix) {
    Map<String, T> shorter = new HashMap<>();
    paths.forEach(
        (path, value) -> {
          if (path.startsWith(prefix)) {
            shorter.put(cut(path, prefix), value);
          } else {
            shorter.putIfAbsent(path, value);
          }
        });
    return shorter;
  }

  private static String cut(String path, String prefix) {
    return path.startsWith(prefix) ? path.substring(prefix.length()) : path;
  }
}
