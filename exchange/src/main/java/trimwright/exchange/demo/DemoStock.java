package trimwright.exchange.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The made-up stock that the program brings along; each demo case is one of its setups. */
public final class DemoStock {
  private DemoStock() {}

  /**
   * The stock file.
   *
   * @throws IllegalStateException if it is missing from the program
   */
  public static String text() {
    try (InputStream in = DemoStock.class.getResourceAsStream("stock.yaml")) {
      if (in == null) {
        throw new IllegalStateException("the demo stock is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
