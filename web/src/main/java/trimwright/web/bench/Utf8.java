package trimwright.web.bench;

import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** Texts as the bytes that leave. */
public final class Utf8 {
  private Utf8() {}

  /** A text's bytes. */
  public static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** An answer in JSON. */
  public static ResponseEntity<byte[]> json(HttpStatus status, String text) {
    return ResponseEntity.status(status).contentType(MediaType.APPLICATION_JSON).body(bytes(text));
  }
}
