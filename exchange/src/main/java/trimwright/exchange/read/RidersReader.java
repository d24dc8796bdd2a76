package trimwright.exchange.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaProblems;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.read.internal.YamlTree;

/** Reads riders files: people who share gear. Stateless and safe for several threads. */
public final class RidersReader {
  private static final String NO_NAME = "unnamed riders";

  private static final String CASE_INSTEAD =
      "This looks like a case file: a riders file holds a list of riders and no setup.";

  private RidersReader() {}

  /**
   * Reads a riders file.
   *
   * @param text YAML or JSON
   * @return the riders, or everything that is wrong with the text; no text makes it throw
   */
  public static Reading<RidersFile> read(String text) {
    YamlTree tree = YamlParser.parse(text);
    Findings findings = new Findings(tree);
    if (tree.root().isEmpty()) {
      return new Refused<>(Problem.all(findings));
    }
    ObjectNode document = tree.root().get();
    if (document.has("rider") && document.has("setup")) {
      return new Refused<>(List.of(new Problem("", OptionalInt.empty(), CASE_INSTEAD)));
    }
    SchemaProblems.list(SchemaBook.RIDERS, tree, document).forEach(findings::add);
    ObjectNode filled = SchemaBook.RIDERS.filled(document);
    Values root = new Values("", filled, findings.bad());
    check(root, findings);
    if (!findings.none()) {
      return new Refused<>(Problem.all(findings));
    }
    return new Accepted<>(new RidersFile(root.findText("name").orElse(NO_NAME), text, root));
  }

  private static void check(Values root, Findings findings) {
    Map<String, String> ids = new HashMap<>();
    for (Values rider : root.listGroups("riders")) {
      name(rider, ids, findings);
      count(rider, findings);
      CaseChecks.feet(rider, findings);
    }
  }

  private static void name(Values rider, Map<String, String> ids, Findings findings) {
    String path = rider.at("id");
    if (rider.bad().contains(path) || rider.findText("id").isEmpty()) {
      return;
    }
    String id = rider.findText("id").get();
    String first = ids.putIfAbsent(id, path);
    if (first != null) {
      Naming names = findings.naming();
      findings.report(
          List.of(path, first),
          names.opening(path)
              + " is \""
              + id
              + "\", and so is "
              + names.name(first)
              + "; wanted is another name for each rider.");
    }
  }

  private static void count(Values rider, Findings findings) {
    if (rider.has("count")) {
      double count = rider.findWritten("count").getAsDouble();
      if (count != Math.rint(count)) {
        String path = rider.at("count");
        Naming names = findings.naming();
        findings.report(
            path,
            names.opening(path)
                + " is "
                + names.value(path, count)
                + ", permitted is a whole number from 1 to 10000.");
      }
    }
  }
}
