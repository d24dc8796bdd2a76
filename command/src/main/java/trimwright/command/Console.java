package trimwright.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Objects;

/**
 * What a command talks to.
 *
 * @param in standard input, read when a file is named {@code -}
 * @param out standard output: results only
 * @param err standard error: problems and remarks
 * @param shop starts the shop in the browser
 */
record Console(InputStream in, PrintWriter out, PrintWriter err, ShopServer shop) {
  Console {
    Objects.requireNonNull(in, "in");
    Objects.requireNonNull(out, "out");
    Objects.requireNonNull(err, "err");
    Objects.requireNonNull(shop, "shop");
  }

  /** Prints text that may or may not end its last line, and ends it. */
  void print(String text) {
    out.print(text);
    if (!text.endsWith("\n")) {
      out.print('\n');
    }
  }
}
