package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.List;
import kelter.core.vocabulary.Observable;

/**
 * What a reading is expected to tell about the state of a group: the mutual information between the
 * two, in bits, the instrument's error and the model's spread included.
 *
 * <p>I = sum over states i of p(i) E[log2(p(y|i)/p(y)) | i] (Cover and Thomas, Elements of
 * Information Theory, 2nd edition, equation 2.28, from memory). For a value the expectation runs
 * over a few severities of each state and eight values around each forecast.
 */
final class Information {

  private static final int SEVERITIES = 6;
  private static final double NEGLIGIBLE = 1e-3;

  /**
   * The middles of eight equal shares of a standard normal distribution, its quantiles at 1/16,
   * 3/16 and so on. They reach into a narrow peak as well as a wide one, which the few nodes of a
   * Gauss rule do not.
   */
  private static final double[] SHARES = {
    -1.534120544352546, -0.887146559018876, -0.488776411114669, -0.157310684610171,
    0.157310684610171, 0.488776411114669, 0.887146559018876, 1.534120544352546
  };

  private final Group group;
  private final double[] probability;
  private final List<List<double[]>> nodes = new ArrayList<>();

  /**
   * Prepares a group.
   *
   * @param group the group
   * @param probability the probability of each of its states, in their order
   */
  Information(Group group, double[] probability) {
    this.group = group;
    this.probability = probability;
    for (int state = 0; state < probability.length; state++) {
      boolean matters = state != group.unexplainedState() && probability[state] > NEGLIGIBLE;
      nodes.add(matters ? group.nodes(state, SEVERITIES) : List.of());
    }
  }

  /** The expected information of each question, in bits. */
  double[] bits(List<Question> questions) {
    Forecaster forecaster = group.model().forecaster(questions);
    List<List<double[][]>> forecasts = new ArrayList<>();
    for (List<double[]> ofState : nodes) {
      List<double[][]> answers = new ArrayList<>();
      for (double[] severity : ofState) {
        double[][] answer = new double[2][questions.size()];
        forecaster.forecast(severity, answer[0], answer[1]);
        answers.add(answer);
      }
      forecasts.add(answers);
    }
    double[] bits = new double[questions.size()];
    for (int k = 0; k < bits.length; k++) {
      bits[k] = Math.max(0, bits(questions.get(k).observable(), k, forecasts));
    }
    return bits;
  }

  private double bits(Observable observable, int k, List<List<double[][]>> forecasts) {
    return switch (observable.type()) {
      case YES_NO -> words(2, k, forecasts, (rank, v, sd) -> rank == 1 ? v : 1 - v);
      case GRADE ->
          words(
              observable.grades().size(),
              k,
              forecasts,
              (rank, v, sd) -> Math.exp(Likelihood.grade(observable, rank, 0).log(v, sd)));
      case QUANTITY -> value(observable, k, forecasts);
    };
  }

  @FunctionalInterface
  private interface WordProbability {
    double of(int rank, double value, double spread);
  }

  private double words(int count, int k, List<List<double[][]>> forecasts, WordProbability word) {
    double bits = 0;
    double[][] given = new double[forecasts.size()][count];
    double[] all = new double[count];
    double mass = 0;
    for (int state = 0; state < given.length; state++) {
      List<double[][]> answers = forecasts.get(state);
      for (double[][] answer : answers) {
        for (int rank = 0; rank < count; rank++) {
          given[state][rank] += word.of(rank, answer[0][k], answer[1][k]) / answers.size();
        }
      }
      if (!answers.isEmpty()) {
        mass += probability[state];
        for (int rank = 0; rank < count; rank++) {
          all[rank] += probability[state] * given[state][rank];
        }
      }
    }
    for (int state = 0; state < given.length; state++) {
      for (int rank = 0; rank < count; rank++) {
        if (given[state][rank] > 0) {
          bits +=
              probability[state] * given[state][rank] * log2(given[state][rank] * mass / all[rank]);
        }
      }
    }
    return bits;
  }

  private double value(Observable observable, int k, List<List<double[][]>> forecasts) {
    int states = forecasts.size();
    double[][] centre = new double[states][];
    double[][] sd = new double[states][];
    double mass = 0;
    for (int state = 0; state < states; state++) {
      List<double[][]> answers = forecasts.get(state);
      centre[state] = new double[answers.size()];
      sd[state] = new double[answers.size()];
      mass += answers.isEmpty() ? 0 : probability[state];
      for (int n = 0; n < answers.size(); n++) {
        double value = answers.get(n)[0][k];
        double u = observable.procedure().typical().standardUncertainty(value);
        boolean logarithmic = observable.logarithmic();
        centre[state][n] = logarithmic ? Math.log(value) : value;
        sd[state][n] = Math.hypot(answers.get(n)[1][k], logarithmic ? u / value : u);
      }
    }
    double bits = 0;
    double[] density = new double[states];
    for (int state = 0; state < states; state++) {
      for (int n = 0; n < centre[state].length; n++) {
        for (double share : SHARES) {
          double y = centre[state][n] + share * sd[state][n];
          double all = densities(y, centre, sd, density) / mass;
          bits +=
              probability[state]
                  / SHARES.length
                  / centre[state].length
                  * log2(density[state] / all);
        }
      }
    }
    return bits;
  }

  /** Fills in the density of a value in each state and returns the sum, weighted. */
  private double densities(double y, double[][] centre, double[][] sd, double[] density) {
    double all = 0;
    for (int state = 0; state < density.length; state++) {
      double sum = 0;
      for (int n = 0; n < centre[state].length; n++) {
        double z = (y - centre[state][n]) / sd[state][n];
        sum += Math.exp(-0.5 * z * z) / sd[state][n];
      }
      density[state] = centre[state].length == 0 ? 0 : sum / centre[state].length;
      all += probability[state] * density[state];
    }
    return all;
  }

  private static double log2(double ratio) {
    return Math.log(ratio) / Math.log(2);
  }
}
