package trimwright.exchange.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The made-up cases that the program brings along. Immutable. */
public final class DemoCases {
  private static final List<DemoCase> ALL =
      List.of(
          demo(
              "heavy-beginner",
              "Heavy beginner on a warm lake",
              "105 kg, first flights, a large slow wing under a big board."),
          demo(
              "light-carver",
              "Light carver on a small wing",
              "58 kg, turns at will, a small fast wing under a short board."),
          demo(
              "cold-salt-water",
              "Cold salt water and wind",
              "75 kg in a thick suit on a 6 °C sea, against a steady wind."),
          demo(
              "nose-up-mismatch",
              "Rides nose-up with the feet right",
              "A set put together from parts: the feet carry as wished, yet the deck points at the"
                  + " sky."));

  private DemoCases() {}

  /** All demo cases, the same order each time. */
  public static List<DemoCase> list() {
    return ALL;
  }

  /**
   * A demo case.
   *
   * @param id its short name
   * @return the case, where there is one of that name
   */
  public static Optional<DemoCase> find(String id) {
    return ALL.stream().filter(demo -> demo.id().equals(id)).findFirst();
  }

  private static DemoCase demo(String id, String title, String story) {
    try (InputStream in = DemoCases.class.getResourceAsStream(id + ".yaml")) {
      if (in == null) {
        throw new IllegalStateException("the demo case " + id + " is missing from the program");
      }
      return new DemoCase(id, title, story, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
