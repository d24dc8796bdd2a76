package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ServeCommandTest {

  @TempDir private Path place;

  /** A shop that saves one file and is stopped at once. */
  private static final class BriefShop implements ShopServer {
    private final AtomicReference<Start> asked = new AtomicReference<>();

    @Override
    public RunningShop start(Start start) {
      asked.set(start);
      return new RunningShop() {
        @Override
        public String address() {
          return "http://127.0.0.1:" + start.preferredPort() + "/";
        }

        @Override
        public void awaitStop() {
          writeInto(start.folder());
        }
      };
    }

    private static void writeInto(Path folder) {
      try {
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Files.writeString(inner.resolve("file"), "text");
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  @Test
  void serveKeepsItsFolderAndSaysWhereItIs() {
    BriefShop shop = new BriefShop();
    Path folder = place.resolve("not").resolve("yet");
    CommandRun run =
        CommandRun.withShop("", shop, "serve", "--port", "8090", "--folder", folder.toString());
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("http://127.0.0.1:8090/").contains(folder.toString());
    assertThat(shop.asked.get().madeUp()).isFalse();
    assertThat(shop.asked.get().folder()).isEqualTo(folder);
    assertThat(folder.resolve("inner").resolve("file")).hasContent("text");
  }

  @Test
  void serveKeepsItsFilesInTheHomeFolderUnlessToldOtherwise() {
    AtomicReference<Path> folder = new AtomicReference<>();
    CommandRun run =
        CommandRun.withShop(
            "",
            start -> {
              folder.set(start.folder());
              throw new IOException("no port is free");
            },
            "serve");
    assertThat(run.status()).isNotZero();
    assertThat(folder.get()).isEqualTo(Path.of(System.getProperty("user.home"), "trimwright"));
  }

  @Test
  void aFileInPlaceOfTheFolderIsBadInput() throws IOException {
    Path file = Files.writeString(place.resolve("file"), "text");
    for (String command : List.of("serve", "demo")) {
      BriefShop shop = new BriefShop();
      CommandRun run = CommandRun.withShop("", shop, command, "--folder", file.toString());
      assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
      assertThat(run.err()).contains("--folder").contains(file.toString());
      assertThat(shop.asked.get()).isNull();
    }
  }

  @Test
  void demoOpensTheMadeUpShopAndClearsItsFolder() {
    BriefShop shop = new BriefShop();
    CommandRun run = CommandRun.withShop("", shop, "demo");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("made-up").contains("http://127.0.0.1:8080/");
    assertThat(shop.asked.get().madeUp()).isTrue();
    assertThat(shop.asked.get().folder()).doesNotExist();
  }

  @Test
  void demoKeepsAFolderThatIsNamed() {
    BriefShop shop = new BriefShop();
    Path folder = place.resolve("demo");
    CommandRun run = CommandRun.withShop("", shop, "demo", "--folder", folder.toString());
    assertThat(run.status()).isZero();
    assertThat(shop.asked.get().madeUp()).isTrue();
    assertThat(folder.resolve("inner").resolve("file")).exists();
  }

  @Test
  void noCommandOpensTheMadeUpShop() {
    BriefShop shop = new BriefShop();
    CommandRun run = CommandRun.withShop("", shop);
    assertThat(run.status()).isZero();
    assertThat(shop.asked.get().madeUp()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "65536", "eighty", "80.5", "99999999999"})
  void badPortsAreBadInput(String port) {
    CommandRun run = CommandRun.of("serve", "--port", port);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--port").contains(port);
  }
}
