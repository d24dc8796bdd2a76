package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CommandLineEntryTest {
  @Test
  void helpTeachesTheStart() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("curve", "cause", "wing", "section", "water", "checks", "demo", "serve")
        .contains("./run demo light-carver > my.yaml");
  }

  @Test
  void versionIsFilledInByTheBuild() {
    CommandRun run = CommandRun.of("--version");
    assertThat(run.status()).isZero();
    assertThat(run.out()).matches("Trimwright \\d+\\.\\d+\\.\\d+\\S*, model \\S+\\n");
  }

  @Test
  void unknownCommandsAndOptionsAreWrongUsage() {
    assertThat(CommandRun.of("curv"))
        .satisfies(
            run -> {
              assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
              assertThat(run.out()).isEmpty();
              assertThat(run.err()).contains("'curv'").contains("--help");
            });
    assertThat(CommandRun.of("water", "--salt", "3"))
        .satisfies(
            run -> {
              assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
              assertThat(run.out()).isEmpty();
              assertThat(run.err()).contains("--salt").contains("./run water --help");
            });
  }

  @Test
  void faultInsideIsOneLineAndTheDetailsAreKept() throws Exception {
    CommandRun run =
        CommandRun.withShop(
            "",
            start -> {
              throw new IllegalStateException("planted");
            },
            "serve");
    assertThat(run.status()).isEqualTo(CommandLineEntry.FAULT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("planted").doesNotContain("\tat ");
    Path log = Path.of(run.err().strip().replaceAll(".*Details: ", ""));
    assertThat(Files.readString(log)).contains("planted").contains("\tat trimwright.command");
    Files.delete(log);
  }

  @Test
  void errorsOfTheMachineEndInOneLineToo() throws Exception {
    CommandRun run =
        CommandRun.withShop(
            "",
            start -> {
              throw new StackOverflowError();
            },
            "serve");
    assertThat(run.status()).isEqualTo(CommandLineEntry.FAULT);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("StackOverflowError");
    Files.delete(Path.of(run.err().strip().replaceAll(".*Details: ", "")));
  }

  @Test
  void outputThatCannotBeWrittenIsAFault() {
    StringWriter err = new StringWriter();
    Writer full =
        new Writer() {
          @Override
          public void write(char[] buffer, int from, int count) throws java.io.IOException {
            throw new java.io.IOException("full");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    int status =
        CommandLineEntry.run(
            new String[] {"water"},
            InputStream.nullInputStream(),
            new PrintWriter(full),
            new PrintWriter(err),
            start -> {
              throw new AssertionError();
            });
    assertThat(status).isEqualTo(CommandLineEntry.FAULT);
    assertThat(err.toString()).isEqualTo("The output could not be written in full.\n");
  }

  @Test
  void resultsDoNotDependOnTheLocale() {
    Locale before = Locale.getDefault();
    String first = CommandRun.of("water", "--temperature-c", "3.5").out();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "th-TH-u-nu-thai", "tr-TR"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        CommandRun again = CommandRun.of("water", "--temperature-c", "3.5");
        assertThat(again.status()).as(tag).isZero();
        assertThat(again.out()).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void withoutTheWebShopServeSaysSo() {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        CommandLineEntry.run(new String[] {"serve"}, new PrintWriter(out), new PrintWriter(err));
    assertThat(status).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(err.toString()).contains("not part of this program");
  }
}
