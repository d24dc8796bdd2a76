package trimwright.kernel.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Craft;

/** Circular motion as mechanics textbooks have it: tan bank = V²/(g R), load factor 1/cos bank. */
class TurnPathReferenceTest {
  @Test
  void withoutHeightItIsTheTextbooksCircle() {
    for (double speed : new double[] {4, 7, 11}) {
      for (double bank : new double[] {0.05, 0.4, 0.9}) {
        TurnPath path = TurnPath.of(speed, bank, 0).orElseThrow();
        assertThat(speed * speed / (Craft.GRAVITY * path.radius()))
            .isCloseTo(Math.tan(bank), within(1e-12));
      }
    }
  }

  @Test
  void theRiderIsHeldOnTheOwnSmallerCircle() {
    double speed = 7;
    double bank = 0.5;
    double height = 1.8;
    TurnPath path = TurnPath.of(speed, bank, height).orElseThrow();
    double rate = speed / path.radius();
    assertThat(path.riderRadius())
        .isCloseTo(path.radius() - height * Math.sin(bank), within(1e-12));
    assertThat(rate * rate * path.riderRadius())
        .isCloseTo(Craft.GRAVITY * Math.tan(bank), within(1e-9));
  }

  @Test
  void smallBanksHaveTheSmallAngleRadius() {
    TurnPath path = TurnPath.of(6, 1e-4, 1.8).orElseThrow();
    assertThat(path.radius() * 1e-4 * Craft.GRAVITY / 36).isCloseTo(1, within(1e-4));
  }

  @Test
  void aBankTooSteepForTheSpeedHasNoCircle() {
    assertThat(TurnPath.of(3, 0.8, 1.8)).isEmpty();
  }
}
