package trimwright.exchange.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Made-up riders that the program brings along, for its made-up stock. */
public final class DemoRiders {
  private DemoRiders() {}

  /**
   * Two people who share a board.
   *
   * @throws IllegalStateException if they are missing from the program
   */
  public static String household() {
    return text("household.yaml");
  }

  /**
   * A school's students by weight and skill.
   *
   * @throws IllegalStateException if they are missing from the program
   */
  public static String school() {
    return text("school.yaml");
  }

  private static String text(String name) {
    try (InputStream in = DemoRiders.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the demo riders are missing from the program: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
