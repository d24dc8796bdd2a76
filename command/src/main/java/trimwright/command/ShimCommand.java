package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.desk.ShimStudy;
import trimwright.exchange.write.ShimTable;
import trimwright.exchange.write.ShimWriter;

/** Works out a wedge under the stabilizer and writes it for a printer. */
@Command(
    name = "shim",
    sortOptions = false,
    description = {
      "A wedge under the stabilizer, to print: sizes, which way it goes in, the bolts it asks for.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run shim --angle-deg 1.5 --bolt-spacing-mm 60 --stl wedge.stl",
      "  ./run shim --angle-deg -0.5 --bolt-spacing-mm 45 --bolt-diameter-mm 5 --mounted below"
          + " --bolt-length-mm 20",
      "",
      "The file is binary STL, its sizes are millimetres. Only the shape is computed, not what it bears:",
      "the maker's limits come first, and nothing here says that a setup is safe."
    })
final class ShimCommand implements Callable<Integer> {
  private static final String STL = "--stl";

  private final Console console;

  @Mixin private ShimOptions sizes;

  @Option(
      names = STL,
      paramLabel = "FILE",
      description = "Writes the body to this file, whole or not at all (default: none).")
  private String file;

  @Mixin private JsonOption form;

  ShimCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ShimStudy study = ShimStudy.of(sizes.question());
    ShimTable table = study.table();
    if (file != null) {
      OutputFile.at(STL, file).write(study.stl());
      table = table.withFile(file);
    }
    console.print(form.json() ? ShimWriter.json(table) : ShimWriter.table(table));
    return CommandLineEntry.GOOD;
  }
}
