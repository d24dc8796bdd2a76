package trimwright.fitting.fleet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How well each hardware set fits each rider: the mark of the best card (shim, track, stance,
 * speed) that the rider can be given on it. Marks are shortfalls: 0 is all that was wished, more is
 * worse. NaN stands for hardware on which no card keeps the rider's limits. Immutable.
 */
public final class FitTable {
  private final List<RiderLine> riders;
  private final List<List<String>> hardware;
  private final double[][] marks;

  /**
   * A table.
   *
   * @param riders its lines
   * @param hardware for each set the names of its parts, none twice
   * @param marks for each rider the mark on each set, 0 or more, NaN where it does not fit [1];
   *     copied
   * @throws IllegalArgumentException if two lines have the same name, a set has a part twice, the
   *     marks do not go with riders and hardware, or one is infinite or below 0
   */
  public FitTable(List<RiderLine> riders, List<List<String>> hardware, double[][] marks) {
    this.riders = List.copyOf(riders);
    this.hardware = hardware.stream().map(List::copyOf).toList();
    checkNames();
    if (marks.length != riders.size()) {
      throw new IllegalArgumentException(
          "marks must have a row for each of " + riders.size() + " riders, had " + marks.length);
    }
    this.marks = new double[marks.length][];
    for (int rider = 0; rider < marks.length; rider++) {
      this.marks[rider] = marks[rider].clone();
      check(this.riders.get(rider), this.marks[rider]);
    }
  }

  private void checkNames() {
    Set<String> names = new HashSet<>();
    for (RiderLine rider : riders) {
      if (!names.add(rider.name())) {
        throw new IllegalArgumentException("two riders are called " + rider.name());
      }
    }
    for (List<String> parts : hardware) {
      if (new HashSet<>(parts).size() < parts.size()) {
        throw new IllegalArgumentException("a set has a part twice: " + parts);
      }
    }
  }

  private void check(RiderLine rider, double[] row) {
    if (row.length != hardware.size()) {
      throw new IllegalArgumentException(
          "marks of "
              + rider.name()
              + " must be one for each of "
              + hardware.size()
              + " sets, were "
              + row.length);
    }
    for (double mark : row) {
      if (mark < 0 || Double.isInfinite(mark)) {
        throw new IllegalArgumentException(
            "a mark must be 0 or more, or NaN, was " + mark + " of " + rider.name());
      }
    }
  }

  /** Its lines. */
  public List<RiderLine> riders() {
    return riders;
  }

  /** For each set the names of its parts. */
  public List<List<String>> hardware() {
    return hardware;
  }

  /** All persons of all lines. */
  public int persons() {
    return riders.stream().mapToInt(RiderLine::persons).sum();
  }

  /**
   * The mark of a rider on a set.
   *
   * @return 0 or more, NaN where it does not fit [1]
   */
  public double mark(int rider, int set) {
    return marks[rider][set];
  }

  /** Whether a rider has a card on a set. */
  public boolean fits(int rider, int set) {
    return !Double.isNaN(marks[rider][set]);
  }
}
