package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.demo.DemoRiders;
import trimwright.exchange.demo.DemoStock;

/** What {@code fleet} and {@code stock} say of what they are handed. */
class FleetCommandTest {
  private static final String[] CORNER = {
    "--keep",
    "board-1650",
    "--keep",
    "mast-750",
    "--keep",
    "battery-2000",
    "--keep",
    "drive-150-b",
    "--keep",
    "fuselage-900",
    "--keep",
    "stabilizer-240-360",
    "--keep",
    "wing-2050-960"
  };

  @TempDir private Path folder;

  private CommandRun run(String command, String riders, String... more) throws Exception {
    Path file = Files.writeString(folder.resolve("riders.yaml"), riders);
    Path stock = Files.writeString(folder.resolve("stock.yaml"), DemoStock.text());
    List<String> words =
        new ArrayList<>(List.of(command, file.toString(), "--stock", stock.toString()));
    words.addAll(Arrays.asList(more));
    return CommandRun.of(words.toArray(String[]::new));
  }

  private CommandRun inCorner(String command, String... more) throws Exception {
    List<String> words = new ArrayList<>(Arrays.asList(CORNER));
    words.addAll(Arrays.asList(more));
    return run(command, DemoRiders.household(), words.toArray(String[]::new));
  }

  @Test
  void aHouseholdGetsItsSet() throws Exception {
    CommandRun one = inCorner("fleet");
    assertThat(one.status()).isZero();
    assertThat(one.out()).contains("1 set serves all of 2 persons").contains("Set 1: board-1650");
    assertThat(one.err()).contains("Riders for whom the stock was looked through: 2 of 2");
    CommandRun two = inCorner("fleet", "--sets", "2", "--json");
    assertThat(two.status()).isZero();
    assertThat(two.out()).contains("\"format\" : \"trimwright-fleet/1\"");
  }

  @Test
  void aBudgetBuysWhatServes() throws Exception {
    CommandRun rich = inCorner("stock", "--budget", "20000");
    assertThat(rich.status()).isZero();
    assertThat(rich.out()).contains("serve all of 2 persons").contains("board-1650");
    CommandRun poor = inCorner("stock", "--budget", "10", "--json");
    assertThat(poor.status()).isZero();
    assertThat(poor.out()).contains("\"bought\" : [ ]");
  }

  @Test
  void badWordsAreRefused() throws Exception {
    assertThat(inCorner("fleet", "--sets", "13").err()).contains("--sets must be from 1 to 12");
    assertThat(inCorner("fleet", "--time-s", "0").err())
        .contains("--time-s must be from 1 to 3600");
    assertThat(inCorner("stock", "--budget", "-1").err()).contains("--budget must be from 0");
    assertThat(inCorner("stock", "--budget", "10", "--own", "nothing").err())
        .contains("no part nothing");
  }

  @Test
  void aRideThatNoPartAllowsIsRefused() throws Exception {
    CommandRun deep =
        run(
            "fleet",
            DemoRiders.household().replace("mast_immersion_mm: 450", "mast_immersion_mm: 1400"));
    assertThat(deep.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(deep.err()).contains("mira").contains("in the water");
  }
}
