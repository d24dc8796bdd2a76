package trimwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class ShopApplicationTest {
  @TempDir private Path folder;

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void takesTheNextPortWhereThePreferredOneIsTakenAndAnswersThere() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"));
        RunningShop shop = ShopApplication.start(taken.getLocalPort(), folder)) {
      URI address = shop.address();
      assertThat(address.getHost()).isEqualTo("127.0.0.1");
      assertThat(address.getPort()).isGreaterThan(taken.getLocalPort());
      var answer =
          HttpClient.newHttpClient()
              .send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).contains("bench-data");
    }
  }

  @Test
  void refusesAPortThatIsNone() {
    assertThatThrownBy(() -> ShopApplication.start(70_000, folder))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 to 65535");
  }
}
