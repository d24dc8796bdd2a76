package trimwright.exchange.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.unit.Measures;

/** A case as a flat map from path to text, the way a form holds it. Immutable. */
public final class CaseDraft {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final Set<String> WORDS =
      CaseFields.list().stream()
          .filter(field -> field.kind() != CaseField.Kind.NUMBER)
          .map(CaseField::path)
          .collect(Collectors.toUnmodifiableSet());

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\.[0-9]+|[0-9]+(?:\\.[0-9]*)?)(?:[eE][-+]?[0-9]{1,3})?");

  /** No list of a case file is longer. */
  private static final int LONGEST_LIST = 100;

  private final Map<String, String> fields;

  private CaseDraft(Map<String, String> fields) {
    this.fields = Map.copyOf(new LinkedHashMap<>(fields));
  }

  /**
   * A draft.
   *
   * @param fields text by path; a blank text counts as left out
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
   * @param measures what people read numbers in
   * @param files finds the coordinates files that the fields name
   * @return the case, or what is wrong
   */
  public DraftReading read(Measures measures, SectionFiles files) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, String> field : fields.entrySet()) {
      if (!field.getValue().isBlank() && !put(root, field.getKey(), field.getValue().strip())) {
        return new DraftReading(
            Optional.empty(),
            List.of(
                new FieldProblem(List.of(field.getKey()), "There is no such field in a case.")));
      }
    }
    Reading<CaseFile> reading = CaseReader.read(MAPPER.writeValueAsString(root), files);
    return new DraftReading(
        reading.findValue(),
        reading.problems().stream()
            .map(
                problem ->
                    new FieldProblem(
                        problem.key().isEmpty() ? List.of() : List.of(dotted(problem.key())),
                        problem.message()))
            .toList());
  }

  /** Writes one value into the tree; false where the path cannot be one of a case. */
  private static boolean put(ObjectNode root, String path, String text) {
    String[] steps = path.split("\\.", -1);
    JsonNode at = root;
    for (int i = 0; i < steps.length; i++) {
      boolean last = i == steps.length - 1;
      boolean listBelow = !last && steps[i + 1].matches("[0-9]{1,2}");
      JsonNode next = last ? value(path, text) : null;
      if (at instanceof ObjectNode group) {
        if (next == null) {
          next = group.get(steps[i]);
        }
        if (next == null) {
          next = listBelow ? group.arrayNode() : group.objectNode();
        }
        group.set(steps[i], next);
      } else if (at instanceof ArrayNode list && steps[i].matches("[0-9]{1,2}")) {
        int index = Integer.parseInt(steps[i]);
        while (list.size() <= index && list.size() < LONGEST_LIST) {
          list.addObject();
        }
        if (next != null) {
          list.set(index, next);
        }
        next = list.get(index);
      } else {
        return false;
      }
      at = next;
    }
    return true;
  }

  private static JsonNode value(String path, String text) {
    boolean number = !WORDS.contains(path) && NUMBER.matcher(text).matches();
    return number && Double.isFinite(Double.parseDouble(text))
        ? JsonNodeFactory.instance.numberNode(Double.parseDouble(text))
        : JsonNodeFactory.instance.stringNode(text);
  }

  private static String dotted(String path) {
    return path.replace("[", ".").replace("]", "");
  }

  /**
   * The fields of a case; what was left out stays out.
   *
   * @param caseFile the case
   * @return text by path
   */
  public static Map<String, String> fields(CaseFile caseFile) {
    Map<String, String> fields = new LinkedHashMap<>();
    YamlParser.parse(caseFile.text()).root().ifPresent(root -> collect("", root, fields));
    return fields;
  }

  private static void collect(String path, JsonNode node, Map<String, String> fields) {
    if (node instanceof ObjectNode group) {
      group
          .properties()
          .forEach(
              entry ->
                  collect(
                      path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(),
                      entry.getValue(),
                      fields));
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        collect(path + "." + i, list.get(i), fields);
      }
    } else {
      fields.put(path, node.isNumber() ? Words.number(node.doubleValue()) : node.stringValue(""));
    }
  }
}
