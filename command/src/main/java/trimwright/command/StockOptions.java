package trimwright.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.desk.LayeredStock;
import trimwright.exchange.read.StockFile;
import trimwright.fitting.stock.Stock;

/** The stock of a command, and which of its parts are kept whatever the rest is. */
final class StockOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--stock",
      paramLabel = "STOCK",
      required = true,
      description = "Stock file in YAML, or - for standard input; ./run demo stock prints one.")
  private String file;

  @Option(
      names = "--keep",
      paramLabel = "PART",
      description =
          "A part that stays whatever the rest is, by its id: of its kind no other is looked at. May"
              + " be given several times.")
  private List<String> kept = new ArrayList<>();

  /** The stock. */
  StockFile read(Console console) {
    return FileInput.readStock(file, console);
  }

  /**
   * Its parts as they are computed with.
   *
   * @throws ParameterException if a part to keep is not in it
   */
  Stock parts(StockFile stock, SectionsOption sections, Console console) {
    Stock keeping;
    try {
      keeping = stock.stock().keeping(new LinkedHashSet<>(kept));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(
          spec.commandLine(), "--keep must name parts of the stock: " + e.getMessage() + ".");
    }
    PolarProgress progress = new PolarProgress(console);
    return sections.fitted()
        ? keeping
        : LayeredStock.of(keeping, sections.polars(), progress::say, progress::remark);
  }
}
