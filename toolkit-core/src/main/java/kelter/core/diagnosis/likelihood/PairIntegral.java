package kelter.core.diagnosis.likelihood;

import kelter.core.diagnosis.Diagnosis;

/**
 * The integral of a likelihood over the severities of two faults, each equally likely from 0 to 1
 * before anything is measured; how it is taken is told in {@link PairSubdivision}.
 *
 * @param look the look at the pair
 * @param logIntegral the natural logarithm of the integral; negative infinity if all was left out
 * @param logDropped the natural logarithm of a bound of what was left out
 * @param severities the points that were weighed, the severities of both faults at each
 * @param weights the weight of each point, in units of their own
 * @param mode the severities of both faults at which the readings are likeliest; null if all was
 *     left out
 */
record PairIntegral(
    PairLook look,
    double logIntegral,
    double logDropped,
    double[][] severities,
    double[] weights,
    double[] mode)
    implements StateIntegral {

  /** Whether nothing of it was weighed. */
  boolean isLeftOut() {
    return weights.length == 0;
  }

  @Override
  public Diagnosis.Severity distribution(int fault) {
    double mass = 0;
    double mean = 0;
    double square = 0;
    for (int i = 0; i < weights.length; i++) {
      double severity = severities[i][fault];
      mass += weights[i];
      mean += weights[i] * severity;
      square += weights[i] * severity * severity;
    }
    mean /= mass;
    return new Diagnosis.Severity(mean, Math.sqrt(Math.max(0, square / mass - mean * mean)));
  }

  @Override
  public double logAlone(int item) {
    return look.logAlone(item);
  }

  @Override
  public double[] shares() {
    double mass = 0;
    for (double weight : weights) {
      mass += weight;
    }
    double[] shares = weights.clone();
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= mass;
    }
    return shares;
  }

  @Override
  public double severity(int node, int fault) {
    return severities[node][fault];
  }

  @Override
  public double[][] nodes(int count, double[] shares) {
    double[][] nodes = new double[count][];
    double below = 0;
    int next = 0;
    for (int i = 0; i < shares.length; i++) {
      below += shares[i];
      while (next < count && below >= (next + 0.5) / count - SeverityIntegral.ROUNDING) {
        nodes[next++] = severities[i];
      }
    }
    while (next < count) {
      nodes[next++] = severities[severities.length - 1];
    }
    return nodes;
  }
}
