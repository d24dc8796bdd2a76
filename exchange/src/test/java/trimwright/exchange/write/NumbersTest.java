package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.words.Shown;
import trimwright.seed.RunSeed;

class NumbersTest {

  /** Dotless i, decimal comma, other digits, other minus. */
  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "sv-SE"})
  void nothingDependsOnTheLocale(String tag) {
    Map<String, String> plain = Documents.everything();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(Documents.firstDifference(plain, Documents.everything())).isEmpty();
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void nothingEverSaysNotANumber() {
    Documents.everything()
        .forEach((name, text) -> assertThat(text).as(name).doesNotContain("NaN", "Infinity"));
  }

  @Test
  void whatIsNotFiniteBecomesNull() {
    JsonNode last =
        JsonMapper.shared().readTree(SectionWriter.json(Documents.section())).get("points").get(2);
    assertThat(last.get("cl").isNull()).isTrue();
    assertThat(last.get("cd").isNull()).isTrue();
    assertThat(last.get("converged").booleanValue()).isFalse();
    assertThat(SectionWriter.csv(Documents.section())).contains(",,,");
  }

  @Test
  void roundTripOfUnitsLeavesRoundNumbersRound() {
    for (int kmh = 1; kmh <= 60; kmh++) {
      assertThat(JsonFields.rounded(Shown.kmh(kmh / 3.6))).isEqualTo(kmh);
    }
  }

  @Test
  void zeroHasNoSign() {
    assertThat(JsonFields.rounded(-0.0)).isEqualTo(0.0);
    assertThat(Shown.decimals(-0.04, 1)).isEqualTo("0.0");
    assertThat(Shown.nose(-0.04)).isEqualTo("level");
  }

  @ParameterizedTest
  @CsvSource({
    "1.005, 2, 1.01",
    "-1.005, 2, -1.01",
    "2.45, 1, 2.5",
    "0.15, 1, 0.2",
    "0.5, 0, 1",
    "-0.5, 0, -1",
    "1e12, 1, 1000000000000.0",
    "-0.04, 1, 0.0",
    "7.123456789, 9, 7.123456789"
  })
  void halvesOfWhatIsWrittenRoundAwayFromZero(double value, int decimals, String text) {
    assertThat(Shown.rounded(value, decimals).toPlainString()).isEqualTo(text);
  }

  @Property(tries = 2000, seed = RunSeed.VALUE)
  void roundingIsThatOfTheWrittenNumber(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
      @ForAll @IntRange(min = 0, max = 3) int decimals) {
    assertThat(Shown.rounded(value, decimals))
        .isEqualTo(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    double tie = Math.rint(value) + 0.5 * Math.pow(10, -decimals);
    assertThat(Shown.rounded(tie, decimals))
        .isEqualTo(BigDecimal.valueOf(tie).setScale(decimals, RoundingMode.HALF_UP));
  }
}
