package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that several tests read. */
final class Texts {
  /** The example of the contract. */
  static final String EXAMPLE = resource("contract-example.yaml");

  private Texts() {}

  static String resource(String name) {
    try (InputStream in = Texts.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The example with one piece of its text replaced. */
  static String with(String piece, String other) {
    assertThat(EXAMPLE).contains(piece);
    return EXAMPLE.replace(piece, other);
  }

  static CaseFile accepted(String text) {
    Reading<CaseFile> reading = CaseReader.read(text, SectionFiles.NONE);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }
}
