package trimwright.exchange.write;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.FieldProblem;

/** The Bench's answers about cases as wholes: opened, saved, on the shelf, or not. */
public final class ShelfWriter {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private ShelfWriter() {}

  /**
   * A case on the shelf.
   *
   * @param id its name in addresses; empty for a case that is on no shelf
   * @param title what people choose from
   * @param story what it is about, or why it cannot be opened; may be empty
   * @param kind {@code demo} for a made-up case, {@code saved} for one of the shop's own, {@code
   *     damaged} for a file of the shop's that is no case, {@code file} for one that was handed in
   */
  public record Item(String id, String title, String story, String kind) {
    void write(JsonFields fields) {
      fields.text("id", id).text("title", title).text("story", story).text("kind", kind);
    }
  }

  /**
   * Something wrong with a text that was handed in.
   *
   * @param line where it stands, counted from 1
   * @param lineText what stands there; may be empty
   * @param message a whole sentence
   */
  public record LineProblem(OptionalInt line, String lineText, String message) {}

  /**
   * A case that was opened.
   *
   * @param item how it is called
   * @param values its fields, text by path
   * @return JSON on one line
   */
  public static String opened(Item item, Map<String, String> values) {
    ObjectNode root = MAPPER.createObjectNode();
    JsonFields fields = new JsonFields(root).flag("accepted", true);
    item.write(fields);
    JsonFields all = fields.object("fields");
    values.forEach(all::text);
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A text that is no case.
   *
   * @param problems all that is wrong with it
   * @return JSON on one line
   */
  public static String notOpened(List<LineProblem> problems) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root)
        .flag("accepted", false)
        .list(
            "problems",
            problems,
            (item, p) -> {
              if (p.line().isPresent()) {
                item.whole("line", p.line().getAsInt());
              } else {
                item.none("line");
              }
              item.text("line_text", p.lineText()).text("message", p.message());
            });
    return MAPPER.writeValueAsString(root);
  }

  /**
   * What stands on the shelf.
   *
   * @param shelf its cases
   * @return JSON on one line
   */
  public static String shelf(List<Item> shelf) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root).list("shelf", shelf, (fields, item) -> item.write(fields));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A case that was saved.
   *
   * @param item how it is called now
   * @param shelf what stands on the shelf now
   * @return JSON on one line
   */
  public static String saved(Item item, List<Item> shelf) {
    ObjectNode root = MAPPER.createObjectNode();
    JsonFields fields = new JsonFields(root).flag("saved", true);
    item.write(fields);
    fields.list("shelf", shelf, (one, i) -> i.write(one));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A case that was not saved.
   *
   * @param taken whether the only reason is that a case of that name is there already
   * @param problems why
   * @return JSON on one line
   */
  public static String notSaved(boolean taken, List<FieldProblem> problems) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root)
        .flag("saved", false)
        .flag("taken", taken)
        .list(
            "problems",
            problems,
            (item, p) -> item.texts("paths", p.paths()).text("message", p.message()));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * Words for a request that could not be answered at all.
   *
   * @param message what happened and what to do
   * @param reference number under which the log has the cause
   * @return JSON on one line
   */
  public static String fault(String message, String reference) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root)
        .flag("accepted", false)
        .text("message", message)
        .text("reference", reference)
        .list(
            "problems",
            List.of(message),
            (item, text) -> item.texts("paths", List.of()).text("message", text));
    return MAPPER.writeValueAsString(root);
  }
}
