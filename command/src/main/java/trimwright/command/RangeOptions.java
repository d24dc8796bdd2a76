package trimwright.command;

import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import trimwright.desk.RangeProblem;

/** Turns a range's problem into the words of the option that caused it. */
final class RangeOptions {
  private RangeOptions() {}

  /**
   * Wrong usage of one of {@code --from-UNIT --to-UNIT --step-UNIT}.
   *
   * @param spec the command
   * @param problem what is wrong
   * @param unit ending of the options' names
   */
  static ParameterException usage(CommandSpec spec, RangeProblem problem, String unit) {
    String option = "--" + problem.bound().name().toLowerCase(Locale.ROOT) + "-" + unit;
    return usageOf(spec, problem, option);
  }

  /** Wrong usage of a single option that is checked like the end of a range. */
  static ParameterException usageOf(CommandSpec spec, RangeProblem problem, String option) {
    return new ParameterException(
        spec.commandLine(), option + " " + problem.getMessage() + ".", problem);
  }
}
