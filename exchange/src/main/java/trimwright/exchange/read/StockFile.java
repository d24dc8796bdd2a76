package trimwright.exchange.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.fitting.stock.Stock;

/** A stock file that was accepted. Immutable. */
public final class StockFile {
  /** What a stock says of a part and a case does not. */
  private static final List<String> OF_A_STOCK =
      List.of("id", "mounts", "count", "state", "price", "track");

  private final String name;
  private final String digest;
  private final Stock stock;
  private final String text;
  private final SectionFiles files;
  private final Map<String, ObjectNode> parts = new HashMap<>();

  StockFile(
      String name, String digest, Stock stock, String text, SectionFiles files, ObjectNode filled) {
    this.name = name;
    this.digest = digest;
    this.stock = stock;
    this.text = text;
    this.files = files;
    for (StockList list : StockList.values()) {
      for (JsonNode part : filled.path(list.key())) {
        ObjectNode keys = (ObjectNode) part.deepCopy();
        keys.remove(OF_A_STOCK);
        parts.put(part.get("id").stringValue(), keys);
      }
    }
  }

  /** What people call the stock; "unnamed stock" where the file has no name. */
  public String name() {
    return name;
  }

  /**
   * SHA-256 of the canonical form in lower-case hexadecimal: the same for every order of parts and
   * keys, every comment and every way of writing a number.
   */
  public String digest() {
    return digest;
  }

  /** The parts as the search reads them. */
  public Stock stock() {
    return stock;
  }

  /** The original text. */
  public String text() {
    return text;
  }

  /** Where its wings' coordinates files are found. */
  SectionFiles files() {
    return files;
  }

  /** A part's keys as a case file has them, defaults filled in; not to be changed. */
  ObjectNode part(String id) {
    return parts.get(id);
  }
}
