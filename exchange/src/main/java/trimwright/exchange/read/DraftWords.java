package trimwright.exchange.read;

import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.CaseField.Choice;
import trimwright.exchange.read.internal.ControlCharacters;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.NearestKey;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.SchemaFault;
import trimwright.exchange.read.internal.Words;

/** Says what is wrong with the text of a field, for the person who typed it. */
record DraftWords(Naming names) {
  private static final String SECTION =
      "a code such as naca2412, a coordinates file (.dat, .txt, .csv), or thickness and camber";

  /** A text that is no number, or one that is far too large. */
  String noNumber(String place, String text, boolean tooLarge) {
    return names.opening(place)
        + " is \""
        + Words.shorten(text)
        + "\", which is "
        + (tooLarge ? "far too large" : "no number")
        + "; wanted is "
        + wanted(place)
        + ".";
  }

  /** A text with a character that cannot be shown. */
  String control(String place, String text, int index) {
    return names.opening(place)
        + " holds "
        + ControlCharacters.name(text, index)
        + "; write plain text on one line.";
  }

  /** A section that is given in two ways. */
  String twice(String section) {
    return names.opening(section)
        + " is given twice, as a code or file and by its thickness or camber; leave one of them"
        + " blank.";
  }

  /** Keys of one group that must not stand, because of another one that does. */
  String beside(List<String> places, String other) {
    List<String> rest = places.subList(1, places.size()).stream().map(names::brief).toList();
    boolean one = rest.isEmpty();
    return names.opening(places.get(0))
        + (one ? " stands" : " and " + Words.list(rest) + " stand")
        + " beside "
        + names.name(other)
        + "; leave one or the other blank.";
  }

  /** Where a document departs from the schema. */
  String fault(SchemaFault fault) {
    String place = fault.place();
    return switch (fault.keyword()) {
      case "required" -> names.opening(place) + " is missing; wanted is " + wanted(place) + ".";
      case "minimum", "maximum" ->
          names.opening(place)
              + " is "
              + names.value(place, fault.value().doubleValue())
              + "; wanted is "
              + wanted(place)
              + ".";
      case "minLength", "maxLength" ->
          names.opening(place)
              + " is "
              + fault.value().stringValue().length()
              + " characters long; wanted is "
              + wanted(place)
              + ".";
      case "minItems", "maxItems" ->
          names.opening(place)
              + ": "
              + fault.value().size()
              + " so far; wanted are "
              + wanted(place)
              + ".";
      case "enum", "pattern" ->
          names.opening(place)
              + " is \""
              + Words.shorten(fault.value().stringValue())
              + "\"; wanted is "
              + wanted(place)
              + meant(place, fault.value().stringValue())
              + ".";
      default -> beside(List.of(place), Paths.parent(place));
    };
  }

  private static List<Choice> choices(String place) {
    return CaseFields.find(place).map(CaseField::choices).orElse(List.of());
  }

  private static String meant(String place, String typed) {
    List<Choice> choices = choices(place);
    return NearestKey.find(typed, choices.stream().map(Choice::code).toList())
        .flatMap(code -> choices.stream().filter(c -> c.code().equals(code)).findFirst())
        .map(choice -> " (did you mean " + choice.label().toLowerCase(Locale.ROOT) + "?)")
        .orElse("");
  }

  /** What a place wants, as the end of a sentence. */
  private String wanted(String place) {
    List<Choice> choices = choices(place);
    if (!choices.isEmpty()) {
      return "one of "
          + Words.list(choices.stream().map(c -> c.label().toLowerCase(Locale.ROOT)).toList());
    }
    if (place.endsWith("section")) {
      return SECTION;
    }
    JsonNode schema = SchemaBook.CASE.find(place).orElseThrow();
    return switch (schema.path("type").asString("")) {
      case "number" ->
          names.range(
              place, schema.get("minimum").doubleValue(), schema.get("maximum").doubleValue());
      case "array" ->
          schema.get("minItems").intValue() + " to " + schema.get("maxItems").intValue();
      default ->
          schema.get("minLength").intValue()
              + " to "
              + schema.get("maxLength").intValue()
              + " characters";
    };
  }
}
