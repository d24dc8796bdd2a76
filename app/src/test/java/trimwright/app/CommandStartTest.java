package trimwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.demo.DemoCases;

/** Starts the program as a process of its own, with every jar of the shop on its class path. */
class CommandStartTest {
  private static final long PATIENCE_SECONDS = 120;

  @TempDir private Path folder;

  @Test
  void aCommandLoadsNoWebFramework() throws Exception {
    Path caseFile = Files.writeString(folder.resolve("case.yaml"), DemoCases.list().get(0).text());
    Path loaded = folder.resolve("loaded.txt");

    Ended ended =
        start(List.of("-Xlog:class+load:file=" + loaded), "curve", caseFile.toString(), "--json");

    assertThat(ended.status()).as(ended.err()).isZero();
    assertThat(ended.out()).startsWith("{").contains("\"points\"");
    assertThat(ended.err()).isEmpty();
    List<String> classes = Files.readAllLines(loaded);
    assertThat(classes).anyMatch(line -> line.contains("trimwright.kernel."));
    assertThat(classes)
        .noneMatch(line -> line.contains("org.springframework."))
        .noneMatch(line -> line.contains("trimwright.web."))
        .noneMatch(line -> line.contains("org.apache.catalina."))
        .noneMatch(line -> line.contains("trimwright.sheet."))
        .noneMatch(line -> line.contains("org.apache.pdfbox."))
        .noneMatch(line -> line.contains("org.slf4j.jul."));
  }

  @Test
  void badInputEndsWithStatusTwoAndAMessage() throws Exception {
    Ended ended = start(List.of(), "curve", folder.resolve("missing.yaml").toString());

    assertThat(ended.status()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("missing.yaml");
  }

  private record Ended(int status, String out, String err) {}

  private Ended start(List<String> options, String... args)
      throws IOException, InterruptedException {
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Path arguments =
        Files.writeString(
            folder.resolve("class-path"), "-cp \"" + classPath.replace("\\", "\\\\") + "\"");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.add("@" + arguments);
    command.add(Main.class.getName());
    command.addAll(List.of(args));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    try {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    } finally {
      process.destroyForcibly();
    }
    return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
  }
}
