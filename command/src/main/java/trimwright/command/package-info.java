/**
 * The command line: reads arguments and files, asks the desk, prints what exchange writes.
 *
 * <p>A command prints its result on standard output and nothing else there; problems go to standard
 * error, one line each. Exit status 0 means good, 2 bad input (an option, a file, a value in it), 1
 * anything else. Numbers and text come out the same under every locale, in UTF-8. The web shop is
 * handed in as a {@link trimwright.command.ShopServer}, so that no command loads a web framework.
 */
package trimwright.command;
