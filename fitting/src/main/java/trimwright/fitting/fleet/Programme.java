package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.ModelEntity;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Optimisation.ConstraintType;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.type.keyvalue.EntryPair;

/**
 * A linear programme to be minimised over variables between bounds: the only door to the library
 * that solves it.
 *
 * <p>Of the library's answer nothing but the numbers is taken: the variables are a suggestion, and
 * the bound is a sum of our own. For any multipliers m not below 0 of rows a x &ge; b the least of
 * m b + (c - m a) x over the variables' bounds alone is at most the least of c x (weak duality;
 * Neumaier and Shcherbina 2004 on safe bounds, from memory). A wrong or failed answer makes the
 * bound poor, never false.
 */
final class Programme {
  static {
    // With them, version 57.1.0 calls programmes infeasible that are not.
    ExpressionsBasedModel.clearPresolvers();
  }

  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final List<double[]> bounds = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /**
   * An answer.
   *
   * @param x the variables' values, within their bounds; empty where the library gave none
   * @param bound what the objective cannot be below
   * @param slopes by how much the bound rises at least when a variable moves off the bound that is
   *     best for it, per unit of it; negative where that is the upper bound
   */
  record Answer(double[] x, double bound, double[] slopes) {
    boolean isThere() {
      return x.length > 0;
    }
  }

  /**
   * A further variable.
   *
   * @param least lower bound
   * @param most upper bound, finite
   * @param weight in the objective
   * @return its number
   */
  int variable(double least, double most, double weight) {
    Variable variable = model.newVariable("x" + bounds.size()).lower(least).upper(most);
    if (weight != 0) {
      variable.weight(weight);
    }
    bounds.add(new double[] {least, most, weight});
    return bounds.size() - 1;
  }

  /** A further row that is at least a value. */
  Row atLeast(double value) {
    return row(value, 1);
  }

  /** A further row that is at most a value. */
  Row atMost(double value) {
    return row(value, -1);
  }

  private Row row(double value, int sign) {
    Expression expression = model.newExpression("r" + rows.size());
    Row row =
        new Row(sign > 0 ? expression.lower(value) : expression.upper(value), sign, sign * value);
    rows.add(row);
    return row;
  }

  /**
   * Solves it.
   *
   * @param allowance how long that may take
   */
  Answer minimise(Allowance allowance) {
    long millis = Math.max(1, Math.min(allowance.left().toMillis(), Allowance.LONGEST.toMillis()));
    model.options.time_abort = millis;
    model.options.time_suffice = millis;
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return bounded(new double[0], new double[rows.size()]);
    }
    double[] x = new double[bounds.size()];
    for (int i = 0; i < x.length; i++) {
      double value = result.doubleValue(i);
      x[i] = Math.max(bounds.get(i)[0], Math.min(bounds.get(i)[1], value));
    }
    double[] multipliers = new double[rows.size()];
    for (EntryPair.KeyedPrimitive<EntryPair<ModelEntity<?>, ConstraintType>> pair :
        result.getDualValues()) {
      String name = pair.getKey().getKey().getName();
      if (name.startsWith("r")) {
        multipliers[Integer.parseInt(name.substring(1))] = Math.max(0, pair.doubleValue());
      }
    }
    return bounded(x, multipliers);
  }

  private Answer bounded(double[] x, double[] multipliers) {
    double[] slopes = new double[bounds.size()];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = bounds.get(i)[2];
    }
    double bound = 0;
    for (int r = 0; r < multipliers.length; r++) {
      if (multipliers[r] > 0) {
        bound += multipliers[r] * rows.get(r).least;
        rows.get(r).takeFrom(slopes, multipliers[r]);
      }
    }
    for (int i = 0; i < slopes.length; i++) {
      bound += slopes[i] * (slopes[i] > 0 ? bounds.get(i)[0] : bounds.get(i)[1]);
    }
    return new Answer(x, bound, slopes);
  }

  /** A row of a programme. */
  static final class Row {
    private final Expression expression;
    private final int sign;
    private final double least;
    private int[] variables = new int[8];
    private double[] coefficients = new double[8];
    private int count;

    private Row(Expression expression, int sign, double least) {
      this.expression = expression;
      this.sign = sign;
      this.least = least;
    }

    /** Sets a coefficient; a variable is set once. */
    Row with(int variable, double coefficient) {
      expression.set(variable, coefficient);
      if (count == variables.length) {
        variables = Arrays.copyOf(variables, 2 * count);
        coefficients = Arrays.copyOf(coefficients, 2 * count);
      }
      variables[count] = variable;
      coefficients[count++] = sign * coefficient;
      return this;
    }

    private void takeFrom(double[] slopes, double multiplier) {
      for (int i = 0; i < count; i++) {
        slopes[variables[i]] -= multiplier * coefficients[i];
      }
    }
  }
}
