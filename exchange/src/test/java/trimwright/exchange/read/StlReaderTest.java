package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.write.StlWriter;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.Solid;
import trimwright.kernel.wedge.SolidCheck;

class StlReaderTest {
  /** Coordinates of 32 bits, at most 80 mm: 4 millionths of a millimetre each [m]. */
  private static final double ROUNDED = 4e-9;

  private static final Solid WEDGE =
      new ShimWedge(0.03, 0.06, 0.0065, 0.0795, 0.0195, 8e-4).solid();

  private static byte[] file() {
    return StlWriter.bytes(WEDGE, "a wedge");
  }

  @Test
  void readsBackWhatWasWritten() {
    Solid read = StlReader.read(file());
    assertThat(read.cornerCount()).isEqualTo(WEDGE.cornerCount());
    assertThat(read.triangleCount()).isEqualTo(WEDGE.triangleCount());
    double[] shift = null;
    for (int i = 0; i < read.triangleCount(); i++) {
      for (int k = 0; k < 3; k++) {
        double[] at = read.corner(read.triangle(i)[k]);
        double[] meant = WEDGE.corner(WEDGE.triangle(i)[k]);
        double[] off = {at[0] - meant[0], at[1] - meant[1], at[2] - meant[2]};
        shift = shift == null ? off : shift;
        for (int axis = 0; axis < 3; axis++) {
          assertThat(off[axis]).isCloseTo(shift[axis], within(2 * ROUNDED));
        }
      }
    }
    assertThat(SolidCheck.of(read).isSolid()).isTrue();
  }

  /** What the check is for: a file that lost or turned something is seen to be no body. */
  @Test
  void aSpoiltFileIsSeen() {
    byte[] moved = file();
    moved[84 + 12 + 1] ^= 1; // A corner of the first triangle, moved a little
    assertThat(SolidCheck.of(StlReader.read(moved)).closed()).isFalse();

    byte[] turned = file();
    byte[] first = Arrays.copyOfRange(turned, 96, 108);
    System.arraycopy(turned, 108, turned, 96, 12);
    System.arraycopy(first, 0, turned, 108, 12);
    SolidCheck check = SolidCheck.of(StlReader.read(turned));
    assertThat(check.closed()).isTrue();
    assertThat(check.oriented()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 83, 84, 133, 135})
  void otherLengthsAreRefused(int length) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StlReader.read(Arrays.copyOf(file(), length)))
        .withMessageContaining("bytes");
  }

  @Test
  void aCornerThatIsNoNumberIsRefused() {
    byte[] bytes = file();
    Arrays.fill(bytes, 96, 100, (byte) 0xff);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StlReader.read(bytes))
        .withMessageContaining("finite");
  }
}
