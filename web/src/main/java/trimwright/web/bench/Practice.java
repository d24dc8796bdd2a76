package trimwright.web.bench;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;

/**
 * Answers questions that nobody asked, once the first page is out. The Java runtime compiles what
 * runs often; until it has, a slider's answer takes several times as long, and the person at the
 * slider need not be the one who waits for that. The answers are thrown away.
 *
 * <p>It is bounded in number and in time, rests as long as it works, and gives way to whoever
 * really asks.
 */
final class Practice {
  /** After that many the compiler has little left to do; measured. */
  private static final int QUESTIONS = 400;

  private static final Duration LONGEST = Duration.ofSeconds(30);

  /** The page's own files are asked for first. */
  private static final Duration BEFORE = Duration.ofMillis(500);

  /** How long nobody must have asked. */
  private static final Duration QUIET = Duration.ofMillis(300);

  /** What moves, and by how much a step [its own unit]: with and without new tables. */
  private static final List<Move> MOVES =
      List.of(
          new Move(ShimTables.PATH, 0.5),
          new Move("rider.mass_kg", 1),
          new Move("setup.mast.base_angle_deg", 0.5),
          new Move("water.wind_kmh", 1),
          new Move("setup.board.track_mm", 5));

  private static final int STEPS = 5;

  private record Move(String path, double step) {}

  private final BenchAnswers answers;

  Practice(BenchAnswers answers) {
    this.answers = answers;
  }

  /** Goes through all of it on the calling thread, once the first page has been asked for. */
  void go(Map<String, String> fields) {
    Thread.currentThread().setPriority(Thread.MIN_PRIORITY);
    try {
      answers.awaitOpened();
      Thread.sleep(BEFORE.toMillis());
      long end = System.nanoTime() + LONGEST.toNanos();
      int asked = 0;
      while (asked < QUESTIONS && System.nanoTime() < end) {
        if (answers.isQuiet(QUIET)) {
          long from = System.nanoTime();
          ask(fields, asked++);
          Thread.sleep(Duration.ofNanos(System.nanoTime() - from).toMillis());
        } else {
          Thread.sleep(QUIET.toMillis());
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void ask(Map<String, String> fields, int i) {
    Move move = MOVES.get(i % MOVES.size());
    double by = move.step() * (1 + i / MOVES.size() % STEPS);
    Map<String, String> moved = new TreeMap<>(fields);
    moved.merge(move.path(), Double.toString(by), (was, step) -> added(was, by));
    CaseDraft.of(moved)
        .read(Measures.METRIC, SectionFiles.NONE)
        .caseFile()
        .ifPresent(caseFile -> Utf8.bytes(answers.unasked(0, Measures.METRIC, caseFile)));
  }

  private static String added(String was, double by) {
    return Double.toString(Double.parseDouble(was) + by);
  }
}
