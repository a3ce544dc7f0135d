package kelter.core.oracle.decision;

/** What can be done, and what it costs in each state. */
public interface Decision {

  /**
   * The expected cost of what is best to do.
   *
   * @param weight for each state its probability, or all a common multiple of that, such as the
   *     probability of a state together with an outcome
   * @return the cost, of the same multiple; twice the weights have twice the cost
   * @throws IllegalArgumentException if there are not as many weights as states
   */
  double leastCost(double[] weight);

  /**
   * The expected cost if the state were known before anything is done.
   *
   * @param weight for each state its probability, or a common multiple of that
   * @return the cost, of the same multiple
   * @throws IllegalArgumentException if there are not as many weights as states
   */
  default double costWhenKnown(double[] weight) {
    double sum = 0;
    double[] known = new double[weight.length];
    for (int s = 0; s < weight.length; s++) {
      known[s] = weight[s];
      sum += leastCost(known);
      known[s] = 0;
    }
    return sum;
  }
}
