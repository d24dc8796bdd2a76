package trimwright.command;

import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import trimwright.desk.RangeProblem;

/** Builds ranges from three options, and says each problem in the words of its option. */
final class RangeOptions {
  /** A value that every range permits: the step is tried on it when the ends are bad. */
  private static final double HARMLESS = 5;

  private RangeOptions() {}

  /**
   * Makes a range of its ends and its step.
   *
   * @param <R> the range
   */
  interface Maker<R> {
    /**
     * Makes it.
     *
     * @throws RangeProblem if there is no such range
     */
    R range(double from, double to, double step);
  }

  /**
   * A range from {@code --from-UNIT --to-UNIT --step-UNIT}.
   *
   * @param spec the command
   * @param unit ending of the options' names
   * @throws ParameterException if an option is bad; it speaks of each bad one
   */
  static <R> R range(
      CommandSpec spec, String unit, double from, double to, double step, Maker<R> maker) {
    String fromOption = "--from-" + unit;
    String toOption = "--to-" + unit;
    String stepOption = "--step-" + unit;
    new OptionChecks(spec)
        .check(() -> make(spec, fromOption, maker, from, from, HARMLESS))
        .check(() -> make(spec, toOption, maker, to, to, HARMLESS))
        .check(() -> make(spec, stepOption, maker, HARMLESS, HARMLESS, step))
        .finish();
    try {
      return maker.range(from, to, step);
    } catch (RangeProblem problem) {
      String option = "--" + problem.bound().name().toLowerCase(Locale.ROOT) + "-" + unit;
      String why = problem.getMessage().replace("the lower end", fromOption);
      throw usage(spec, option + " " + why, problem);
    }
  }

  private static <R> void make(
      CommandSpec spec, String option, Maker<R> maker, double from, double to, double step) {
    try {
      maker.range(from, to, step);
    } catch (RangeProblem problem) {
      throw usageOf(spec, problem, option);
    }
  }

  /** Wrong usage of a single option that is checked like the end of a range. */
  static ParameterException usageOf(CommandSpec spec, RangeProblem problem, String option) {
    return usage(spec, option + " " + problem.getMessage(), problem);
  }

  private static ParameterException usage(CommandSpec spec, String words, RangeProblem problem) {
    return new ParameterException(spec.commandLine(), words + ".", problem);
  }
}
