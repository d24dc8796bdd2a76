package trimwright.exchange.write;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.wedge.Solid;

/**
 * A body as a binary STL file, the triangles that printers read. Its sizes are millimetres, which
 * the format has no place to say; the title does.
 *
 * <p>Layout and rules: Burns, M., Automated Fabrication (1993), section 6.5, after the
 * StereoLithography Interface Specification of October 1989: a title of 80 bytes, the number of
 * triangles in 4, then 50 bytes for each: unit normal and three corners as 32-bit numbers, and two
 * bytes that stay zero. Corners run counter-clockwise seen from outside, neighbours share whole
 * edges, all coordinates are above zero. Little-endian, as all readers have it.
 */
public final class StlWriter {
  /** Bytes of the title. */
  private static final int TITLE = 80;

  /** Bytes before the first triangle. */
  private static final int HEAD = 84;

  /** Bytes per triangle. */
  private static final int TRIANGLE = 50;

  /** Where the body's least coordinates lie: above zero, as the rules ask [mm]. */
  private static final double LEAST = 1;

  private StlWriter() {}

  /**
   * The file.
   *
   * @param solid the body
   * @param title in ASCII, at most 80 characters; not beginning with "solid", by which readers know
   *     the text form of the format
   * @return all its bytes
   * @throws IllegalArgumentException if the title is none
   */
  public static byte[] bytes(Solid solid, String title) {
    byte[] text = title.getBytes(StandardCharsets.US_ASCII);
    if (text.length > TITLE || title.startsWith("solid")) {
      throw new IllegalArgumentException(
          "a title has at most 80 characters and does not begin with solid, was " + title);
    }
    float[][] corners = corners(solid);
    ByteBuffer out =
        ByteBuffer.allocate(HEAD + TRIANGLE * solid.triangleCount()).order(ByteOrder.LITTLE_ENDIAN);
    out.put(Arrays.copyOf(text, TITLE)).putInt(solid.triangleCount());
    for (int i = 0; i < solid.triangleCount(); i++) {
      double[] area = solid.area(i);
      double size = Math.hypot(Math.hypot(area[0], area[1]), area[2]);
      for (double part : area) {
        out.putFloat((float) (size > 0 ? part / size : 0));
      }
      for (int corner : solid.triangle(i)) {
        for (float coordinate : corners[corner]) {
          out.putFloat(coordinate);
        }
      }
      out.putShort((short) 0);
    }
    return out.array();
  }

  private static float[][] corners(Solid solid) {
    double[] least = new double[3];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < solid.cornerCount(); i++) {
      for (int k = 0; k < 3; k++) {
        least[k] = Math.min(least[k], solid.corner(i)[k]);
      }
    }
    float[][] corners = new float[solid.cornerCount()][3];
    for (int i = 0; i < corners.length; i++) {
      double[] at = solid.corner(i);
      for (int k = 0; k < 3; k++) {
        corners[i][k] = (float) (Unit.MILLIMETRE.fromSi(at[k] - least[k]) + LEAST);
      }
    }
    return corners;
  }
}
