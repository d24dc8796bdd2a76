package trimwright.exchange.read.internal;

/**
 * How sentences name the keys of a document and write their values: the reader of a file sees keys,
 * the reader of a form sees labels and the measures of the house.
 */
public interface Naming {
  /** A key within a sentence. */
  String name(String path);

  /** A key at the start of a sentence. */
  String opening(String path);

  /** A key beside another one of the same group. */
  String brief(String path);

  /** The value of a key, given in the key's own unit. */
  String value(String path, double written);

  /** A quantity of the kind that a key holds, given in the key's own unit; always with a unit. */
  String amount(String path, double written);

  /** Two quantities of that kind as a range with one unit. */
  String range(String path, double least, double most);
}
