package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.desk.WaterStudy;
import trimwright.exchange.write.WaterTable;
import trimwright.exchange.write.WaterWriter;

/** Prints what the computation knows of a water. */
@Command(
    name = "water",
    sortOptions = false,
    description = {"Density, viscosity and vapour pressure of the water.", ""},
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  ./run water --temperature-c 15 --salinity-g-kg 35",
      "",
      "What the numbers mean:",
      "  density              what lift and buoyancy grow with",
      "  kinematic viscosity  stickiness: cold water makes more drag",
      "  vapour pressure      below it water boils, which is what cavitation is",
      "All at the pressure of one atmosphere."
    })
final class WaterCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private WaterOptions water;

  @Mixin private FormOptions form;

  WaterCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    water.check();
    WaterTable table = WaterStudy.table(water.temperature(), water.salinity());
    console.print(
        form.text(
            () -> WaterWriter.table(table),
            () -> WaterWriter.json(table),
            () -> WaterWriter.csv(table)));
    return CommandLineEntry.GOOD;
  }
}
