package trimwright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Says in one line that something inside went wrong, and keeps the details for whoever repairs it.
 */
final class Faults {
  private Faults() {}

  /**
   * Reports a fault.
   *
   * @return the exit status for it
   */
  static int report(Throwable fault, PrintWriter err) {
    String what = fault.getMessage() == null ? "" : fault.getMessage();
    if (what.isEmpty() || fault instanceof Error) {
      // An error of the machine often has a bare name of something as its message.
      what = (fault.getClass().getSimpleName() + " " + what).strip();
    }
    err.println(
        CommandLineEntry.oneLine("Something inside went wrong: " + what + "." + details(fault)));
    return CommandLineEntry.FAULT;
  }

  private static String details(Throwable fault) {
    try {
      Path log = Files.createTempFile("trimwright-fault-", ".log");
      try (PrintWriter writer =
          new PrintWriter(Files.newBufferedWriter(log, StandardCharsets.UTF_8))) {
        fault.printStackTrace(writer);
      }
      return " Details: " + log;
    } catch (IOException e) {
      return " The details could not be kept (" + e.getMessage() + ").";
    }
  }
}
