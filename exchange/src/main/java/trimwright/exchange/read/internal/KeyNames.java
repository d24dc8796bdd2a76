package trimwright.exchange.read.internal;

import trimwright.exchange.unit.Unit;

/** Keys by their paths, numbers as a file writes them: a unit stands in the key already. */
public final class KeyNames implements Naming {
  /** The only one that is needed. */
  public static final KeyNames INSTANCE = new KeyNames();

  private KeyNames() {}

  @Override
  public String name(String path) {
    return path;
  }

  @Override
  public String opening(String path) {
    return path;
  }

  @Override
  public String brief(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  @Override
  public String value(String path, double written) {
    return Words.number(written);
  }

  @Override
  public String amount(String path, double written) {
    String unit = KeyUnits.find(brief(path)).map(Unit::symbol).orElse("");
    return (Words.number(written) + " " + unit).strip();
  }

  @Override
  public String range(String path, double least, double most) {
    return Words.number(least) + " to " + amount(path, most);
  }
}
