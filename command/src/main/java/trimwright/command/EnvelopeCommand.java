package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trimwright.desk.EnvelopeStudy;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.write.EnvelopeWriter;
import trimwright.kernel.envelope.Envelope;

/** Prints what a case can do before something gives way. */
@Command(
    name = "envelope",
    sortOptions = false,
    description = {
      "What a setup can do under its rider before something gives way: take-off, stall, turns, depths, loads, glide, range.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  ./run envelope my.yaml",
      "",
      "What the numbers mean:",
      "  bank      of the deck towards the inside; the rider stands square on it",
      "  load      what the legs carry over the weight",
      "  tip       depth of the higher wing tip below the still surface",
      "  to stall  rise of the angle of attack to the first stalled strip, at that strip",
      "  bending   at the mast's top and at the wings' middle",
      "Turns, depths and loads are those of the rider's wished speed. Nothing here says that a ride is safe."
    })
final class EnvelopeCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private JsonOption form;

  EnvelopeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    CaseFile caseFile = limits.of(sections.of(FileInput.readCase(file, console), console), console);
    Envelope envelope = EnvelopeStudy.of(caseFile);
    console.print(
        form.json()
            ? EnvelopeWriter.json(caseFile, envelope)
            : EnvelopeWriter.table(caseFile, envelope));
    return CommandLineEntry.GOOD;
  }
}
