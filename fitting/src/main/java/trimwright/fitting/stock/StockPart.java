package trimwright.fitting.stock;

import java.util.Objects;

/**
 * A part of a stock.
 *
 * @param id its name, unlike that of every other part of the stock
 * @param piece what the computation needs of it
 * @param mounts what it fits
 * @param holding how many there are, in which state
 * @param <P> the kind of piece
 */
public record StockPart<P>(String id, P piece, Mounts mounts, Holding holding) {
  /** Checks that everything is there. */
  public StockPart {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(mounts, "mounts");
    Objects.requireNonNull(holding, "holding");
  }

  /**
   * Whether another part goes onto this one.
   *
   * @param other the other part
   * @param joint where
   */
  public boolean fits(StockPart<?> other, Joint joint) {
    return mounts.fit(other.mounts, joint);
  }
}
