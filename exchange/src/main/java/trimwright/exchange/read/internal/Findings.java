package trimwright.exchange.read.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/** The problems of one text as they are found. Not safe for several threads. */
public final class Findings {
  /** More than a person reads at once; the rest is counted. */
  private static final int MOST_SHOWN = 60;

  private final Naming naming;
  private final Function<String, OptionalInt> lines;
  private final List<Finding> problems = new ArrayList<>();
  private final Set<String> bad = new HashSet<>();

  /** Starts with what reading the tree has found. */
  public Findings(YamlTree tree) {
    this(KeyNames.INSTANCE, tree::findLine);
    tree.problems().forEach(this::add);
  }

  /** Starts empty, for a document that has no lines. */
  public Findings(Naming naming) {
    this(naming, path -> OptionalInt.empty());
  }

  private Findings(Naming naming, Function<String, OptionalInt> lines) {
    this.naming = naming;
    this.lines = lines;
  }

  /** How sentences name keys and write values. */
  public Naming naming() {
    return naming;
  }

  /** Adds a problem that knows its line. */
  public void add(Finding problem) {
    problems.add(problem);
    bad.add(problem.key());
  }

  /** Adds a problem; its line is looked up. */
  public void report(String key, String message) {
    add(new Finding(key, lines.apply(key), message));
  }

  /**
   * Adds a contradiction.
   *
   * @param keys the key to look at first, then the others that take part
   * @param message a whole sentence
   */
  public void report(List<String> keys, String message) {
    add(new Finding(keys, lines.apply(keys.get(0)), message));
  }

  /** Paths that have a problem. */
  public Set<String> bad() {
    return Set.copyOf(bad);
  }

  /** Whether nothing was found. */
  public boolean none() {
    return problems.isEmpty();
  }

  /** All problems by line; those beyond what a person reads are counted in a last one. */
  public List<Finding> list() {
    List<Finding> sorted = new ArrayList<>(problems);
    sorted.sort(Comparator.comparingInt((Finding p) -> p.line().orElse(0)));
    if (sorted.size() <= MOST_SHOWN) {
      return sorted;
    }
    int rest = sorted.size() - MOST_SHOWN;
    List<Finding> shown = new ArrayList<>(sorted.subList(0, MOST_SHOWN));
    shown.add(new Finding("", OptionalInt.empty(), "There are " + rest + " more problems."));
    return shown;
  }
}
