package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;

/** Whatever the schema lets through, the computation answers with finite numbers. */
class AcceptedCasePropertyTest {
  private static final int SOME = 200;
  private static final int MANY = 5_000;

  @Test
  void theSolverAnswersSomeAcceptedCases() {
    solve(0, SOME);
  }

  @Test
  @Tag("long")
  void theSolverAnswersManyAcceptedCases() {
    solve(SOME, SOME + MANY);
  }

  private static void solve(int from, int to) {
    List<Double> speeds = new ArrayList<>();
    for (double kmh : new double[] {2, 8, 14, 20, 27, 35, 50, 80}) {
      speeds.add(Unit.KILOMETRE_PER_HOUR.toSi(kmh));
    }
    List<String> failures = new ArrayList<>();
    int flying = 0;
    for (int seed = from; seed < to; seed++) {
      String text = SchemaCaseGenerator.text(seed);
      Reading<CaseFile> reading = CaseReader.read(text, SectionFiles.NONE);
      assertThat(reading.problems()).as("seed %d: %s", seed, text).isEmpty();
      RideCase ride = reading.findValue().orElseThrow().rideCase();
      try {
        CaseSolver solver = CaseSolver.of(ride);
        Curve curve = solver.curve(speeds);
        requireFinite("curve", curve);
        flying += curve.outcomes().stream().anyMatch(o -> o.findPoint().isPresent()) ? 1 : 0;
        requireFinite(
            "cause", CauseSplit.of(solver, speeds.get(3), OptionalDouble.of(Math.toRadians(2))));
      } catch (RuntimeException e) {
        failures.add("seed " + seed + ": " + e + " at " + e.getStackTrace()[0] + " for " + text);
      }
    }
    assertThat(failures).isEmpty();
    // Otherwise the cases would only show that nothing happens where nothing can fly
    assertThat(flying).isGreaterThan((to - from) / 3);
  }

  /** Walks through records, lists and optionals to every double. */
  private static void requireFinite(String where, Object value) {
    if (value instanceof Double number) {
      if (!Double.isFinite(number)) {
        throw new IllegalStateException(where + " is " + number);
      }
    } else if (value instanceof OptionalDouble number) {
      number.ifPresent(n -> requireFinite(where, n));
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> requireFinite(where, inner));
    } else if (value instanceof Iterable<?> list) {
      list.forEach(element -> requireFinite(where + "[]", element));
    } else if (value instanceof Record record) {
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        try {
          requireFinite(where + "." + part.getName(), part.getAccessor().invoke(record));
        } catch (ReflectiveOperationException e) {
          throw new AssertionError("the records of the kernel are open to everyone", e);
        }
      }
    }
  }
}
