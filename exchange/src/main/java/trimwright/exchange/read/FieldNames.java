package trimwright.exchange.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import trimwright.exchange.read.CaseField.Signs;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.ShownUnit;
import trimwright.exchange.unit.Unit;

/** Fields by their labels, numbers in the measures that people see. */
record FieldNames(Measures measures) implements Naming {
  /** A number typed is never longer; what is computed ends here. */
  private static final MathContext CARRIED = new MathContext(7);

  /** Enough to know one's own number again after it went over to another unit and back. */
  private static final MathContext CONVERTED = new MathContext(4);

  /** Digits of the ends of a range in another unit. */
  private static final int RANGE_DIGITS = 3;

  @Override
  public String name(String path) {
    String dotted = dotted(path);
    Optional<FieldNode> node = CaseFields.root().findPath(dotted);
    String name =
        node.flatMap(FieldNode::field)
            .map(CaseField::name)
            .orElse(node.map(FieldNode::title).orElse(path));
    return name.contains("*") ? name.replace("*", station(dotted)) : name;
  }

  /** The number of a station as people count. */
  private static String station(String dotted) {
    for (String step : dotted.split("\\.")) {
      if (step.matches("[0-9]+")) {
        return String.valueOf(Integer.parseInt(step) + 1);
      }
    }
    return "";
  }

  @Override
  public String opening(String path) {
    return capital(name(path));
  }

  @Override
  public String brief(String path) {
    return CaseFields.find(dotted(path))
        .map(field -> field.label().split("[,:]", 2)[0])
        .map(label -> label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1))
        .orElse(name(path));
  }

  @Override
  public String value(String path, double written) {
    Optional<CaseField> field = CaseFields.find(dotted(path));
    Optional<Signs> signs = field.flatMap(CaseField::signs);
    if (signs.isPresent() && written != 0) {
      return with(path, number(path, Math.abs(written)))
          + " "
          + (written < 0 ? signs.get().below() : signs.get().above());
    }
    return with(path, number(path, written));
  }

  @Override
  public String amount(String path, double written) {
    return with(path, number(path, written));
  }

  @Override
  public String range(String path, double least, double most) {
    if (CaseFields.find(dotted(path)).flatMap(CaseField::signs).isPresent()) {
      return value(path, least) + " to " + value(path, most);
    }
    return end(path, least, RoundingMode.CEILING)
        + " to "
        + with(path, end(path, most, RoundingMode.FLOOR));
  }

  private ShownUnit unit(String path) {
    return measures.shown(
        CaseFields.find(dotted(path)).flatMap(CaseField::unit).orElse(Unit.RATIO));
  }

  private static boolean same(ShownUnit unit) {
    return unit.factor() == 1 && unit.offset() == 0;
  }

  private String number(String path, double written) {
    ShownUnit unit = unit(path);
    BigDecimal shown = new BigDecimal(unit.shown(written));
    MathContext digits = same(unit) ? CARRIED : CONVERTED;
    return plain(whole(shown, digits));
  }

  /** The end of a range, never outside it: what is shown as permitted is permitted. */
  private String end(String path, double written, RoundingMode inwards) {
    ShownUnit unit = unit(path);
    if (same(unit)) {
      return Words.number(written);
    }
    BigDecimal clean = new BigDecimal(unit.shown(written)).round(new MathContext(9));
    return plain(whole(clean, new MathContext(RANGE_DIGITS, inwards)));
  }

  /** Rounded to some digits, but never before the decimal point. */
  private static BigDecimal whole(BigDecimal value, MathContext digits) {
    int integers = value.precision() - value.scale();
    return value.round(
        new MathContext(
            Math.max(digits.getPrecision(), Math.min(integers, 20)), digits.getRoundingMode()));
  }

  private static String plain(BigDecimal value) {
    return Words.number(value.doubleValue());
  }

  private String with(String path, String number) {
    String symbol = unit(path).symbol();
    return symbol.isEmpty() || symbol.equals("°") ? number + symbol : number + " " + symbol;
  }

  private static String dotted(String path) {
    return path.replace("[", ".").replace("]", "");
  }

  /** A text as it stands at the beginning of a line. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
