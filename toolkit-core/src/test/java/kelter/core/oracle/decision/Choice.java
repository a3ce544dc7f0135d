package kelter.core.oracle.decision;

/**
 * One of several actions, whose cost depends on the state: {@code min_a sum_s w_s c_as}. A gain is
 * a negative cost.
 */
public final class Choice implements Decision {

  private final double[][] cost;

  /**
   * Names the actions by what they cost.
   *
   * @param cost for each action its cost in each state, finite
   * @throws IllegalArgumentException if there is no action, a cost is not finite, or the actions
   *     are not of the same number of states
   */
  public Choice(double[][] cost) {
    if (cost.length == 0) {
      throw new IllegalArgumentException("no action; one or more are needed");
    }
    this.cost = new double[cost.length][];
    for (int a = 0; a < cost.length; a++) {
      this.cost[a] = Weights.checked(cost[a], cost[0].length).clone();
    }
  }

  @Override
  public double leastCost(double[] weight) {
    return expectedCost(best(weight), weight);
  }

  /**
   * The best action.
   *
   * @param weight for each state its probability, or a common multiple of that
   * @return its number, the lowest of those that cost the same
   * @throws IllegalArgumentException if there are not as many weights as states
   */
  public int best(double[] weight) {
    Weights.checked(weight, cost[0].length);
    int best = 0;
    for (int a = 1; a < cost.length; a++) {
      if (expectedCost(a, weight) < expectedCost(best, weight)) {
        best = a;
      }
    }
    return best;
  }

  private double expectedCost(int action, double[] weight) {
    return Weights.dot(weight, cost[action], 0);
  }
}
