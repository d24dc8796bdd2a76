package trimwright.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which port the shop answers on. */
final class PortOption {
  /** The port tried first when none is named. */
  static final int DEFAULT = 8080;

  private static final int LOWEST = 1;
  private static final int HIGHEST = 65_535;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--port",
      paramLabel = "NUMBER",
      converter = Numbers.Whole.class,
      defaultValue = "" + DEFAULT,
      description =
          "Port to try first, 1 to 65535; when it is taken, the next free one is used (default:"
              + " ${DEFAULT-VALUE}).")
  private int port;

  /**
   * The port.
   *
   * @throws ParameterException if it is outside 1 to 65535
   */
  int value() {
    if (port < LOWEST || port > HIGHEST) {
      throw new ParameterException(
          spec.commandLine(),
          "--port must be from " + LOWEST + " to " + HIGHEST + ", was " + port + ".");
    }
    return port;
  }
}
