package trimwright.exchange.read;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.wedge.Solid;

/**
 * Reads what {@link trimwright.exchange.write.StlWriter} writes, to check what stands in the file
 * rather than what was meant. Corners are one where all bits of their coordinates agree.
 */
public final class StlReader {
  private static final int COUNT_AT = 80;
  private static final int HEAD = 84;
  private static final int TRIANGLE = 50;

  /** Bytes of a normal: three 32-bit numbers. */
  private static final int NORMAL = 12;

  private StlReader() {}

  /**
   * The body in a binary STL file of millimetres.
   *
   * @param bytes the whole file
   * @return its triangles, normals left out
   * @throws IllegalArgumentException if the bytes are no such file
   */
  public static Solid read(byte[] bytes) {
    if (bytes.length < HEAD) {
      throw new IllegalArgumentException("a binary STL file has at least 84 bytes");
    }
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    long count = Integer.toUnsignedLong(in.getInt(COUNT_AT));
    if (bytes.length != HEAD + TRIANGLE * count) {
      throw new IllegalArgumentException(
          count + " triangles need " + (HEAD + TRIANGLE * count) + " bytes, was " + bytes.length);
    }
    Map<List<Float>, Integer> known = new HashMap<>();
    List<double[]> corners = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      in.position(HEAD + i * TRIANGLE + NORMAL);
      int[] triangle = new int[3];
      for (int k = 0; k < 3; k++) {
        List<Float> at = List.of(in.getFloat(), in.getFloat(), in.getFloat());
        triangle[k] = known.computeIfAbsent(at, place -> known.size());
        if (triangle[k] == corners.size()) {
          corners.add(at.stream().mapToDouble(mm -> Unit.MILLIMETRE.toSi(mm)).toArray());
        }
      }
      triangles.add(triangle);
    }
    return new Solid(corners, triangles);
  }
}
