package trimwright.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.BestFinds;
import trimwright.fitting.match.Progress;
import trimwright.fitting.match.Screen;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Holding;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.Mounts;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockBattery;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.Track;
import trimwright.fitting.stock.TrackedBoard;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.WingSheet;

/**
 * One rider over 60 front wings, 25 stabilizers, 9 shims (none among them), 7 places of the track
 * and 13 speeds: 94,500 setups, on two threads. The tables of the 1,500 pairs are built beforehand,
 * or are what is measured.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class MatchBenchmark {
  private static final int FRONT_WINGS = 60;
  private static final int STABILIZERS = 25;
  private static final double[] SHIMS = {-2, -1.5, -1, -0.5, 0.5, 1, 1.5, 2};
  private static final Workers TWO = new Workers(2, false);
  private static final double TEMPERATURE = 291.15;

  /** Tables in memory, each built when it is first asked for. */
  private static final class Held implements PairTables {
    private final Map<List<Double>, PairTable> tables = new ConcurrentHashMap<>();

    @Override
    public PairTable of(Craft craft) {
      // Chords and areas tell the wings of this stock apart.
      RideCase c = craft.rideCase();
      return tables.computeIfAbsent(
          List.of(
              c.setup().frontWing().shape().area(),
              c.setup().frontWing().shape().span(),
              c.setup().stabilizer().shape().area(),
              c.setup().stabilizer().shape().span()),
          key -> PairTable.of(craft));
    }
  }

  /** The screen with all its tables. */
  @State(Scope.Benchmark)
  public static class WithTables {
    private RideAsked asked;
    private Screen screen;

    /** Builds the tables. */
    @Setup
    public void build() {
      asked = asked();
      screen = screen(asked, new Held());
      look(screen, asked);
    }
  }

  /** The question alone: its tables are still to be built. */
  @State(Scope.Benchmark)
  public static class Without {
    private final RideAsked asked = asked();
  }

  /** The whole screen. */
  @Benchmark
  public BestFinds screenWithTables(WithTables state) {
    return look(state.screen, state.asked);
  }

  /** The same with all tables still to be built: 85 surfaces, 1,500 pairs. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  public BestFinds screenAndBuildTables(Without state) {
    return look(screen(state.asked, new Held()), state.asked);
  }

  private static BestFinds look(Screen screen, RideAsked asked) {
    return BestFinds.together(
        screen.run(
            () -> new BestFinds(Wish.TAKE_OFF, Wish.RANGE, asked.wishes(), Set.of()),
            TWO,
            Progress.NONE));
  }

  private static RideAsked asked() {
    RideCase base = BenchCase.rideCase();
    return new RideAsked(
        base,
        RideSpan.about(base.rider().wishedSpeed()),
        Wishes.of(RidingKind.LINKING),
        RideAsked.USUAL_REACH,
        Posture.STANDING,
        Optional.empty());
  }

  private static Screen screen(RideAsked asked, PairTables tables) {
    return new Screen(
        SetupSpace.of(stock(asked.base()), Propulsion.DRIVEN),
        new QuickJudge(asked),
        TEMPERATURE,
        tables);
  }

  private static Stock stock(RideCase base) {
    trimwright.kernel.rig.Setup s = base.setup();
    Section front = Sections.naca("2412");
    Section back = Sections.naca("0009");
    return new Stock(
        List.of(part(PartKind.BOARD, 0, new TrackedBoard(s.board(), new Track(-0.06, 0.06, 0.02)))),
        List.of(
            part(
                PartKind.BATTERY,
                0,
                new StockBattery(s.battery().orElseThrow(), OptionalDouble.empty()))),
        List.of(part(PartKind.MAST, 0, s.mast())),
        List.of(part(PartKind.DRIVE, 0, s.drive().orElseThrow())),
        List.of(part(PartKind.FUSELAGE, 0, s.fuselage())),
        IntStream.range(0, FRONT_WINGS)
            .mapToObj(
                i ->
                    part(
                        PartKind.FRONT_WING, i, wing(0.09 + 0.002 * i, 4.5 + i % 6, front, 1.5, 0)))
            .toList(),
        IntStream.range(0, STABILIZERS)
            .mapToObj(
                i ->
                    part(
                        PartKind.STABILIZER,
                        i,
                        wing(0.02 + 0.001 * i, 4.5 + i % 4, back, 0.3, Math.toRadians(-2))))
            .toList(),
        IntStream.range(0, SHIMS.length)
            .mapToObj(i -> part(PartKind.SHIM, i, new Shim(Math.toRadians(SHIMS[i]))))
            .toList());
  }

  private static FittedWing wing(
      double area, double aspectRatio, Section section, double mass, double setting) {
    double span = Math.sqrt(area * aspectRatio);
    double root = 1.3 * area / span;
    WingSheet sheet = new WingSheet(area, span, root, 0.4 * root, 0.2 * root, 0.02 * span, 0);
    return new FittedWing(sheet.shape(section), setting, 0, mass, 0.1, 0, Finish.CLEAN);
  }

  private static <P> StockPart<P> part(PartKind kind, int index, P piece) {
    Map<Joint, Set<String>> mounts = new EnumMap<>(Joint.class);
    Joint.of(kind).forEach(joint -> mounts.put(joint, Set.of("one")));
    return new StockPart<>(
        kind + "-" + index,
        piece,
        new Mounts(mounts),
        new Holding(1, PartState.DEMO, OptionalDouble.empty(), KnownBy.SHEET));
  }
}
