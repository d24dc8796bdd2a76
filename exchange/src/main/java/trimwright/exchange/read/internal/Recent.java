package trimwright.exchange.read.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Values that are costly to make, kept by what they are made from; the one longest unused goes when
 * there are too many. Safe for several threads, as long as the values are immutable: they are
 * handed to every thread that asks.
 *
 * @param <K> what a value is made from, with equality by content
 * @param <V> the value
 */
public final class Recent<K, V> {
  private final Map<K, V> kept;

  /**
   * An empty store.
   *
   * @param most how many values are kept at most
   */
  public Recent(int most) {
    kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The value for a key, made if it is not there. It is made outside the lock: threads that ask for
   * the same new value at the same time may both make it, and one of the two is kept. Where making
   * it throws, nothing is kept.
   *
   * @param key what it is made from
   * @param maker makes it
   * @return the kept value
   */
  public V get(K key, Supplier<V> maker) {
    return find(key).orElseGet(() -> keep(key, maker.get()));
  }

  /** The value for a key, where it is kept. */
  public Optional<V> find(K key) {
    synchronized (kept) {
      return Optional.ofNullable(kept.get(key));
    }
  }

  /**
   * Keeps a value, unless there is one for the key.
   *
   * @return the one that is kept
   */
  public V keep(K key, V made) {
    synchronized (kept) {
      V other = kept.putIfAbsent(key, made);
      return other == null ? made : other;
    }
  }

  /** How many values are kept now. */
  public int size() {
    synchronized (kept) {
      return kept.size();
    }
  }
}
