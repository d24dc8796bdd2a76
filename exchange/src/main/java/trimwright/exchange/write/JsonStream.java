package trimwright.exchange.write;

import java.io.StringWriter;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

/**
 * A JSON object written straight to text, in order and on one line, for answers that are asked for
 * many times a second. A number that is not finite becomes null.
 */
final class JsonStream {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /** More than a usual answer has, so that the buffer does not grow [letters]. */
  private static final int ROOM = 1 << 17;

  private final JsonGenerator generator;

  private JsonStream(JsonGenerator generator) {
    this.generator = generator;
  }

  /**
   * A document.
   *
   * @param write writes the outermost object's fields
   * @return its text
   */
  static String text(Consumer<JsonStream> write) {
    StringWriter text = new StringWriter(ROOM);
    try (JsonGenerator generator = MAPPER.createGenerator(text)) {
      generator.writeStartObject();
      write.accept(new JsonStream(generator));
      generator.writeEndObject();
    }
    return text.toString();
  }

  JsonStream number(String name, double value, int decimals) {
    generator.writeName(name);
    write(value, decimals);
    return this;
  }

  JsonStream number(String name, OptionalDouble value, int decimals) {
    return value.isPresent() ? number(name, value.getAsDouble(), decimals) : none(name);
  }

  JsonStream whole(String name, long value) {
    generator.writeNumberProperty(name, value);
    return this;
  }

  /** A list of numbers. */
  JsonStream numbers(String name, double[] values, int decimals) {
    generator.writeName(name);
    generator.writeStartArray();
    for (double value : values) {
      write(value, decimals);
    }
    generator.writeEndArray();
    return this;
  }

  private void write(double value, int decimals) {
    if (Double.isFinite(value)) {
      generator.writeNumber(FixedDecimals.text(value, decimals));
    } else {
      generator.writeNull();
    }
  }

  JsonStream text(String name, String value) {
    generator.writeStringProperty(name, value);
    return this;
  }

  JsonStream texts(String name, Iterable<String> values) {
    generator.writeName(name);
    generator.writeStartArray();
    values.forEach(generator::writeString);
    generator.writeEndArray();
    return this;
  }

  JsonStream flag(String name, boolean value) {
    generator.writeBooleanProperty(name, value);
    return this;
  }

  JsonStream none(String name) {
    generator.writeNullProperty(name);
    return this;
  }

  /** An object inside. */
  JsonStream object(String name, Runnable write) {
    generator.writeName(name);
    generator.writeStartObject();
    write.run();
    generator.writeEndObject();
    return this;
  }

  /** A list of objects. */
  <T> JsonStream list(String name, Iterable<T> items, Consumer<T> write) {
    generator.writeName(name);
    generator.writeStartArray();
    for (T item : items) {
      generator.writeStartObject();
      write.accept(item);
      generator.writeEndObject();
    }
    generator.writeEndArray();
    return this;
  }

  /** A list of lists. */
  <T> JsonStream rows(String name, Iterable<T> items, Consumer<T> write) {
    generator.writeName(name);
    generator.writeStartArray();
    for (T item : items) {
      generator.writeStartArray();
      write.accept(item);
      generator.writeEndArray();
    }
    generator.writeEndArray();
    return this;
  }

  /** A list of what is written. */
  JsonStream row(String name, Runnable write) {
    generator.writeName(name);
    generator.writeStartArray();
    write.run();
    generator.writeEndArray();
    return this;
  }

  /** A list of what is written for each item. */
  <T> JsonStream rowOf(String name, Iterable<T> items, Consumer<T> write) {
    generator.writeName(name);
    generator.writeStartArray();
    items.forEach(write);
    generator.writeEndArray();
    return this;
  }

  /** A whole number in a list. */
  JsonStream item(int value) {
    generator.writeNumber(value);
    return this;
  }

  /** A number in a list. */
  JsonStream item(double value, int decimals) {
    write(value, decimals);
    return this;
  }

  /** A number in a list, or null. */
  JsonStream item(OptionalDouble value, int decimals) {
    if (value.isPresent()) {
      write(value.getAsDouble(), decimals);
    } else {
      generator.writeNull();
    }
    return this;
  }

  /** A truth in a list. */
  JsonStream item(boolean value) {
    generator.writeBoolean(value);
    return this;
  }
}
