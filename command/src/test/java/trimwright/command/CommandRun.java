package trimwright.command;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One run of the command line.
 *
 * @param status exit status
 * @param out what stood on standard output
 * @param err what stood on standard error
 */
record CommandRun(int status, String out, String err) {

  /** Runs a command with an empty standard input. */
  static CommandRun of(String... words) {
    return withInput("", words);
  }

  /** Runs a command that may read standard input. */
  static CommandRun withInput(String input, String... words) {
    return withShop(
        input,
        start -> {
          throw new AssertionError("no shop is wanted here");
        },
        words);
  }

  /** Runs a command that may open the shop. */
  static CommandRun withShop(String input, ShopServer shop, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        CommandLineEntry.run(
            words,
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintWriter(out),
            new PrintWriter(err),
            shop);
    return new CommandRun(status, out.toString(), err.toString());
  }

  /** Lines on standard error. */
  List<String> errLines() {
    return err.lines().toList();
  }

  /** Lines on standard output. */
  List<String> outLines() {
    return out.lines().toList();
  }
}
