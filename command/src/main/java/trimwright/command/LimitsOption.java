package trimwright.command;

import picocli.CommandLine.Option;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.LimitsFile;

/** Lets a shop hold rides against limits of its own, stricter than the chosen ones. */
final class LimitsOption {
  @Option(
      names = "--limits",
      paramLabel = "FILE",
      description = "Limits file of a shop that tightens some of the chosen limits; see limits.")
  private String file;

  /** The limits asked for. */
  LimitsFile read(Console console) {
    return file == null ? LimitsFile.CHOSEN : FileInput.readLimits(file, console);
  }

  /** The case held against them. */
  CaseFile of(CaseFile caseFile, Console console) {
    return file == null ? caseFile : caseFile.within(read(console).limits());
  }
}
