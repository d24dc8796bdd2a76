package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.write.LimitsWriter;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

class LimitsReaderTest {
  private static final Path PAGE = Path.of("..", "docs", "limits.md");

  private static final String TABLE_STARTS = "| key |";

  @Test
  void everyLimitHasAKey() {
    assertThat(Arrays.stream(LimitKey.values()).map(LimitKey::limit))
        .containsExactly(RideLimit.values());
  }

  @ParameterizedTest
  @EnumSource(LimitKey.class)
  void theSchemaPermitsWhatTheLimitPermits(LimitKey key) {
    JsonNode schema = SchemaBook.LIMITS.find(key.key()).orElseThrow();
    double chosen = key.shown(key.limit().chosen());
    double strictest = key.shown(key.limit().strictest());
    assertThat(schema.get("minimum").doubleValue())
        .isCloseTo(Math.min(chosen, strictest), within(1e-9));
    assertThat(schema.get("maximum").doubleValue())
        .isCloseTo(Math.max(chosen, strictest), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(LimitKey.class)
  void theStrictestFigureAndTheChosenOneAreAccepted(LimitKey key) {
    for (double value : new double[] {key.limit().chosen(), key.limit().strictest()}) {
      RideLimits limits =
          LimitsReader.read(key.key() + ": " + key.shown(value)).findValue().orElseThrow().limits();
      assertThat(limits.of(key.limit())).isCloseTo(value, within(1e-12));
    }
  }

  @ParameterizedTest
  @EnumSource(LimitKey.class)
  void aLooserFigureIsRefused(LimitKey key) {
    double chosen = key.limit().chosen();
    double past = 0.01 * (chosen - key.limit().strictest());
    Reading<LimitsFile> reading = LimitsReader.read(key.key() + ": " + key.shown(chosen + past));
    assertThat(reading.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.key()).isEqualTo(key.key());
              assertThat(problem.line()).hasValue(1);
              assertThat(problem.message())
                  .contains(key.key(), "A shop may tighten a limit, not loosen it.");
            });
  }

  @Test
  void keysLeftOutStayAsChosen() {
    LimitsFile file =
        LimitsReader.read("name: the bay\nleast_stall_margin_deg: 3\n").findValue().orElseThrow();
    assertThat(file.name()).isEqualTo("the bay");
    for (RideLimit limit : RideLimit.values()) {
      assertThat(file.limits().isTightened(limit)).isEqualTo(limit == RideLimit.STALL_MARGIN);
    }
    assertThat(file.digest()).isNotEqualTo(LimitsFile.CHOSEN.digest());
  }

  @Test
  void theDigestIsOfTheFiguresAlone() {
    assertThat(LimitsReader.read("name: no change\n").findValue().orElseThrow().digest())
        .isEqualTo(LimitsFile.CHOSEN.digest());
  }

  @Test
  void anUnknownKeyIsNamed() {
    assertThat(LimitsReader.read("least_stall_margin_mm: 3\n").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.message()).contains("least_stall_margin_deg"));
  }

  /** With {@code -Dtrimwright.write.documents=true} the page's table is written anew. */
  @Test
  void thePageHasEveryLimit() throws Exception {
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    int from = page.indexOf(TABLE_STARTS);
    int to = page.indexOf("\n\n", from) + 1;
    if (Boolean.getBoolean("trimwright.write.documents")) {
      Files.writeString(PAGE, page.substring(0, from) + LimitsWriter.page() + page.substring(to));
      return;
    }
    assertThat(page.substring(from, to)).isEqualTo(LimitsWriter.page());
  }
}
