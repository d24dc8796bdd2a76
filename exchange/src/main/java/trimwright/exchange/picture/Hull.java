package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The convex hull of places (monotone chain by Andrew, 1979). */
final class Hull {
  private Hull() {}

  static List<Spot> of(List<Spot> spots) {
    List<Spot> sorted = new ArrayList<>(spots);
    sorted.sort(Comparator.comparingDouble(Spot::ahead).thenComparingDouble(Spot::above));
    List<Spot> hull = chain(sorted);
    java.util.Collections.reverse(sorted);
    hull.addAll(chain(sorted));
    return hull;
  }

  private static List<Spot> chain(List<Spot> sorted) {
    List<Spot> chain = new ArrayList<>();
    for (Spot next : sorted) {
      while (chain.size() >= 2
          && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), next) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(next);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  private static double turn(Spot a, Spot b, Spot c) {
    return (b.ahead() - a.ahead()) * (c.above() - a.above())
        - (b.above() - a.above()) * (c.ahead() - a.ahead());
  }
}
