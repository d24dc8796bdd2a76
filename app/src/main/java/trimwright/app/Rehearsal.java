package trimwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URI;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import trimwright.command.CommandLineEntry;
import trimwright.command.ShopServer;
import trimwright.exchange.demo.DemoCases;

/**
 * Goes once through what a start does, so that the Java runtime can write down the classes needed
 * and load them faster in every later start. Run by the build and by nobody else.
 */
final class Rehearsal {
  private Rehearsal() {}

  /**
   * Rehearses one kind of start.
   *
   * @param args {@code command} or {@code web}
   * @throws IOException if a scratch file or the shop's page cannot be had
   */
  public static void main(String[] args) throws IOException {
    switch (String.join(" ", args)) {
      case "command" -> rehearseCommands();
      case "web" -> rehearseWeb();
      default -> throw new IllegalArgumentException("rehearses command or web");
    }
  }

  private static void rehearseCommands() throws IOException {
    Main.keepLibrariesQuiet();
    Path demoCase = Files.createTempFile("trimwright-rehearsal", ".yaml");
    try {
      Files.writeString(demoCase, DemoCases.list().get(0).text());
      String file = demoCase.toString();
      List<List<String>> commands =
          List.of(
              List.of("--help"),
              List.of("water", "--temperature-c", "15", "--salinity-g-kg", "35", "--json"),
              List.of("section", "naca2412"),
              List.of("curve", file),
              List.of("curve", file, "--json"),
              List.of("curve", file, "--csv"),
              List.of("cause", file, "--speed-kmh", "22"),
              List.of("cause", file, "--speed-kmh", "22", "--json"),
              List.of("curve", "no-such-file.yaml"));
      PrintWriter unseen = new PrintWriter(Writer.nullWriter());
      for (List<String> command : commands) {
        CommandLineEntry.run(command.toArray(String[]::new), unseen, unseen);
      }
    } finally {
      Files.delete(demoCase);
    }
  }

  /**
   * The way of a real start, from the words of the command line to the first page and a slider. The
   * shop has no end of its own, so the process ends here as it does there.
   */
  private static void rehearseWeb() {
    PrintWriter unseen = new PrintWriter(Writer.nullWriter());
    PrintWriter err = new PrintWriter(System.err, true);
    int status =
        CommandLineEntry.run(
            new String[] {"demo"},
            InputStream.nullInputStream(),
            unseen,
            err,
            start -> new OnePage(WebShop.open(start)));
    System.exit(status);
  }

  /** A shop that counts as stopped once its first page and one slider's answer have been read. */
  private record OnePage(ShopServer.RunningShop shop) implements ShopServer.RunningShop {
    private static final Pattern TOKEN =
        Pattern.compile("name=\"csrf-(?:header|token)\" content=\"([^\"]+)\"");

    @Override
    public String address() {
      return shop.address();
    }

    @Override
    public void awaitStop() {
      URI first = URI.create(address());
      try {
        URLConnection page = first.toURL().openConnection();
        String text = new String(page.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        List<String> token = TOKEN.matcher(text).results().map(found -> found.group(1)).toList();
        String id = DemoCases.list().get(0).id();
        try (InputStream fields = first.resolve("bench/case?id=" + id).toURL().openStream()) {
          URLConnection curve = first.resolve("bench/curve").toURL().openConnection();
          curve.setDoOutput(true);
          curve.setRequestProperty("Content-Type", "application/json");
          curve.setRequestProperty("Cookie", page.getHeaderField("Set-Cookie"));
          curve.setRequestProperty(token.get(0), token.get(1));
          fields.transferTo(curve.getOutputStream());
          curve.getInputStream().readAllBytes();
        }
      } catch (IOException e) {
        throw new UncheckedIOException("the first page or a slider's answer cannot be had", e);
      }
    }
  }
}
