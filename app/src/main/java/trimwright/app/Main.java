package trimwright.app;

import java.util.Set;
import trimwright.command.CommandLineEntry;

/**
 * The program's start. Every start goes through the command line; the web is reached only from the
 * commands that open the shop, so that no other command waits for a web framework to load.
 */
public final class Main {
  /** The commands that may open the shop in the browser. */
  private static final Set<String> SHOP_COMMANDS = Set.of("serve", "demo");

  private Main() {}

  /**
   * Runs one command, or opens the made-up shop when there is none, and ends the process with the
   * command's exit status.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) {
    if (args.length > 0 && !SHOP_COMMANDS.contains(args[0])) {
      keepLibrariesQuiet();
    }
    // A lambda and not a method reference: the latter would load the web as soon as it is named.
    int status = CommandLineEntry.runOnConsole(args, start -> WebShop.open(start));
    System.exit(status);
  }

  /**
   * A command prints its answer alone. Some libraries log through SLF4J; a command has no log, and
   * looking for one among the jars would take time and could print.
   */
  static void keepLibrariesQuiet() {
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    System.setProperty("slf4j.provider", "org.slf4j.helpers.NOP_FallbackServiceProvider");
  }
}
