package trimwright.exchange.read.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
public final class NearestKey {
  /** Nothing longer is a mistyped key. */
  private static final int LONGEST = 60;

  private NearestKey() {}

  /** The known word nearest to a word, where one is near enough to be meant. */
  public static Optional<String> find(String word, Collection<String> known) {
    if (word.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    Optional<String> begun =
        known.stream()
            .filter(k -> plain.length() >= 4 && k.startsWith(plain + "_"))
            .min(Comparator.naturalOrder());
    if (begun.isPresent()) {
      return begun;
    }
    int near = Math.max(1, plain.length() / 3);
    return known.stream()
        .filter(k -> distance(plain, k.replace('-', '_')) <= near)
        .min(
            Comparator.comparingInt((String k) -> distance(plain, k.replace('-', '_')))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Edits (insert, delete, replace) between two words: Levenshtein (1966), by rows. */
  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int swap = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(swap, Math.min(before[j], now[j - 1]) + 1);
      }
      before = now;
    }
    return before[b.length()];
  }
}
