package trimwright.exchange.read.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads one YAML 1.2 document event by event. Anchors, aliases, tags, second documents, duplicate
 * keys, numbers that are not finite, great depth and great size are refused, so that a hostile text
 * costs no more than a good one of the same length.
 */
public final class YamlParser {
  /** A case takes some 4 kB; this leaves room for hundreds of measured stations. */
  public static final int LARGEST_TEXT = 256 * 1024;

  /** The deepest place of a case is 6 groups down; twice that is never meant. */
  private static final int GREATEST_DEPTH = 12;

  /** A case has some hundred values; wings of 100 stations have a thousand. */
  private static final int MOST_VALUES = 10_000;

  private static final String WHOLE = "[-+]?[0-9]+";

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Iterator<Event> events;
  private final List<Finding> problems = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private final Map<String, String> written = new HashMap<>();
  private int values;

  private YamlParser(Iterator<Event> events) {
    this.events = events;
  }

  /** Ends the reading of a text that cannot be read further. */
  private static final class Stop extends Exception {
    private static final long serialVersionUID = 1L;

    Stop(String message) {
      super(message, null, false, false);
    }
  }

  /**
   * Reads a text.
   *
   * @param text the text
   * @return the tree with all problems found; never throws for a bad text
   */
  public static YamlTree parse(String text) {
    if (text.length() > LARGEST_TEXT) {
      return refused(
          OptionalInt.empty(),
          "The text is "
              + text.length()
              + " characters long, permitted are up to "
              + LARGEST_TEXT
              + ".");
    }
    OptionalInt control = ControlCharacters.findInText(text);
    if (control.isPresent()) {
      int at = control.getAsInt();
      return refused(
          OptionalInt.of(1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count()),
          "This line holds " + ControlCharacters.name(text, at) + "; remove it.");
    }
    YamlText tidy = YamlText.of(text);
    if (tidy.mixedLine().isPresent()) {
      return refused(
          tidy.mixedLine(),
          "Some lines are indented with tabs and others with spaces; use spaces throughout.");
    }
    LoadSettings settings =
        LoadSettings.builder().setLabel("text").setCodePointLimit(LARGEST_TEXT + 1).build();
    YamlParser parser =
        new YamlParser(new ParserImpl(settings, new StreamReader(settings, tidy.text())));
    int line = 0;
    try {
      Optional<ObjectNode> root = parser.document();
      return new YamlTree(root, parser.lines, parser.written, parser.problems);
    } catch (MarkedYamlEngineException e) {
      line = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
      String column =
          e.getProblemMark().map(mark -> ", at column " + (mark.getColumn() + 1)).orElse("");
      return parser.stopped(
          line, "This line cannot be read as YAML: " + e.getProblem() + column + ".");
    } catch (YamlEngineException e) {
      String reason = e.getMessage() == null ? "" : e.getMessage().lines().findFirst().orElse("");
      return parser.stopped(0, "The text cannot be read as YAML: " + reason + ".");
    } catch (Stop e) {
      return parser.stopped(0, e.getMessage());
    }
  }

  private static YamlTree refused(OptionalInt line, String message) {
    return new YamlTree(
        Optional.empty(), Map.of(), Map.of(), List.of(new Finding("", line, message)));
  }

  private YamlTree stopped(int line, String message) {
    problems.add(new Finding("", line > 0 ? OptionalInt.of(line) : OptionalInt.empty(), message));
    return new YamlTree(Optional.empty(), lines, written, problems);
  }

  private Optional<ObjectNode> document() throws Stop {
    events.next(); // stream start
    if (events.next().getEventId() == Event.ID.StreamEnd) {
      throw new Stop("The text is empty.");
    }
    JsonNode root = value(events.next(), "", 0);
    events.next(); // document end
    if (events.next().getEventId() != Event.ID.StreamEnd) {
      throw new Stop("The text holds more than one document; permitted is one.");
    }
    if (root instanceof ObjectNode group) {
      return Optional.of(group);
    }
    throw new Stop(
        root.isNull()
            ? "The text is empty."
            : "The text is not a group of keys; wanted are lines such as \"mass_kg: 82\".");
  }

  private JsonNode value(Event event, String path, int depth) throws Stop {
    if (++values > MOST_VALUES) {
      throw new Stop("The text holds more than " + MOST_VALUES + " values.");
    }
    if (depth > GREATEST_DEPTH) {
      throw new Stop(
          "The text is nested more than "
              + GREATEST_DEPTH
              + " levels deep, from line "
              + line(event)
              + ".");
    }
    if (event instanceof AliasEvent) {
      report(event, path, "%s uses an alias (*); write the value out instead.");
      return NODES.nullNode();
    }
    if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
      report(event, path, "%s carries an anchor (&), which is not permitted.");
    }
    Optional<String> tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
    if (tag.isPresent()) {
      report(event, path, "%s carries a type tag (!), which is not permitted.");
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar, path);
    }
    return event instanceof SequenceStartEvent ? list(path, depth) : group(event, path, depth);
  }

  private ArrayNode list(String path, int depth) throws Stop {
    ArrayNode list = NODES.arrayNode();
    for (Event event = events.next();
        event.getEventId() != Event.ID.SequenceEnd;
        event = events.next()) {
      String element = Paths.element(path, list.size());
      lines.putIfAbsent(element, line(event));
      list.add(value(event, element, depth + 1));
    }
    return list;
  }

  private ObjectNode group(Event start, String path, int depth) throws Stop {
    ObjectNode group = NODES.objectNode();
    if (!(start instanceof MappingStartEvent)) {
      throw new Stop("The text ends too early.");
    }
    // The key before, where its value may be the part of a number before a decimal comma
    String before = "";
    for (Event event = events.next();
        event.getEventId() != Event.ID.MappingEnd;
        event = events.next()) {
      if (event instanceof ScalarEvent scalar) {
        if (scalar.getAnchor().isPresent() || scalar.getTag().isPresent()) {
          report(event, path, "A key below %s carries an anchor or a type tag.");
        }
        String key = scalar.getValue();
        Event content = events.next();
        if (isDecimals(scalar, content, before)) {
          report(
              event,
              Paths.child(path, before),
              "%s is \""
                  + written.get(Paths.child(path, before))
                  + ","
                  + key
                  + "\", a text (write a decimal point).");
          before = "";
          continue;
        }
        String child = Paths.child(path, key);
        boolean twice = group.has(key);
        if (twice) {
          int first = lines.get(child);
          report(
              event,
              child,
              first == line(event)
                  ? "%s stands twice on line " + first + "."
                  : "%s stands twice, on line " + first + " and on line " + line(event) + ".");
        }
        lines.putIfAbsent(child, line(event));
        JsonNode value = value(content, child, depth + 1);
        if (!twice) {
          group.set(key, value);
        }
        before = written.getOrDefault(child, "").matches(WHOLE) && value.isNumber() ? key : "";
      } else {
        report(event, path, "A key below %s is not a plain word.");
        value(event, path, depth + 1);
        value(events.next(), path, depth + 1);
      }
    }
    return group;
  }

  /** In {@code {mass_kg: 82,5}} YAML takes the decimals for a key without a value. */
  private static boolean isDecimals(ScalarEvent key, Event value, String before) {
    return !before.isEmpty()
        && key.isPlain()
        && key.getValue().matches("[0-9]+")
        && value instanceof ScalarEvent nothing
        && nothing.isPlain()
        && nothing.getValue().isEmpty();
  }

  private JsonNode scalar(ScalarEvent scalar, String path) {
    String text = scalar.getValue();
    written.putIfAbsent(path, text);
    OptionalInt control = ControlCharacters.find(text);
    if (control.isPresent()) {
      String name = ControlCharacters.name(text, control.getAsInt());
      report(scalar, path, "%s holds " + name + "; write plain text on one line.");
      return NODES.nullNode();
    }
    if (!scalar.isPlain()) {
      return NODES.stringNode(text);
    }
    switch (text) {
      case "", "~", "null", "Null", "NULL":
        return NODES.nullNode();
      case "true", "True", "TRUE":
        return NODES.booleanNode(true);
      case "false", "False", "FALSE":
        return NODES.booleanNode(false);
      default:
        break;
    }
    Optional<Double> number = CoreNumber.find(text);
    if (number.isEmpty()) {
      return NODES.stringNode(text);
    }
    // The schema wants no null anywhere, so that a number that is not finite is refused by it
    return Double.isFinite(number.get()) ? NODES.numberNode(number.get()) : NODES.nullNode();
  }

  private void report(Event event, String path, String message) {
    String subject = path.isEmpty() ? "The text" : path;
    problems.add(new Finding(path, OptionalInt.of(line(event)), message.replace("%s", subject)));
  }

  private static int line(Event event) {
    return event.getStartMark().map(mark -> mark.getLine() + 1).orElse(1);
  }
}
