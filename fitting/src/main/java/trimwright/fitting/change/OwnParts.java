package trimwright.fitting.change;

import java.util.Map;
import java.util.Optional;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.TrackedBoard;

/**
 * A stock, and which of its parts the present setup is made of: only of those is it known what they
 * fit.
 *
 * @param stock the stock
 * @param own names of the present setup's parts that the stock has, by kind
 */
public record OwnParts(Stock stock, Map<PartKind, String> own) {
  /** No stock at all. */
  public static final OwnParts NONE =
      new OwnParts(
          new Stock(
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of(),
              java.util.List.of()),
          Map.of());

  /** Copies the map. */
  public OwnParts {
    own = Map.copyOf(own);
  }

  /** The present part of a kind, where the stock has it. */
  Optional<StockPart<?>> find(PartKind kind) {
    return Optional.ofNullable(own.get(kind)).map(id -> part(kind, id));
  }

  /** The present board with its track, where the stock has it. */
  Optional<StockPart<TrackedBoard>> findBoard() {
    return stock.boards().stream()
        .filter(part -> part.id().equals(own.get(PartKind.BOARD)))
        .findFirst();
  }

  private StockPart<?> part(PartKind kind, String id) {
    return stock.list(kind).stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the stock has no " + kind + " " + id));
  }
}
