package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.Finding;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaFault;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.unit.Measures;

/**
 * A case as a flat map from path to text, the way a form holds it. Paths are those of the case file
 * joined by dots, places in lists counted from 0; numbers stand in the case file's own units.
 * Immutable.
 */
public final class CaseDraft {
  private final Map<String, String> fields;

  private CaseDraft(Map<String, String> fields) {
    this.fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
  }

  /**
   * A draft.
   *
   * @param fields text by path, as typed; a blank text counts as left out
   * @return the draft
   */
  public static CaseDraft of(Map<String, String> fields) {
    return new CaseDraft(fields);
  }

  /** The texts by path, as they were typed. */
  public Map<String, String> fields() {
    return fields;
  }

  /**
   * The case that the fields make.
   *
   * <p>Numbers are read with a decimal point or comma, and with or without a unit; a unit other
   * than the case file's is converted.
   *
   * @param measures what people read numbers in; it changes messages alone
   * @param files finds the coordinates files that the fields name
   * @return the case, or everything that is wrong; no map of texts makes it throw
   */
  public DraftReading read(Measures measures, SectionFiles files) {
    FieldNames names = new FieldNames(measures);
    Findings findings = new Findings(names);
    DraftWords words = new DraftWords(names);
    DraftTree tree = DraftTree.of(fields, words, findings);
    report(SchemaFault.list(SchemaBook.CASE, tree.document()), words, findings);
    Optional<CaseFile> caseFile =
        CaseAssembly.of(tree.document(), () -> CaseWriter.yaml(tree.document()), files, findings);
    if (tree.unknown().isEmpty() && caseFile.isPresent()) {
      return new DraftReading(caseFile, List.of());
    }
    List<FieldProblem> problems = new ArrayList<>(tree.unknown());
    problems.addAll(problems(findings, tree));
    return new DraftReading(Optional.empty(), problems);
  }

  /** Tells the schema's faults, those that go together in one sentence. */
  private static void report(List<SchemaFault> faults, DraftWords words, Findings findings) {
    Set<String> bad = findings.bad();
    Map<String, List<String>> beside = new LinkedHashMap<>();
    for (SchemaFault fault : faults) {
      String place = fault.place();
      if (bad.contains(place)) {
        continue;
      }
      Optional<String> other = fault.findOther();
      if (other.isPresent()) {
        beside.computeIfAbsent(other.get(), key -> new ArrayList<>()).add(place);
      } else {
        findings.report(place, words.fault(fault));
      }
    }
    beside.forEach(
        (other, places) -> {
          List<String> keys = new ArrayList<>(places);
          keys.add(other);
          findings.report(keys, words.beside(places, other));
        });
  }

  private static List<FieldProblem> problems(Findings findings, DraftTree tree) {
    List<FieldProblem> problems = new ArrayList<>();
    for (Finding finding : findings.list()) {
      Set<String> paths = new LinkedHashSet<>();
      finding.keys().forEach(key -> paths.addAll(tree.draftPaths(key)));
      problems.add(new FieldProblem(new ArrayList<>(paths), finding.message()));
    }
    problems.sort(
        Comparator.comparingInt(
            p -> p.paths().isEmpty() ? Integer.MAX_VALUE : CaseFields.order(p.paths().get(0))));
    return problems;
  }

  /**
   * The fields of a case; what was left out stays out.
   *
   * @param caseFile the case
   * @return text by path, in the case file's own units
   */
  public static Map<String, String> fields(CaseFile caseFile) {
    Map<String, String> fields = new LinkedHashMap<>();
    YamlParser.parse(caseFile.text()).root().ifPresent(root -> collect("", root, fields));
    fields.remove("format");
    return fields;
  }

  private static void collect(String path, JsonNode node, Map<String, String> fields) {
    if (node instanceof ObjectNode group) {
      group
          .properties()
          .forEach(entry -> collect(Paths.child(path, entry.getKey()), entry.getValue(), fields));
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        collect(path + "." + i, list.get(i), fields);
      }
    } else {
      fields.put(path, node.isNumber() ? Words.number(node.doubleValue()) : node.stringValue(""));
    }
  }
}
