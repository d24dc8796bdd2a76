package trimwright.fitting.fleet;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A choice for many riders put in whole numbers as its words have it, and solved by the library
 * OR-Tools (SCIP): which sets are there, how many of each part that takes, who rides which set.
 * Nothing of this package's bounds, cuts or reductions is in it.
 */
final class ChoiceProgramme implements AutoCloseable {
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private final FitTable table;
  private final MPSolver solver;
  private final MPVariable[] there;
  private final MPVariable[][] rides;
  private final Map<String, MPVariable> parts = new HashMap<>();

  private ChoiceProgramme(FitTable table) {
    Loader.loadNativeLibraries();
    this.table = table;
    solver = MPSolver.createSolver("SCIP");
    there = solver.makeBoolVarArray(table.hardware().size());
    rides = new MPVariable[table.riders().size()][there.length];
    for (MPVariable[] row : rides) {
      MPConstraint one = solver.makeConstraint(-INFINITE, 1);
      for (int set = 0; set < there.length; set++) {
        row[set] = solver.makeBoolVar("");
        one.setCoefficient(row[set], 1);
        notWithout(row[set], there[set]);
      }
    }
    for (int rider = 0; rider < rides.length; rider++) {
      for (int set = 0; set < there.length; set++) {
        if (!table.fits(rider, set)) {
          rides[rider][set].setUb(0);
        }
      }
    }
  }

  private void notWithout(MPVariable one, MPVariable other) {
    MPConstraint needs = solver.makeConstraint(-INFINITE, 0);
    needs.setCoefficient(one, 1);
    needs.setCoefficient(other, -1);
  }

  /** At most so many sets. */
  static ChoiceProgramme sets(FitTable table, int most) {
    ChoiceProgramme programme = new ChoiceProgramme(table);
    MPConstraint sets = programme.solver.makeConstraint(-INFINITE, most);
    for (MPVariable set : programme.there) {
      sets.setCoefficient(set, 1);
    }
    return programme;
  }

  /** At most so many sets, each part in no more of them than there are of it. */
  static ChoiceProgramme fleet(FitTable table, Map<String, Integer> counts, int most) {
    ChoiceProgramme programme = sets(table, most);
    counts.forEach(
        (part, count) -> {
          MPVariable taken = programme.solver.makeIntVar(0, count, part);
          MPConstraint sum = programme.solver.makeConstraint(0, 0);
          sum.setCoefficient(taken, -1);
          for (int set = 0; set < programme.there.length; set++) {
            if (table.hardware().get(set).contains(part)) {
              sum.setCoefficient(programme.there[set], 1);
            }
          }
        });
    return programme;
  }

  /** Sets all whose parts are owned or bought; parts without a price cannot be. */
  static ChoiceProgramme stock(FitTable table, Map<String, Double> prices, Set<String> owned) {
    ChoiceProgramme programme = new ChoiceProgramme(table);
    for (int set = 0; set < programme.there.length; set++) {
      for (String part : table.hardware().get(set)) {
        if (owned.contains(part)) {
          continue;
        }
        if (prices.containsKey(part)) {
          MPVariable bought =
              programme.parts.computeIfAbsent(part, name -> programme.solver.makeBoolVar(name));
          programme.notWithout(programme.there[set], bought);
        } else {
          programme.there[set].setUb(0);
        }
      }
    }
    return programme;
  }

  void budget(Map<String, Double> prices, double most) {
    MPConstraint money = solver.makeConstraint(-INFINITE, most);
    parts.forEach((part, bought) -> money.setCoefficient(bought, prices.get(part)));
  }

  /** The most persons that can be served. */
  int mostPersons() {
    MPObjective persons = cleared();
    eachRide((ride, count, mark) -> persons.setCoefficient(ride, count));
    persons.setMaximization();
    return (int) Math.round(solved());
  }

  void serve(int persons) {
    MPConstraint served = solver.makeConstraint(persons, INFINITE);
    eachRide((ride, count, mark) -> served.setCoefficient(ride, count));
  }

  /** The least sum of marks over persons served. */
  double leastMarks() {
    MPObjective marks = cleared();
    eachRide((ride, count, mark) -> marks.setCoefficient(ride, count * mark));
    return solved();
  }

  /** The least money for what is asked. */
  double leastMoney(Map<String, Double> prices) {
    MPObjective money = cleared();
    parts.forEach((part, bought) -> money.setCoefficient(bought, prices.get(part)));
    return solved();
  }

  /** The least worst mark. */
  double leastWorst() {
    MPVariable worst = solver.makeNumVar(0, INFINITE, "worst");
    eachRide(
        (ride, count, mark) -> {
          MPConstraint above = solver.makeConstraint(-INFINITE, 0);
          above.setCoefficient(ride, mark);
          above.setCoefficient(worst, -1);
        });
    cleared().setCoefficient(worst, 1);
    return solved();
  }

  /** No ride of a worse mark. */
  void noWorseThan(double worst) {
    eachRide(
        (ride, count, mark) -> {
          if (mark > worst) {
            ride.setUb(0);
          }
        });
  }

  private interface Ride {
    void with(MPVariable ride, int persons, double mark);
  }

  private void eachRide(Ride ride) {
    List<RiderLine> riders = table.riders();
    for (int rider = 0; rider < rides.length; rider++) {
      for (int set = 0; set < there.length; set++) {
        if (table.fits(rider, set)) {
          ride.with(rides[rider][set], riders.get(rider).persons(), table.mark(rider, set));
        }
      }
    }
  }

  private MPObjective cleared() {
    MPObjective objective = solver.objective();
    objective.clear();
    objective.setMinimization();
    return objective;
  }

  private double solved() {
    MPSolverParameters exact = new MPSolverParameters();
    // The library is content with a ten-thousandth otherwise.
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = solver.solve(exact);
    exact.delete();
    if (status != MPSolver.ResultStatus.OPTIMAL) {
      throw new IllegalStateException("the library ended with " + status);
    }
    return solver.objective().value();
  }

  @Override
  public void close() {
    solver.delete();
  }
}
