package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.CaseField.Kind;
import trimwright.exchange.read.internal.ControlCharacters;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.TypedNumber;
import trimwright.exchange.read.internal.Words;

/**
 * The texts of a draft as a document: what is blank is left out, list entries move up where one
 * before them is left out, and a text that cannot be what its field wants stands as null, with a
 * finding. Not safe for several threads.
 */
final class DraftTree {
  /** A case of two wings with 100 stations each has some 1,600. */
  private static final int MOST_FIELDS = 5_000;

  /** Unknown paths are the page's fault and not a person's: a few tell enough. */
  private static final int MOST_UNKNOWN = 10;

  /** The longest path of a case has some 60 characters. */
  private static final int LONGEST_PATH = 100;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern DOT = Pattern.compile("\\.");

  private final DraftWords words;
  private final Findings findings;
  private final ObjectNode document = NODES.objectNode();
  private final List<FieldProblem> unknown = new ArrayList<>();
  private final Map<String, String> draftPaths = new HashMap<>();
  private final Map<String, TreeSet<Integer>> entries = new HashMap<>();

  private DraftTree(DraftWords words, Findings findings) {
    this.words = words;
    this.findings = findings;
  }

  /**
   * Reads the texts one by one.
   *
   * @param fields texts by path
   * @param words says what is wrong with a text
   * @param findings takes it
   */
  static DraftTree of(Map<String, String> fields, DraftWords words, Findings findings) {
    DraftTree tree = new DraftTree(words, findings);
    groups(CaseFields.root(), tree.document);
    if (fields.size() > MOST_FIELDS) {
      tree.unknown.add(
          new FieldProblem(
              List.of(),
              "There are "
                  + fields.size()
                  + " fields; a case has no more than "
                  + MOST_FIELDS
                  + "."));
      return tree;
    }
    Map<String, CaseField> known = new HashMap<>();
    fields.forEach((path, text) -> tree.look(path, text, known));
    fields.forEach(
        (path, text) -> {
          if (known.containsKey(path)) {
            tree.put(path, text, known.get(path));
          }
        });
    return tree;
  }

  /** Groups that a case needs stand even where they are empty, so that each missing key is told. */
  private static void groups(FieldNode node, ObjectNode group) {
    node.children()
        .forEach(
            (key, child) -> {
              if (child.required() && child.field().isEmpty() && !child.children().isEmpty()) {
                groups(child, group.putObject(key));
              }
            });
  }

  /** The document; null stands where a text has a finding. */
  ObjectNode document() {
    return document;
  }

  /** Paths that no case has. */
  List<FieldProblem> unknown() {
    return List.copyOf(unknown);
  }

  /** The fields of a draft that stand at or below a place of the document. */
  List<String> draftPaths(String place) {
    List<String> below =
        draftPaths.keySet().stream()
            .filter(path -> Paths.within(path, place))
            .map(draftPaths::get)
            .sorted((a, b) -> Integer.compare(CaseFields.order(a), CaseFields.order(b)))
            .toList();
    return below.isEmpty() ? List.of(draftPath(place)) : below;
  }

  /** The path that a missing field would have: its list's place is the one it had in the draft. */
  private String draftPath(String place) {
    int open = place.indexOf('[');
    if (open < 0) {
      return place;
    }
    int close = place.indexOf(']', open);
    String list = place.substring(0, open);
    int rank = Integer.parseInt(place.substring(open + 1, close));
    TreeSet<Integer> used = entries.getOrDefault(list, new TreeSet<>());
    int index = used.stream().skip(rank).findFirst().orElse(rank);
    return list + "." + index + place.substring(close + 1);
  }

  private void look(String path, String text, Map<String, CaseField> known) {
    if (path == null || text == null || text.isBlank()) {
      return;
    }
    Optional<CaseField> field =
        path.length() > LONGEST_PATH ? Optional.empty() : CaseFields.find(path);
    if (field.isEmpty()) {
      if (unknown.size() < MOST_UNKNOWN) {
        unknown.add(
            new FieldProblem(
                List.of(path), "A case has no field \"" + Words.shorten(path) + "\"."));
      }
      return;
    }
    known.put(path, field.get());
    int star = field.get().path().indexOf(".*");
    if (star >= 0) {
      String list = path.substring(0, star);
      entries.computeIfAbsent(list, key -> new TreeSet<>()).add(index(path, star));
    }
  }

  private static int index(String path, int star) {
    int end = path.indexOf('.', star + 1);
    return Integer.parseInt(path.substring(star + 1, end));
  }

  private void put(String path, String text, CaseField field) {
    String place = path;
    ObjectNode group = document;
    int star = field.path().indexOf(".*");
    String rest = path;
    if (star >= 0) {
      String list = path.substring(0, star);
      int rank = entries.get(list).headSet(index(path, star)).size();
      rest = path.substring(path.indexOf('.', star + 1) + 1);
      place = Paths.element(list, rank) + "." + rest;
      group = entry(list, rank);
    }
    String[] steps = DOT.split(rest);
    for (int i = 0; i + 1 < steps.length && group != null; i++) {
      group = below(group, steps[i]);
    }
    draftPaths.put(place, path);
    String key = steps[steps.length - 1];
    if (group == null || group.has(key)) {
      twice(place);
    } else {
      group.set(key, node(place, text, field));
    }
  }

  private ObjectNode entry(String list, int rank) {
    ObjectNode group = document;
    String[] steps = DOT.split(list);
    for (int i = 0; i + 1 < steps.length; i++) {
      group = below(group, steps[i]);
    }
    String key = steps[steps.length - 1];
    ArrayNode entries = group.has(key) ? (ArrayNode) group.get(key) : group.putArray(key);
    while (entries.size() <= rank) {
      entries.addObject();
    }
    return (ObjectNode) entries.get(rank);
  }

  /** The group below a key; null where a text stands there instead. */
  private static ObjectNode below(ObjectNode group, String key) {
    JsonNode there = group.get(key);
    if (there == null) {
      return group.putObject(key);
    }
    return there instanceof ObjectNode below ? below : null;
  }

  /** A section by a code or file, and by its thickness too. */
  private void twice(String place) {
    String section = place.substring(0, place.lastIndexOf("section") + "section".length());
    if (!findings.bad().contains(section)) {
      findings.report(section, words.twice(section));
    }
  }

  private JsonNode node(String place, String text, CaseField field) {
    OptionalInt control = ControlCharacters.find(text);
    if (field.kind() != Kind.NUMBER) {
      if (control.isPresent()) {
        findings.report(place, words.control(place, text, control.getAsInt()));
        return NODES.nullNode();
      }
      return NODES.stringNode(place.equals("name") ? text : text.strip());
    }
    OptionalDouble number = TypedNumber.find(text, field.unit().orElseThrow());
    if (number.isPresent() && Double.isFinite(number.getAsDouble())) {
      return NODES.numberNode(number.getAsDouble());
    }
    findings.report(place, words.noNumber(place, text, number.isPresent()));
    return NODES.nullNode();
  }
}
