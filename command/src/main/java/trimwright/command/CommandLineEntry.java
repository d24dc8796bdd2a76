package trimwright.command;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/**
 * The way into the command line. Exit status 0 is good, 2 bad input, 1 anything else.
 *
 * <p>One run at a time per set of writers; separate runs share nothing and may go on in parallel.
 */
public final class CommandLineEntry {
  /** All went well. */
  public static final int GOOD = CommandLine.ExitCode.OK;

  /** A fault inside, or a check that missed. */
  public static final int FAULT = CommandLine.ExitCode.SOFTWARE;

  /** Something in what was handed in cannot be used; standard error says what. */
  public static final int BAD_INPUT = CommandLine.ExitCode.USAGE;

  private static final int HELP_COLUMNS = 100;

  private CommandLineEntry() {}

  /**
   * Runs one command without the web shop and with an empty standard input.
   *
   * @param args the words after the program's name
   * @param out standard output
   * @param err standard error
   * @return the exit status
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return run(args, InputStream.nullInputStream(), out, err, CommandLineEntry::noShop);
  }

  /**
   * Runs one command on the console of this process, in UTF-8 whatever the locale says.
   *
   * @param args the words after the program's name
   * @param shop starts the shop in the browser
   * @return the exit status
   */
  public static int runOnConsole(String[] args, ShopServer shop) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    int status = run(args, System.in, out, err, shop);
    err.flush();
    return status;
  }

  /**
   * Runs one command.
   *
   * @param args the words after the program's name
   * @param in standard input, read only when a file is named {@code -}
   * @param out standard output
   * @param err standard error
   * @param shop starts the shop in the browser
   * @return the exit status
   */
  public static int run(
      String[] args, InputStream in, PrintWriter out, PrintWriter err, ShopServer shop) {
    Console console = new Console(in, out, err, shop);
    int status;
    try {
      status = commandLine(console, args).execute(args);
      out.flush();
      if (out.checkError()) {
        err.println("The output could not be written in full.");
        status = FAULT;
      }
    } catch (Throwable fault) { // also when memory or the stack runs out: one line, no trace
      status = Faults.report(fault, err);
    }
    err.flush();
    return status;
  }

  /** The commands that the words may need, ready to read them; all without words. */
  static CommandLine commandLine(Console console, String... words) {
    CommandLine commandLine = new CommandLine(new Trimwright(console));
    Trimwright.addCommands(commandLine, console, words);
    commandLine.setOut(console.out());
    commandLine.setErr(console.err());
    commandLine.setUsageHelpWidth(HELP_COLUMNS);
    commandLine.setExpandAtFiles(false);
    commandLine.setCaseInsensitiveEnumValuesAllowed(true);
    // All wrong words are reported, and not only the first
    everyParser(commandLine);
    commandLine.setExecutionStrategy(OptionChecks::execute);
    commandLine.setParameterExceptionHandler(CommandLineEntry::explainUsage);
    commandLine.setExecutionExceptionHandler(CommandLineEntry::explainFault);
    return commandLine;
  }

  private static void everyParser(CommandLine commandLine) {
    commandLine.getCommandSpec().parser().collectErrors(true);
    commandLine.getSubcommands().values().forEach(CommandLineEntry::everyParser);
  }

  private static int explainUsage(CommandLine.ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    OptionChecks.lines(e).forEach(line -> err.println(oneLine(line)));
    err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
    return BAD_INPUT;
  }

  private static int explainFault(
      Exception e, CommandLine command, CommandLine.ParseResult parsed) {
    if (e instanceof BadInput bad) {
      bad.lines().forEach(line -> command.getErr().println(oneLine(line)));
      return BAD_INPUT;
    }
    return Faults.report(e, command.getErr());
  }

  private static ShopServer.RunningShop noShop(ShopServer.Start start) {
    throw new BadInput("The shop in the browser is not part of this program.");
  }

  /** A message stays on its line whatever a person typed into it. */
  static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ").strip();
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(
        new BufferedWriter(
            new OutputStreamWriter(
                new BufferedOutputStream(new FileOutputStream(descriptor)),
                StandardCharsets.UTF_8)));
  }
}
