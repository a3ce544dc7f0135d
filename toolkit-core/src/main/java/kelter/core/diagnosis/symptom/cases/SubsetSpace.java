package kelter.core.diagnosis.symptom.exact;

/**
 * Where functions of a set of symptoms live: arrays with one entry for each case of {@link
 * Tracking} and each subset of the tracked symptoms. A subset is a number, one bit for each
 * symptom; the entries of a case stand together.
 *
 * @param bits how many symptoms are tracked
 * @param cases how many cases there are, 1 or more
 */
record SubsetSpace(int bits, int cases) {

  /** How many subsets there are. */
  int subsets() {
    return 1 << bits;
  }

  /** A function that is 0 everywhere. */
  double[] zero() {
    return new double[cases << bits];
  }

  /** Sum over all cases and subsets of the product of two functions. */
  static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  /** Adds a multiple of a function to another. */
  static void add(double factor, double[] function, double[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * function[i];
    }
  }

  /** Adds a number to a function at the empty set, in each case. */
  void addAtNone(double number, double[] to) {
    for (int start = 0; start < to.length; start += subsets()) {
      to[start] += number;
    }
  }
}
