package trimwright.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.reference.topic.Computation;
import trimwright.reference.topic.Conditions;
import trimwright.reference.topic.FreeSurfaceChecks;
import trimwright.reference.topic.LimitChecks;
import trimwright.reference.topic.MotionChecks;
import trimwright.reference.topic.PlaningChecks;
import trimwright.reference.topic.PropellerChecks;
import trimwright.reference.topic.SectionChecks;
import trimwright.reference.topic.StrutChecks;
import trimwright.reference.topic.TailChecks;
import trimwright.reference.topic.ViscousChecks;
import trimwright.reference.topic.WaterChecks;
import trimwright.reference.topic.WaveChecks;
import trimwright.reference.topic.WingChecks;

/** Computes every published value again with the shipped computation. */
public final class CheckRunner {
  private CheckRunner() {}

  /** The published values, topic by topic. */
  public static List<Check> checks() {
    return CheckTable.all();
  }

  /**
   * Every published value beside the computed one, in the order of the tables.
   *
   * @throws IllegalStateException if a row asks for an evaluation that does not exist, leaves one
   *     of its conditions unused, or computes no finite value
   */
  public static List<CheckResult> runAll() {
    Map<String, Computation> computations = computations();
    return checks().stream().map(check -> run(check, computations)).toList();
  }

  private static CheckResult run(Check check, Map<String, Computation> computations) {
    Computation computation = computations.get(check.computation());
    if (computation == null) {
      throw new IllegalStateException(
          "check " + check.id() + " asks for an unknown evaluation: " + check.computation());
    }
    Conditions conditions = new Conditions(check.conditions());
    double computed = computation.compute(conditions);
    // A condition nobody read would be a figure computed for another case than the one stated.
    if (!conditions.unread().isEmpty()) {
      throw new IllegalStateException(
          "check " + check.id() + " states conditions that nothing reads: " + conditions.unread());
    }
    return CheckResult.of(check, computed);
  }

  private static Map<String, Computation> computations() {
    Map<String, Computation> all = new HashMap<>();
    for (Map<String, Computation> topic :
        List.of(
            WaterChecks.computations(),
            SectionChecks.computations(),
            ViscousChecks.computations(),
            WingChecks.computations(),
            FreeSurfaceChecks.computations(),
            TailChecks.computations(),
            StrutChecks.computations(),
            PropellerChecks.computations(),
            PlaningChecks.computations(),
            LimitChecks.computations(),
            WaveChecks.computations(),
            MotionChecks.computations())) {
      topic.forEach(
          (name, computation) -> {
            if (all.put(name, computation) != null) {
              throw new IllegalStateException("two evaluations are called " + name);
            }
          });
    }
    return all;
  }
}
