package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.Solid;

/**
 * The layout as published: Burns, M., Automated Fabrication (1993), section 6.5. Bytes are taken
 * apart here by hand, not by the program's reader.
 */
class StlWriterReferenceTest {
  private static final int TITLE = 80;
  private static final int HEAD = 84;
  private static final int TRIANGLE = 50;

  /** Numbers of 32 bits. */
  private static final double SINGLE = 1e-6;

  private static final byte[] FILE =
      StlWriter.bytes(
          new ShimWedge(0.03, 0.06, 0.0065, 0.0795, 0.0195, 8e-4).solid(), "a wedge, mm");

  private static int word(byte[] bytes, int at) {
    return (bytes[at] & 0xff)
        | (bytes[at + 1] & 0xff) << 8
        | (bytes[at + 2] & 0xff) << 16
        | (bytes[at + 3] & 0xff) << 24;
  }

  private static double[] place(byte[] bytes, int at) {
    double[] place = new double[3];
    for (int k = 0; k < 3; k++) {
      place[k] = Float.intBitsToFloat(word(bytes, at + 4 * k));
    }
    return place;
  }

  @Test
  void aTriangleByteForByte() {
    Solid solid =
        new Solid(
            List.of(new double[] {0, 0, 0}, new double[] {0.001, 0, 0}, new double[] {0, 0.003, 0}),
            List.of(new int[] {0, 1, 2}));
    byte[] bytes = StlWriter.bytes(solid, "one");
    // One triangle; normal 0 0 1; corners 1 1 1, 2 1 1, 1 4 1 [mm]; no attributes
    String one = "0000803f";
    String expected =
        "01000000"
            + ("00000000" + "00000000" + one)
            + (one + one + one)
            + ("00000040" + one + one)
            + (one + "00008040" + one)
            + "0000";
    assertThat(HexFormat.of().formatHex(bytes, TITLE, bytes.length)).isEqualTo(expected);
    assertThat(new String(bytes, 0, 3, StandardCharsets.US_ASCII)).isEqualTo("one");
    assertThat(Arrays.copyOfRange(bytes, 3, TITLE)).containsOnly(0);
  }

  @Test
  void titleCountAndFiftyBytesEach() {
    int count = word(FILE, TITLE);
    assertThat(count).isPositive();
    assertThat(FILE).hasSize(HEAD + TRIANGLE * count);
    assertThat(new String(FILE, 0, TITLE, StandardCharsets.US_ASCII)).startsWith("a wedge, mm\0");
  }

  @Test
  void normalsAreOfUnitLengthAndFollowTheRightHand() {
    for (int at = HEAD; at < FILE.length; at += TRIANGLE) {
      double[] n = place(FILE, at);
      double[] a = place(FILE, at + 12);
      double[] b = place(FILE, at + 24);
      double[] c = place(FILE, at + 36);
      double[] u = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
      double[] v = {c[0] - a[0], c[1] - a[1], c[2] - a[2]};
      double[] cross = {
        u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]
      };
      double along = n[0] * cross[0] + n[1] * cross[1] + n[2] * cross[2];
      double size = Math.sqrt(cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]);
      assertThat(Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2])).isCloseTo(1, within(SINGLE));
      // Corners are rounded to a part in a million of 80 mm: slim triangles turn a little
      assertThat(along / size).isGreaterThan(0.999);
    }
  }

  @Test
  void coordinatesAreAboveZeroAndAttributesZero() {
    for (int at = HEAD; at < FILE.length; at += TRIANGLE) {
      for (int corner = 12; corner < 48; corner += 12) {
        assertThat(Arrays.stream(place(FILE, at + corner)).min().orElseThrow()).isGreaterThan(0);
      }
      assertThat(FILE[at + 48]).isZero();
      assertThat(FILE[at + 49]).isZero();
    }
  }

  @Test
  void titlesThatReadersWouldMisreadAreRefused() {
    Solid none = new Solid(List.of(), List.of());
    assertThatIllegalArgumentException().isThrownBy(() -> StlWriter.bytes(none, "solid wedge"));
    assertThatIllegalArgumentException().isThrownBy(() -> StlWriter.bytes(none, "x".repeat(81)));
    assertThat(StlWriter.bytes(none, "x".repeat(80))).hasSize(HEAD);
  }
}
