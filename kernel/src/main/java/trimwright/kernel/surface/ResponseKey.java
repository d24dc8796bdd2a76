package trimwright.kernel.surface;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The content from which a response is computed, number for number: two equal keys give the same
 * response bit for bit, however the wings were come by. For whoever keeps responses.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class ResponseKey {
  private final double[] content;
  private final int hash;

  private ResponseKey(double[] content) {
    this.content = content;
    hash = Arrays.hashCode(content);
  }

  /**
   * The key of a set of wings.
   *
   * @param wings from the front to the back: geometry, place, division, and of their sections the
   *     zero-lift angle, lift slope and moment at zero lift of every strip
   * @param more whatever else the response is computed from, such as a depth [m]
   * @return the key
   */
  public static ResponseKey of(List<PlacedWing> wings, double... more) {
    DoubleStream.Builder all = DoubleStream.builder();
    for (PlacedWing wing : wings) {
      new Strips(wing).write(all);
    }
    for (double number : more) {
      all.add(number);
    }
    return new ResponseKey(all.build().toArray());
  }

  /** Equal where every number has the same bits. */
  @Override
  public boolean equals(Object other) {
    // Arrays.equals of doubles tells 0.0 from -0.0 and takes a NaN for itself.
    return other instanceof ResponseKey key && Arrays.equals(content, key.content);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
