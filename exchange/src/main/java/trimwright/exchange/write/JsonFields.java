package trimwright.exchange.write;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of one JSON object, written in order. A number that is not finite becomes null, so
 * that no reader ever meets NaN.
 */
public final class JsonFields {
  /**
   * Digits kept: far more than the model is good for, few enough that a speed of 20 km/h does not
   * come back from metres per second as 20.000000000000004.
   */
  static final MathContext DIGITS = new MathContext(10, RoundingMode.HALF_EVEN);

  private final ObjectNode node;

  JsonFields(ObjectNode node) {
    this.node = node;
  }

  /**
   * A number to ten significant digits.
   *
   * @param name of the field, unit included
   * @param value in that unit
   * @return this
   */
  public JsonFields number(String name, double value) {
    return exact(name, Double.isFinite(value) ? rounded(value) : value);
  }

  /**
   * A number to ten significant digits, null where there is none.
   *
   * @param name of the field, unit included
   * @param value in that unit
   * @return this
   */
  public JsonFields number(String name, OptionalDouble value) {
    return value.isPresent() ? number(name, value.getAsDouble()) : none(name);
  }

  /**
   * A list of numbers to ten significant digits.
   *
   * @param name of the field, unit included
   * @param values finite, in that unit
   * @return this
   */
  public JsonFields numbers(String name, double... values) {
    ArrayNode array = node.putArray(name);
    for (double value : values) {
      array.add(rounded(value));
    }
    return this;
  }

  /**
   * A whole number.
   *
   * @param name of the field
   * @param value the number
   * @return this
   */
  public JsonFields whole(String name, long value) {
    node.put(name, value);
    return this;
  }

  /**
   * A number with all its digits.
   *
   * @param name of the field, unit included
   * @param value in that unit
   * @return this
   */
  public JsonFields exact(String name, double value) {
    if (!Double.isFinite(value)) {
      return none(name);
    }
    node.put(name, value + 0.0);
    return this;
  }

  /**
   * A text.
   *
   * @param name of the field
   * @param value text; null is allowed and becomes null
   * @return this
   */
  public JsonFields text(String name, String value) {
    node.put(name, value);
    return this;
  }

  /**
   * A yes or no.
   *
   * @param name of the field
   * @param value the answer
   * @return this
   */
  public JsonFields flag(String name, boolean value) {
    node.put(name, value);
    return this;
  }

  /**
   * What does not exist.
   *
   * @param name of the field
   * @return this
   */
  public JsonFields none(String name) {
    node.putNull(name);
    return this;
  }

  /**
   * An object inside.
   *
   * @param name of the field
   * @return the inner object's fields
   */
  public JsonFields object(String name) {
    return new JsonFields(node.putObject(name));
  }

  /**
   * A list of objects.
   *
   * @param name of the field
   * @param items what to list
   * @param write writes one item's fields
   * @param <T> kind of item
   * @return this
   */
  public <T> JsonFields list(String name, Iterable<T> items, BiConsumer<JsonFields, T> write) {
    ArrayNode array = node.putArray(name);
    for (T item : items) {
      write.accept(new JsonFields(array.addObject()), item);
    }
    return this;
  }

  /**
   * A list of texts.
   *
   * @param name of the field
   * @param items the texts
   * @return this
   */
  public JsonFields texts(String name, Iterable<String> items) {
    ArrayNode array = node.putArray(name);
    items.forEach(array::add);
    return this;
  }

  static double rounded(double value) {
    // + 0.0 turns a negative zero into zero.
    return new BigDecimal(value).round(DIGITS).doubleValue() + 0.0;
  }
}
