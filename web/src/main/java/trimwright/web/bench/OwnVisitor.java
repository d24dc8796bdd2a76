package trimwright.web.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Opens the running shop's Bench and asks it questions, as a browser on this machine would. */
final class OwnVisitor {
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final Pattern META =
      Pattern.compile("<meta name=\"(csrf-header|csrf-token)\" content=\"([^\"]*)\">");
  private static final String COOKIES = "Set-Cookie";

  private final HttpClient client =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(PATIENCE)
          .proxy(HttpClient.Builder.NO_PROXY)
          .build();
  private final URI curve;
  private final String cookie;
  private String header = "";
  private String token = "";

  /**
   * Opens the page.
   *
   * @param shop the shop's address, with a slash at its end
   * @throws IOException if the shop cannot be reached
   */
  OwnVisitor(URI shop) throws IOException, InterruptedException {
    curve = shop.resolve("bench/curve");
    HttpResponse<String> page = client.send(request(shop).GET().build(), BodyHandlers.ofString());
    List<String> cookies = page.headers().allValues(COOKIES);
    cookie = cookies.isEmpty() ? "" : cookies.get(0).split(";", 2)[0];
    Matcher meta = META.matcher(page.body());
    while (meta.find()) {
      if (meta.group(1).equals("csrf-header")) {
        header = meta.group(2);
      } else {
        token = meta.group(2);
      }
    }
  }

  /**
   * Asks for a curve.
   *
   * @param question JSON
   * @return the answer's status
   * @throws IOException if the shop cannot be reached
   */
  int ask(byte[] question) throws IOException, InterruptedException {
    HttpRequest.Builder request =
        request(curve)
            .header("Content-Type", "application/json")
            .header("Cookie", cookie)
            .POST(BodyPublishers.ofByteArray(question));
    if (!header.isEmpty()) {
      request.header(header, token);
    }
    return client.send(request.build(), BodyHandlers.ofByteArray()).statusCode();
  }

  private static HttpRequest.Builder request(URI address) {
    return HttpRequest.newBuilder(address).timeout(PATIENCE);
  }
}
