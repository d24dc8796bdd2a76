package trimwright.web.bench;

import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.unit.Measures;

/**
 * Asks the shop questions that nobody else asked, once the first page is out. The Java runtime
 * compiles what runs often; until it has, a slider's answer takes several times as long, and the
 * person at the slider need not be the one who waits for that. The answers are thrown away.
 *
 * <p>It is bounded in number and in time, rests as long as it works, and gives way to whoever
 * really asks.
 */
final class Practice {
  private static final Logger LOG = LoggerFactory.getLogger(Practice.class);

  /** The number that its questions bear, so that they do not count as asked by anyone. */
  static final long SEQUENCE = -1;

  /** After that many an answer takes about as long as it ever will; measured. */
  private static final int QUESTIONS = 1200;

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
  private final Future<URI> shop;

  /**
   * Practice in a shop.
   *
   * @param answers tells when a page has been opened and when it is quiet
   * @param shop its address, once it is open
   */
  Practice(BenchAnswers answers, Future<URI> shop) {
    this.answers = answers;
    this.shop = shop;
  }

  /** Goes through all of it on the calling thread, once the first page has been asked for. */
  void go(Map<String, String> fields) {
    Thread.currentThread().setPriority(Thread.MIN_PRIORITY);
    try {
      answers.awaitOpened();
      Thread.sleep(BEFORE.toMillis());
      OwnVisitor visitor = new OwnVisitor(shop.get());
      long end = System.nanoTime() + LONGEST.toNanos();
      int asked = 0;
      while (asked < QUESTIONS && System.nanoTime() < end) {
        if (answers.isQuiet(QUIET)) {
          long from = System.nanoTime();
          visitor.ask(question(fields, asked++));
          Thread.sleep(Duration.ofNanos(System.nanoTime() - from).toMillis());
        } else {
          Thread.sleep(QUIET.toMillis());
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException | ExecutionException | CancellationException e) {
      LOG.debug("no more practice: the shop has been closed", e);
    }
  }

  private static byte[] question(Map<String, String> fields, int i) {
    Move move = MOVES.get(i % MOVES.size());
    double by = move.step() * (1 + i / MOVES.size() % STEPS);
    Map<String, String> moved = new TreeMap<>(fields);
    moved.merge(move.path(), Double.toString(by), (was, step) -> added(was, by));
    return BenchRequest.question(SEQUENCE, Measures.METRIC, moved);
  }

  private static String added(String was, double by) {
    return Double.toString(Double.parseDouble(was) + by);
  }
}
