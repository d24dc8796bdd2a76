package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ServeCommandTest {

  /** A shop that answers nothing and is stopped at once. */
  private static final class BriefShop implements ShopServer {
    private final AtomicReference<Start> asked = new AtomicReference<>();

    @Override
    public RunningShop start(Start start) {
      asked.set(start);
      assertThat(start.folder()).isEmptyDirectory();
      writeInto(start.folder());
      return new RunningShop() {
        @Override
        public String address() {
          return "http://127.0.0.1:" + start.preferredPort() + "/";
        }

        @Override
        public void awaitStop() {
          assertThat(start.folder()).isNotEmptyDirectory();
        }
      };
    }

    private static void writeInto(Path folder) {
      try {
        Files.writeString(Files.createDirectory(folder.resolve("inner")).resolve("file"), "text");
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  @Test
  void servePrintsTheAddressAndClearsItsFolder() {
    BriefShop shop = new BriefShop();
    CommandRun run = CommandRun.withShop("", shop, "serve", "--port", "8090");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("http://127.0.0.1:8090/");
    assertThat(shop.asked.get().madeUp()).isFalse();
    assertThat(shop.asked.get().folder()).doesNotExist();
  }

  @Test
  void demoOpensTheMadeUpShop() {
    BriefShop shop = new BriefShop();
    CommandRun run = CommandRun.withShop("", shop, "demo");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("made-up").contains("http://127.0.0.1:8080/");
    assertThat(shop.asked.get().madeUp()).isTrue();
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
