package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.words.MannersAt;
import trimwright.exchange.words.MotionWords;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.ChopAnswer;
import trimwright.kernel.motion.Hold;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.trim.CaseSolver;

/**
 * The page of manners shows what the program computes, and what its text says holds. With {@code
 * -Dtrimwright.write.documents=true} its tables are written anew; read the page's text after that.
 */
class MannersPageTest {
  private static final Path PAGE = Path.of("..", "docs", "manners.md");
  private static final String BEGINNER = "heavy-beginner";
  private static final double SLOW = 16 / 3.6;
  private static final double FAST = 32 / 3.6;

  /** Speed of the variations. */
  private static final double SPEED = 21 / 3.6;

  /** The case's own ramp of the throttle [s]. */
  private static final double RAMP = 0.8;

  private static final String SMALLER = "stabilizer 30 % smaller";
  private static final String LARGER = "stabilizer 30 % larger";
  private static final String SHORTER = "fuselage 100 mm shorter";
  private static final String LONGER = "fuselage 200 mm longer";
  private static final String HIGHER = "rides 100 mm higher";
  private static final String LIGHTER = "rider 25 kg lighter";
  private static final String AS_IT_IS = "as it is";

  /** Old and new text in turn, by the change's name. */
  private static final Map<String, List<String>> CHANGES = changes();

  /** The same for falls. */
  private static final Map<String, List<String>> FALLS = falls();

  @TempDir private Path cache;

  private static Map<String, List<String>> changes() {
    Map<String, List<String>> changes = new LinkedHashMap<>();
    changes.put(AS_IT_IS, List.of());
    changes.put(SMALLER, stabilizer(294, 402, 92, 42, 17));
    changes.put(LARGER, stabilizer(546, 547, 125, 57, 23));
    changes.put(SHORTER, fuselage(780, 480));
    changes.put(LONGER, fuselage(1080, 780));
    changes.put(HIGHER, List.of("mast_immersion_mm: 420", "mast_immersion_mm: 320"));
    changes.put(LIGHTER, List.of("  mass_kg: 105", "  mass_kg: 80"));
    return changes;
  }

  private static Map<String, List<String>> falls() {
    Map<String, List<String>> changes = new LinkedHashMap<>();
    String immersion = "mast_immersion_mm: 420";
    String deeper = "mast_immersion_mm: 550";
    String mast = "    length_mm: 700";
    String longer = "    length_mm: 900";
    changes.put("falls as it is", List.of());
    changes.put(
        "falls with the feet 270 mm apart",
        List.of(
            "front_foot_mm: 505", "front_foot_mm: 375", "back_foot_mm: -35", "back_foot_mm: 105"));
    changes.put("falls riding 100 mm higher", List.of(immersion, "mast_immersion_mm: 320"));
    changes.put("falls riding 130 mm deeper", List.of(immersion, deeper));
    changes.put("falls with a mast 200 mm longer, as deep", List.of(mast, longer));
    changes.put(
        "falls with a mast 200 mm longer, 130 mm deeper", List.of(mast, longer, immersion, deeper));
    changes.put("falls with a fuselage 200 mm longer", fuselage(1080, 780));
    List<String> all = new ArrayList<>(changes.get("falls with the feet 270 mm apart"));
    all.addAll(changes.get("falls with a mast 200 mm longer, 130 mm deeper"));
    all.addAll(fuselage(1080, 780));
    all.addAll(stabilizer(546, 547, 125, 57, 23));
    changes.put("falls with mast, fuselage and feet so, stabilizer 30 % larger", all);
    return changes;
  }

  private static List<String> stabilizer(int area, int span, int root, int tip, int sweep) {
    return List.of(
        "area_cm2: 420",
        "area_cm2: " + area,
        "span_mm: 480",
        "span_mm: " + span,
        "root_chord_mm: 110",
        "root_chord_mm: " + root,
        "tip_chord_mm: 50",
        "tip_chord_mm: " + tip,
        "sweep_mm: 20",
        "sweep_mm: " + sweep);
  }

  private static List<String> fuselage(int length, int stabilizer) {
    return List.of(
        "    length_mm: 880",
        "    length_mm: " + length,
        "stabilizer_behind_mast_mm: 580",
        "stabilizer_behind_mast_mm: " + stabilizer);
  }

  /** Manners at the slow speed, at the wished one and at the fast one. */
  private record Ridden(Manners slow, Manners wished, Manners fast) {}

  /** Both margins standing, and lying with the gentlest remote. */
  private record Fallen(FallPoint standing, FallPoint prone) {}

  @Test
  void thePageIsUpToDate() throws IOException {
    Map<String, String> rows = new LinkedHashMap<>();
    Map<String, Ridden> demos = new LinkedHashMap<>();
    for (DemoCase demo : DemoCases.list()) {
      Ridden ridden = ridden(layered(demo.text()));
      demos.put(demo.id(), ridden);
      rows.put(demo.id(), demoRow(ridden));
      rows.put(demo.id() + ", in chop", chopRow(ridden.wished().chop().orElseThrow()));
    }
    String beginner = DemoCases.find(BEGINNER).orElseThrow().text();
    Map<String, Manners> changed = new LinkedHashMap<>();
    CHANGES.forEach(
        (name, change) -> {
          CaseSolver solver = CaseSolver.of(changed(beginner, change).rideCase());
          Manners manners = MotionModel.small(solver).findManners(SPEED).orElseThrow();
          changed.put(name, manners);
          rows.put(
              name,
              cells(
                  two(Unit.DEGREE.fromSi(manners.peakPitchRate())),
                  one(manners.lockedIn().orElseThrow()),
                  doubles(manners),
                  whole(
                      Unit.MILLIMETRE.fromSi(
                          solver.trim(SPEED).findPoint().orElseThrow().staticMargin()))));
        });
    FallSolver falls = solver(beginner, List.of());
    for (Posture posture : Posture.values()) {
      rows.put(posture.name().toLowerCase(Locale.ROOT), fallRow(falls, posture));
    }
    Map<String, Fallen> fallen = new LinkedHashMap<>();
    FALLS.forEach(
        (name, change) -> {
          Fallen both = fallen(solver(beginner, change));
          fallen.put(name, both);
          rows.put(
              name,
              cells(
                  bow(both.standing()),
                  out(both.standing()),
                  bow(both.prone()),
                  out(both.prone())));
        });
    hold(rows);
    demos.values().forEach(MannersPageTest::assertDemo);
    assertPitchiest(demos);
    assertChanges(changed);
    assertFalls(new ArrayList<>(fallen.values()));
  }

  /** No case comes inside, whatever its remote. */
  @Test
  void noDemoCaseComesInside() {
    for (DemoCase demo : DemoCases.list()) {
      FallAnswer answer =
          FallsStudy.find(
                  layered(demo.text()), OptionalDouble.empty(), OptionalDouble.empty(), () -> false)
              .orElseThrow();
      assertThat(answer.study().points()).isNotEmpty();
      assertThat(answer.study().caps()).as(demo.id()).isEmpty();
    }
  }

  private static void hold(Map<String, String> rows) throws IOException {
    List<String> lines = Files.readAllLines(PAGE);
    List<String> met = new ArrayList<>();
    List<String> renewed = new ArrayList<>();
    for (String line : lines) {
      Optional<String> row =
          rows.keySet().stream().filter(name -> line.startsWith("| " + name + " |")).findFirst();
      row.ifPresent(met::add);
      renewed.add(row.map(name -> "| " + name + " | " + rows.get(name)).orElse(line));
    }
    if (Boolean.getBoolean("trimwright.write.documents")) {
      Files.write(PAGE, renewed);
      return;
    }
    assertThat(lines).isEqualTo(renewed);
    assertThat(met).containsExactlyInAnyOrderElementsOf(rows.keySet());
  }

  private static void assertDemo(Ridden demo) {
    assertThat(demo.wished().hold()).isEqualTo(Hold.RIDEABLE);
    assertThat(demo.wished().modes().get(0).mainly()).isNotEqualTo(Mode.Mainly.PITCH);
    assertThat(demo.slow().peakPitchRate()).isGreaterThan(demo.fast().peakPitchRate());
    assertThat(demo.slow().lockedIn().orElseThrow())
        .isGreaterThan(demo.fast().lockedIn().orElseThrow());
    assertThat(demo.wished().chop().orElseThrow().frequency()).isGreaterThan(ChopAnswer.FOLLOWED);
  }

  private static void assertPitchiest(Map<String, Ridden> demos) {
    Ridden carver = demos.get("light-carver");
    demos.forEach(
        (id, other) -> {
          assertThat(carver.slow().peakPitchRate())
              .isGreaterThanOrEqualTo(other.slow().peakPitchRate());
          assertThat(carver.fast().peakPitchRate())
              .isGreaterThanOrEqualTo(other.fast().peakPitchRate());
        });
    assertThat(carver.wished().peakPitchRate())
        .isLessThan(demos.get(BEGINNER).wished().peakPitchRate());
  }

  private static void assertChanges(Map<String, Manners> changed) {
    Manners asItIs = changed.get(AS_IT_IS);
    for (String calm : List.of(LARGER, LONGER)) {
      assertThat(changed.get(calm).peakPitchRate()).isLessThan(0.9 * asItIs.peakPitchRate());
      assertThat(locked(changed.get(calm))).isGreaterThan(locked(asItIs));
      assertThat(growth(changed.get(calm))).isLessThan(growth(asItIs));
    }
    for (String quick : List.of(SMALLER, SHORTER)) {
      assertThat(changed.get(quick).peakPitchRate()).isGreaterThan(1.1 * asItIs.peakPitchRate());
      assertThat(locked(changed.get(quick))).isLessThan(locked(asItIs));
      assertThat(growth(changed.get(quick))).isGreaterThan(growth(asItIs));
    }
    assertThat(changed.get(LIGHTER).peakPitchRate()).isLessThan(asItIs.peakPitchRate());
    assertThat(changed.get(HIGHER).peakPitchRate() / asItIs.peakPitchRate()).isBetween(0.97, 1.03);
    assertThat(locked(changed.get(HIGHER))).isGreaterThan(locked(asItIs));
  }

  private static double locked(Manners manners) {
    return manners.lockedIn().orElseThrow();
  }

  private static double growth(Manners manners) {
    return manners.modes().get(0).growth();
  }

  /** In the order of the table. */
  private static void assertFalls(List<Fallen> falls) {
    FallPoint asItIs = falls.get(0).standing();
    FallPoint feet = falls.get(1).standing();
    FallPoint higher = falls.get(2).standing();
    FallPoint deeper = falls.get(3).standing();
    FallPoint mast = falls.get(5).standing();
    for (FallPoint longer : List.of(feet, mast)) {
      assertThat(longer.noseDrop().bowClearFor()).isGreaterThan(asItIs.noseDrop().bowClearFor());
      assertThat(longer.breach().margin()).isGreaterThan(asItIs.breach().margin());
    }
    Fallen all = falls.get(falls.size() - 1);
    assertThat(all.prone().noseDrop().bowClearFor()).isInfinite();
    assertThat(all.prone().breach().margin()).isLessThan(1.5);
    assertThat(all.prone().breach().margin())
        .isGreaterThan(falls.get(0).prone().breach().margin() + 0.4);
    assertThat(higher.noseDrop().bowClearFor()).isGreaterThan(asItIs.noseDrop().bowClearFor());
    assertThat(higher.breach().margin()).isLessThan(asItIs.breach().margin());
    assertThat(deeper.noseDrop().bowClearFor()).isLessThan(asItIs.noseDrop().bowClearFor());
    assertThat(deeper.breach().margin()).isGreaterThan(asItIs.breach().margin());
  }

  private CaseFile layered(String text) {
    CaseFile read = CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
    // The made-up cases' polars come with the program: nothing is built.
    return LayeredCase.find(read, new SectionPolars(Optional.of(cache))).orElseThrow();
  }

  private CaseFile changed(String text, List<String> change) {
    String changed = text;
    for (int i = 0; i < change.size(); i += 2) {
      assertThat(changed).containsOnlyOnce(change.get(i));
      changed = changed.replace(change.get(i), change.get(i + 1));
    }
    return layered(changed);
  }

  private static Ridden ridden(CaseFile file) {
    MotionModel model = MotionModel.small(CaseSolver.of(file.rideCase()));
    return new Ridden(
        model.findManners(SLOW).orElseThrow(),
        model.findManners(file.rideCase().rider().wishedSpeed()).orElseThrow(),
        model.findManners(FAST).orElseThrow());
  }

  private static String demoRow(Ridden r) {
    return cells(
        whole(Unit.KILOMETRE_PER_HOUR.fromSi(r.wished().speed())),
        MotionWords.brief(r.wished().hold()),
        doubles(r.wished()),
        MotionWords.of(r.wished().modes().get(0).mainly()),
        rate(r.slow()) + ", " + rate(r.wished()) + ", " + rate(r.fast()),
        one(locked(r.slow())) + ", " + one(locked(r.wished())) + ", " + one(locked(r.fast())));
  }

  private static String chopRow(ChopAnswer chop) {
    return cells(
        whole(Unit.CENTIMETRE.fromSi(chop.height())),
        one(chop.frequency()),
        whole(Unit.MILLIMETRE.fromSi(chop.footCorrection())),
        two(chop.acceleration()));
  }

  private FallSolver solver(String text, List<String> change) {
    return new FallSolver(MotionModel.large(CaseSolver.of(changed(text, change).rideCase())));
  }

  private static String fallRow(FallSolver falls, Posture posture) {
    MotionTrim trim = falls.findTrim(SPEED).orElseThrow();
    FallPoint asItIs = falls.at(trim, posture, new FallDrive(RAMP, OptionalDouble.empty()));
    FallPoint gentle = falls.at(trim, posture, gentlest(falls, trim));
    return cells(
        one(Unit.DEGREE.fromSi(asItIs.noseDrop().lowestPitch())),
        bow(asItIs),
        out(asItIs),
        bow(gentle),
        out(gentle));
  }

  private static FallDrive gentlest(FallSolver falls, MotionTrim trim) {
    return new FallDrive(
        FallCaps.SLOWEST_RAMP,
        OptionalDouble.of(
            FallCaps.SPARE_POWER
                * falls
                    .model()
                    .findPowertrain()
                    .orElseThrow()
                    .electricPower(trim.thrust(), trim.speed())));
  }

  private static Fallen fallen(FallSolver falls) {
    MotionTrim trim = falls.findTrim(SPEED).orElseThrow();
    return new Fallen(
        falls.at(trim, Posture.STANDING, new FallDrive(RAMP, OptionalDouble.empty())),
        falls.at(trim, Posture.PRONE, gentlest(falls, trim)));
  }

  private static String bow(FallPoint point) {
    double time = point.noseDrop().bowClearFor();
    return Double.isFinite(time) ? two(time) : "stays clear";
  }

  private static String out(FallPoint point) {
    double time = point.breach().margin();
    return Double.isFinite(time) ? two(time) : "nothing does";
  }

  private static String doubles(Manners manners) {
    return MannersAt.growing(manners)
        .map(mode -> one(mode.timeToDouble().orElseThrow()))
        .orElse("does not");
  }

  private static String rate(Manners manners) {
    return two(Unit.DEGREE.fromSi(manners.peakPitchRate()));
  }

  private static String cells(String... cells) {
    return String.join(" | ", cells) + " |";
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
