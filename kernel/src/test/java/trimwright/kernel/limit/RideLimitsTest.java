package trimwright.kernel.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RideLimitsTest {
  @ParameterizedTest
  @EnumSource(RideLimit.class)
  void tighteningOnlyAddsBreaks(RideLimit limit) {
    RideLimits tight = RideLimits.tightened(Map.of(limit, limit.strictest()));
    double span = limit.strictest() - limit.chosen();
    for (double share = -1; share <= 2; share += 0.05) {
      double value = limit.chosen() + share * span;
      if (RideLimits.CHOSEN.breaks(limit, value)) {
        assertThat(tight.breaks(limit, value)).isTrue();
      }
    }
    double between = limit.chosen() + 0.5 * span;
    assertThat(RideLimits.CHOSEN.breaks(limit, between)).isFalse();
    assertThat(tight.breaks(limit, between)).isTrue();
  }

  @ParameterizedTest
  @EnumSource(RideLimit.class)
  void looserAndAbsurdFiguresAreRefused(RideLimit limit) {
    double span = limit.strictest() - limit.chosen();
    for (double share : new double[] {-0.01, 1.01, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> RideLimits.tightened(Map.of(limit, limit.chosen() + share * span)));
    }
  }

  @Test
  void whatIsNotTightenedStays() {
    assertThat(RideLimits.tightened(Map.of())).isEqualTo(RideLimits.CHOSEN);
    for (RideLimit limit : RideLimit.values()) {
      assertThat(RideLimits.CHOSEN.of(limit)).isEqualTo(limit.chosen());
    }
  }
}
