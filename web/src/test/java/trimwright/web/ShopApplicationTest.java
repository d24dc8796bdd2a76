package trimwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** Addresses and heads that the container refuses before any page of ours could. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET /a|b<c HTTP/1.1\r\nHost: 127.0.0.1",
        "GET /%zz HTTP/1.1\r\nHost: 127.0.0.1",
        "GET / HTTP/1.1",
        "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nBad Head: x",
      })
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aMalformedRequestIsAnsweredInOurWords(String request) throws Exception {
    try (RunningShop shop = ShopApplication.start(0, folder);
        Socket socket = new Socket("127.0.0.1", shop.address().getPort())) {
      socket
          .getOutputStream()
          .write((request + "\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer)
          .startsWith("HTTP/1.1 400")
          .contains("could not make sense of that request")
          .doesNotContainIgnoringCase("tomcat")
          .doesNotContain("Exception", "a|b<c");
    }
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aRequestThatDoesNotSayHowLargeItIsIsTurnedAway() throws Exception {
    try (RunningShop shop = ShopApplication.start(0, folder)) {
      HttpRequest request =
          HttpRequest.newBuilder(shop.address().resolve("/bench/curve"))
              .header("Content-Type", "application/json")
              .POST(
                  BodyPublishers.ofInputStream(
                      () -> new ByteArrayInputStream("{}".getBytes(StandardCharsets.UTF_8))))
              .build();
      var answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
      assertThat(answer.statusCode()).isEqualTo(411);
    }
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aScriptIsAnsweredByItsContentAndAPageNeedsNoSession() throws Exception {
    try (RunningShop shop = ShopApplication.start(0, folder)) {
      URI script = shop.address().resolve("/bench/main.js");
      HttpClient client = HttpClient.newHttpClient();
      var first = client.send(HttpRequest.newBuilder(script).build(), BodyHandlers.ofString());
      assertThat(first.statusCode()).isEqualTo(200);
      assertThat(first.headers().firstValue("Cache-Control")).hasValue("no-cache");
      String digest = first.headers().firstValue("ETag").orElseThrow();
      var again =
          client.send(
              HttpRequest.newBuilder(script).header("If-None-Match", digest).build(),
              BodyHandlers.ofString());
      assertThat(again.statusCode()).isEqualTo(304);
      assertThat(again.body()).isEmpty();
    }
  }
}
