package kelter.core.oracle.decision;

/** Sums over states. */
final class Weights {

  private Weights() {}

  /** Refuses another number of values than states, and values that are not finite. */
  static double[] checked(double[] values, int states) {
    if (values.length != states) {
      throw new IllegalArgumentException(values.length + " values for " + states + " states");
    }
    for (double value : values) {
      if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a value of " + value + "; finite ones are allowed");
      }
    }
    return values;
  }

  /** The sum of weight times value, with the values from a place on. */
  static double dot(double[] weight, double[] value, int from) {
    double sum = 0;
    for (int s = 0; s < weight.length; s++) {
      sum += weight[s] * value[from + s];
    }
    return sum;
  }
}
