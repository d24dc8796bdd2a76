package trimwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trimwright.desk.MotionStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.MannersAt;
import trimwright.exchange.write.MotionWriter;

/** Prints how a setup moves under its rider at each speed. */
@Command(
    name = "motion",
    sortOptions = false,
    description = {
      "How a setup moves under its rider at each speed: what grows by itself, pitchy or locked in, what chop does.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run motion my.yaml",
      "  ./run motion my.yaml --from-kmh 15 --to-kmh 30 --step-kmh 5 --json",
      "",
      "What the numbers mean:",
      "  hold      whether somebody who answers a quarter of a second late can hold it",
      "  doubles   time in which what is off doubles by itself, and what of it moves most",
      "  swing     time of one swing of the least damped; damping 1 swings no more",
      "  pitchy    largest pitch rate within half a second after 1 cm of foot pressure",
      "  10 cm     locked in: time in which such a centimetre, unnoticed, changes the height by 10 cm",
      "  feet      how far foot pressure would move to hold the pitch still in the chop (root mean square)",
      "  deck      how much the deck shakes up and down under the feet in the chop (root mean square)",
      "  waves     how often the chop comes; feet follow once a second",
      "The rider stays upright over the feet. Nothing here says that a ride is safe."
    })
final class MotionCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Mixin private SpeedOptions speeds;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private JsonOption form;

  MotionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpeedRange range = speeds.range();
    CaseFile caseFile = limits.of(sections.of(FileInput.readCase(file, console), console), console);
    List<MannersAt> points =
        MotionStudy.find(caseFile, range, Thread.currentThread()::isInterrupted)
            .orElseThrow(() -> new CancellationException("stopped"));
    console.print(
        form.json() ? MotionWriter.json(caseFile, points) : MotionWriter.table(caseFile, points));
    return CommandLineEntry.GOOD;
  }
}
