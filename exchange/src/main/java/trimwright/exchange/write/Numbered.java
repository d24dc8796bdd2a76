package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Things that stand once in a document and are pointed at by number, because they recur at speed
 * after speed.
 *
 * @param <T> has equality of value
 */
final class Numbered<T> {
  private final Map<T, Integer> numbers = new HashMap<>();
  private final List<T> all = new ArrayList<>();

  /** The thing's number, from 0; the same for equal things. */
  int of(T thing) {
    return numbers.computeIfAbsent(
        thing,
        added -> {
          all.add(added);
          return all.size() - 1;
        });
  }

  /** All of them by number. */
  List<T> all() {
    return all;
  }
}
