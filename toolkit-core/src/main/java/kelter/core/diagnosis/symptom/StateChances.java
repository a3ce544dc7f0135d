package kelter.core.diagnosis.symptom;

/** A state of a group, weighed by the readings of the group, and the symptoms that it can make. */
public sealed interface StateChances {

  /** Prior times likelihood of the readings, as a natural logarithm; negative infinity for none. */
  double logWeight();

  /**
   * A state with its severities.
   *
   * @param logWeight prior times likelihood of the readings, integrated over the severities, as a
   *     natural logarithm
   * @param share for each node of the rule over the severities its share of that integral, 0 or
   *     more, 1 in all; one node where there is no severity
   * @param chance for each symptom the chance, 0 to 1, that the state makes it at each node; null
   *     where it never does
   */
  record Nodes(double logWeight, double[] share, double[]... chance) implements StateChances {

    private static final double ROUNDING = 1e-9;

    /**
     * Checks shares and chances.
     *
     * @throws IllegalArgumentException if a share or a chance is not from 0 to 1, the shares do not
     *     sum to 1 within 1e-9, or a symptom has not one chance for each node
     */
    public Nodes {
      requireWeight(logWeight);
      requireShares(share);
      for (double[] ofSymptom : chance) {
        if (ofSymptom != null) {
          requireChances(share.length, ofSymptom);
        }
      }
    }

    private static void requireShares(double[] share) {
      double sum = 0;
      for (double each : share) {
        Chance.require("the share of a node", each);
        sum += each;
      }
      if (!(Math.abs(sum - 1) <= ROUNDING)) {
        throw new IllegalArgumentException(
            "the shares of all nodes sum to " + sum + "; 1 is needed");
      }
    }

    private static void requireChances(int nodes, double[] chance) {
      if (chance.length != nodes) {
        throw new IllegalArgumentException(
            chance.length + " chances of a symptom for " + nodes + " nodes");
      }
      for (double each : chance) {
        Chance.require("the chance of a symptom", each);
      }
    }

    /** A state that makes no symptom. */
    public static Nodes silent(double logWeight, int symptoms) {
      return new Nodes(logWeight, new double[] {1}, new double[symptoms][]);
    }

    /** Whether it makes a symptom at some severity. */
    public boolean makes(int symptom) {
      return chance[symptom] != null;
    }
  }

  /**
   * Two faults at once whose severities the readings do not tie together, as where there are no
   * readings: each makes its symptoms as it does by itself, and they combine by noisy-OR.
   *
   * @param logWeight prior times likelihood of the readings, as a natural logarithm
   * @param one the place of the state, with nodes, in which the first fault is there by itself
   * @param other the same of the second
   */
  record PairOf(double logWeight, int one, int other) implements StateChances {

    /**
     * Checks the weight.
     *
     * @throws IllegalArgumentException if the weight is NaN or infinite
     */
    public PairOf {
      requireWeight(logWeight);
    }
  }

  private static void requireWeight(double logWeight) {
    if (!(logWeight < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a state has a weight of exp(" + logWeight + ")");
    }
  }
}
