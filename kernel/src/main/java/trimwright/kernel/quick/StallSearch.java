package trimwright.kernel.quick;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a pair's strips stall over pitch, from what they have left at the nodes solved. One object
 * per speed and shim.
 */
final class StallSearch {
  /** Pitches no stall is looked for beyond [rad]. Chosen. */
  private static final double FURTHEST = 1;

  private final double[] pitches;
  private final List<double[]> rooms = new ArrayList<>();
  private double stalledFrom = Double.POSITIVE_INFINITY;

  StallSearch(double[] pitches) {
    this.pitches = pitches;
  }

  /** What strips have left at the next pitch: nose up of each wing, then nose down of each. */
  void add(double[] room) {
    if (room[0] < 0 && stalledFrom == Double.POSITIVE_INFINITY) {
      stalledFrom = pitches[rooms.size()];
    }
    rooms.add(room);
  }

  /** First pitch solved at which the front wing was past its first stall [rad]. */
  double stalledFrom() {
    return stalledFrom;
  }

  /** Pitch of the first stall nose up of either wing [rad]. */
  double highest() {
    int wings = rooms.get(0).length / 2;
    double least = FURTHEST;
    for (int w = 0; w < wings; w++) {
      least = Math.min(least, rising(w));
    }
    return least;
  }

  /** Where a wing's room nose up ends: a line goes on from either end of what was solved. */
  private double rising(int w) {
    int last = rooms.size() - 1;
    int i = 1;
    while (i < last && rooms.get(i)[w] > 0) {
      i++;
    }
    return Math.max(-FURTHEST, Math.min(FURTHEST, root(w, i - 1, i)));
  }

  /** Pitch below which a strip of either wing is stalled nose down [rad]. */
  double lowest() {
    int wings = rooms.get(0).length / 2;
    double most = -FURTHEST;
    for (int w = 0; w < wings; w++) {
      int i = 0;
      while (i < rooms.size() - 2 && rooms.get(i + 1)[wings + w] < 0) {
        i++;
      }
      most = Math.max(most, Math.min(FURTHEST, root(wings + w, i, i + 1)));
    }
    return most;
  }

  private double root(int column, int a, int b) {
    double atA = rooms.get(a)[column];
    double atB = rooms.get(b)[column];
    double share = atA == atB ? Double.POSITIVE_INFINITY : atA / (atA - atB);
    if (!Double.isFinite(share)) {
      return column < rooms.get(0).length / 2 ? FURTHEST : -FURTHEST;
    }
    return pitches[a] + share * (pitches[b] - pitches[a]);
  }
}
