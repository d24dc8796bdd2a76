package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.stock.StockSetup;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.trim.SurfaceTables;

/**
 * Finds the setups that suit a rider best. The screen's order holds for all wishes but manners,
 * which tables do not know and which can only make a shortfall larger; so setups are looked at by
 * the full solution in that order until the next one could not be among the best any more.
 */
public final class MatchSearch {
  /** Setups of one pair of wings that are looked at before the pair is given up. */
  private static final int TRIES = 3;

  private final Screen screen;
  private final SurfaceTables tables;
  private final Function<StockSetup, Envelope.Ratings> ratings;
  private final double waterTemperature;
  private final Workers workers;
  private final Progress progress;

  /**
   * A search.
   *
   * @param screen over the stock
   * @param tables where tables of lifting surfaces come from; asked by several threads
   * @param ratings makers' ratings of a setup's parts
   * @param waterTemperature of the water [K]
   * @param workers who works
   * @param progress told how far it is
   */
  public MatchSearch(
      Screen screen,
      SurfaceTables tables,
      Function<StockSetup, Envelope.Ratings> ratings,
      double waterTemperature,
      Workers workers,
      Progress progress) {
    this.screen = screen;
    this.tables = tables;
    this.ratings = ratings;
    this.waterTemperature = waterTemperature;
    this.workers = workers;
    this.progress = progress;
  }

  /**
   * How much is looked at.
   *
   * @param rows how many are shown at most
   * @param looks how many setups are solved in full at most
   */
  public record Size(int rows, int looks) {
    /** Enough to choose from. */
    public static final Size USUAL = new Size(8, 32);
  }

  /**
   * The best setups.
   *
   * @param size how much is looked at
   * @param one the first wish of the trade-off, one that tables know
   * @param other the second
   * @param variations the same rider otherwise
   * @param own names of the parts of the rider's own setup: of equally good ones that comes first
   *     which changes the fewest
   * @return the best, why the others fell out, and the trade-off
   * @throws CancellationException if it was stopped
   */
  public MatchResult find(
      Size size, Wish one, Wish other, List<Variation> variations, Set<String> own) {
    RideAsked asked = screen.judge().asked();
    BestFinds finds =
        BestFinds.together(
            screen.run(() -> new BestFinds(one, other, asked.wishes(), own), workers, progress));
    Confirmed confirmed = confirm(finds.list(), size);
    List<MatchResult.Fallen> best = confirmed.passed;
    return new MatchResult(
        asked,
        finds.tally(),
        rows(best, variations),
        confirmed.fallen,
        confirmed.looked,
        confirmed.sure,
        List.of(one, other),
        finds.front().points());
  }

  private static final class Confirmed {
    final List<MatchResult.Fallen> passed = new ArrayList<>();
    final List<MatchResult.Fallen> fallen = new ArrayList<>();
    int looked;
    boolean sure;
  }

  private double shortfall(Judged judged) {
    return screen.judge().asked().wishes().shortfall(judged.values());
  }

  private static String pair(Candidate candidate) {
    return candidate.foil().frontWing().id() + ' ' + candidate.foil().stabilizer().id();
  }

  private Confirmed confirm(List<Candidate> list, Size size) {
    Confirmed all = new Confirmed();
    Map<String, Integer> tries = new HashMap<>();
    int next = 0;
    Comparator<MatchResult.Fallen> order =
        Comparator.<MatchResult.Fallen>comparingDouble(f -> shortfall(f.judged()))
            .thenComparing(MatchResult.Fallen::candidate, Candidate.ORDER);
    while (true) {
      List<Candidate> batch = new ArrayList<>();
      double last =
          all.passed.size() < size.rows
              ? Double.POSITIVE_INFINITY
              : shortfall(all.passed.get(size.rows - 1).judged());
      boolean beyond = false;
      while (next < list.size() && batch.size() < workers.threads() && !beyond) {
        Candidate candidate = list.get(next);
        beyond = candidate.placement().shortfall() >= last;
        if (!beyond) {
          next++;
          // Two of one pair in a batch would be looked at without need.
          String pair = pair(candidate);
          if (tries.getOrDefault(pair, 0) < TRIES) {
            boolean waits = batch.stream().anyMatch(c -> pair(c).equals(pair));
            if (waits) {
              next--;
              break;
            }
            batch.add(candidate);
          }
        }
      }
      int room = size.looks - all.looked;
      if (batch.isEmpty() || room <= 0) {
        all.sure = batch.isEmpty();
        break;
      }
      batch = batch.subList(0, Math.min(room, batch.size()));
      List<Judged> judged = judge(batch);
      all.looked += batch.size();
      progress.at(Progress.Stage.CONFIRM, all.looked, size.looks);
      for (int i = 0; i < batch.size(); i++) {
        MatchResult.Fallen seen = new MatchResult.Fallen(batch.get(i), judged.get(i));
        if (judged.get(i).passes()) {
          all.passed.add(seen);
          tries.put(pair(batch.get(i)), TRIES);
        } else {
          all.fallen.add(seen);
          tries.merge(pair(batch.get(i)), 1, Integer::sum);
        }
      }
      all.passed.sort(order);
    }
    while (all.passed.size() > size.rows) {
      all.passed.remove(all.passed.size() - 1);
    }
    return all;
  }

  private List<Judged> judge(List<Candidate> batch) {
    FullJudge judge = new FullJudge(screen.judge().asked(), tables);
    Judged[] judged = new Judged[batch.size()];
    List<Runnable> tasks = new ArrayList<>();
    for (int i = 0; i < judged.length; i++) {
      int index = i;
      tasks.add(
          () -> {
            Candidate c = batch.get(index);
            judged[index] =
                judge.whole(
                    judge.asked().on(c.setup().setup(waterTemperature), c.placement().feet()),
                    ratings.apply(c.setup()),
                    progress::isStopped);
          });
    }
    workers.run(tasks);
    return List.of(judged);
  }

  private List<MatchRow> rows(List<MatchResult.Fallen> best, List<Variation> variations) {
    RowBand[] bands = new RowBand[best.size()];
    List<List<Varied>> varied = new ArrayList<>();
    best.forEach(row -> varied.add(new ArrayList<>()));
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    Runnable task =
        () -> {
          for (int i = next.getAndIncrement(); i < bands.length; i = next.getAndIncrement()) {
            bands[i] = band(best.get(i));
            for (Variation variation : variations) {
              varied.get(i).add(vary(best.get(i), variation));
            }
            progress.at(Progress.Stage.ROBUST, done.incrementAndGet(), bands.length);
          }
        };
    List<Runnable> tasks = new ArrayList<>();
    for (int i = 0; i < Math.min(workers.threads(), best.size()); i++) {
      tasks.add(task);
    }
    if (!tasks.isEmpty()) {
      workers.run(tasks);
    }
    List<MatchRow> rows = new ArrayList<>();
    for (int i = 0; i < bands.length; i++) {
      rows.add(row(best, bands, i, varied.get(i)));
    }
    return rows;
  }

  private RowBand band(MatchResult.Fallen row) {
    return RowBand.find(
            row.candidate().setup(), row.judged().rideCase(), tables, progress::isStopped)
        .orElseThrow(() -> new CancellationException("stopped"));
  }

  private MatchRow row(
      List<MatchResult.Fallen> best, RowBand[] bands, int index, List<Varied> varied) {
    Wishes wishes = screen.judge().asked().wishes();
    Judged mine = best.get(index).judged();
    double shortfall = shortfall(mine);
    int rank = 1;
    List<Integer> ties = new ArrayList<>();
    for (int i = 0; i < bands.length; i++) {
      if (i != index) {
        Judged others = best.get(i).judged();
        double apart = bands[index].apart(mine, bands[i], others, wishes);
        double behind = shortfall - shortfall(others);
        if (Math.abs(behind) <= apart) {
          ties.add(i);
        } else if (behind > 0) {
          rank++;
        }
      }
    }
    return new MatchRow(
        rank,
        ties,
        best.get(index).candidate(),
        mine,
        shortfall,
        bands[index].reach(mine, wishes),
        varied);
  }

  private Varied vary(MatchResult.Fallen row, Variation variation) {
    if (progress.isStopped()) {
      throw new CancellationException("stopped");
    }
    Candidate c = row.candidate();
    RideAsked asked = variation.asked();
    FullJudge judge = new FullJudge(asked, tables);
    Judged judged =
        judge.ride(asked.on(c.setup().setup(variation.waterTemperature()), c.placement().feet()));
    // Manners are taken as they were: they take tables of motion of their own.
    WishValues values = judged.values().with(Wish.MANNERS, row.judged().values().of(Wish.MANNERS));
    boolean lost = !values.has(Wish.LEVEL) || !values.has(Wish.FEET);
    return new Varied(
        variation.name(),
        lost ? Double.POSITIVE_INFINITY : asked.wishes().shortfall(values),
        judged.grounds());
  }
}
