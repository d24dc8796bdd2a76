package trimwright.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * Checks several options one after the other, so that a person hears of all bad ones at once. Not
 * safe for several threads.
 */
final class OptionChecks {
  private final CommandSpec spec;
  private final List<String> problems = new ArrayList<>();

  OptionChecks(CommandSpec spec) {
    this.spec = spec;
  }

  /** Wrong usage of several options; one line each. */
  static final class BadOptions extends ParameterException {
    private static final long serialVersionUID = 1L;
    private final transient List<String> lines;

    private BadOptions(CommandLine command, List<String> lines) {
      super(command, String.join(" ", lines));
      this.lines = List.copyOf(lines);
    }
  }

  /**
   * Goes on with words that were read without a fault.
   *
   * @param parsed the words, faults noted on the way
   * @throws ParameterException if there are any; it speaks of each
   */
  static int execute(CommandLine.ParseResult parsed) {
    List<String> lines = new ArrayList<>();
    CommandSpec last = parsed.commandSpec();
    boolean help = false;
    for (CommandLine.ParseResult at = parsed; at != null; at = at.subcommand()) {
      at.errors().forEach(error -> lines.add(error.getMessage()));
      last = at.commandSpec();
      help |= at.isUsageHelpRequested() || at.isVersionHelpRequested();
    }
    if (!lines.isEmpty() && !help) {
      throw new BadOptions(last.commandLine(), lines);
    }
    return new CommandLine.RunLast().execute(parsed);
  }

  /** The problems that wrong usage speaks of, one line each. */
  static List<String> lines(ParameterException usage) {
    return usage instanceof BadOptions several ? several.lines : List.of(usage.getMessage());
  }

  /** Runs a check and keeps what it finds wrong. */
  OptionChecks check(Runnable check) {
    try {
      check.run();
    } catch (ParameterException usage) {
      problems.addAll(lines(usage));
    }
    return this;
  }

  /**
   * Ends the checks.
   *
   * @throws ParameterException if one of them has found something
   */
  void finish() {
    if (!problems.isEmpty()) {
      throw new BadOptions(spec.commandLine(), problems);
    }
  }
}
