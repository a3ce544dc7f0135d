package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.weighing.Group;
import kelter.core.diagnosis.weighing.Likelihood;
import kelter.core.uncertainty.Normal;
import kelter.core.vocabulary.Observable;

/**
 * What readings that were not taken might show in each state of a group, the instrument's error and
 * the model's spread included. A figure is sorted into bins that are about equally likely; that
 * loses a little of what it tells, and never adds to it (the data-processing inequality).
 */
final class Information {

  private static final int SEVERITIES = 6;
  private static final int BINS = 12;
  private static final double NEGLIGIBLE = 1e-3;

  /** Beyond so many standard deviations lies nothing that matters here. */
  private static final double FAR = 6;

  /** The quantiles of a standard normal distribution at 1/8, 3/8, 5/8 and 7/8. */
  private static final double[] SHARES = {
    -1.1503493803760083, -0.31863936396437514, 0.31863936396437514, 1.1503493803760083
  };

  private final List<Question> questions;
  private final double[] probability;
  private final int shared;
  private final List<double[][][]> forecasts = new ArrayList<>();

  /**
   * Prepares a group.
   *
   * @param group the group
   * @param probability the probability of each of its states, in their order
   * @param questions what might be measured
   */
  Information(Group group, double[] probability, List<Question> questions) {
    this.questions = questions;
    this.probability = probability;
    this.shared = group.model().shared().size();
    Forecaster forecaster = group.model().forecaster(questions);
    for (int state = 0; state < probability.length; state++) {
      boolean matters = state != group.unexplainedState() && probability[state] > NEGLIGIBLE;
      List<double[]> nodes = matters ? group.nodes(state, SEVERITIES) : List.of();
      forecasts.add(
          nodes.stream().map(node -> forecast(forecaster, node)).toArray(double[][][]::new));
    }
  }

  /** Values and spreads, what the shared quantities do to a figure counted as spread. */
  private double[][] forecast(Forecaster forecaster, double[] severity) {
    double[][] answer = new double[2][questions.size()];
    forecaster.forecast(severity, answer[0], answer[1]);
    for (int j = severity.length - shared; j < severity.length; j++) {
      double[][] moved = new double[2][questions.size()];
      severity[j] = 1;
      forecaster.forecast(severity, moved[0], moved[1]);
      severity[j] = 0;
      for (int k = 0; k < moved[0].length; k++) {
        if (questions.get(k).observable().type() == Observable.Type.QUANTITY) {
          double load = scaled(k, moved[0][k]) - scaled(k, answer[0][k]);
          answer[1][k] = root(answer[1][k], load);
        }
      }
    }
    return answer;
  }

  private double scaled(int k, double value) {
    return questions.get(k).observable().logarithmic() ? Math.log(value) : value;
  }

  @FunctionalInterface
  private interface Chance {
    double of(int outcome, double value, double spread);
  }

  /** What one of the questions may show. */
  Outcomes outcomes(int k) {
    Observable observable = questions.get(k).observable();
    return switch (observable.type()) {
      case YES_NO -> outcomes(k, 2, (outcome, v, sd) -> outcome == 1 ? v : 1 - v);
      case GRADE ->
          outcomes(
              k,
              observable.grades().size(),
              (rank, v, sd) -> Likelihood.grade(observable, rank, 0).of(v, sd));
      case QUANTITY -> figures(k, observable);
    };
  }

  private Outcomes outcomes(int k, int count, Chance chance) {
    List<double[][]> given = new ArrayList<>();
    for (double[][][] ofState : forecasts) {
      double[][] own = new double[ofState.length][count];
      for (int node = 0; node < own.length; node++) {
        for (int outcome = 0; outcome < count; outcome++) {
          own[node][outcome] = chance.of(outcome, ofState[node][0][k], ofState[node][1][k]);
        }
      }
      given.add(own);
    }
    return new Outcomes(probability, given);
  }

  private Outcomes figures(int k, Observable observable) {
    List<double[][]> centres = new ArrayList<>();
    for (double[][][] ofState : forecasts) {
      double[][] own = new double[ofState.length][];
      for (int node = 0; node < own.length; node++) {
        double value = ofState[node][0][k];
        double u = observable.procedure().typical().standardUncertainty(value);
        boolean logarithmic = observable.logarithmic();
        own[node] =
            new double[] {
              logarithmic ? Math.log(value) : value,
              root(ofState[node][1][k], logarithmic ? u / value : u)
            };
      }
      centres.add(own);
    }
    double[] edges = edges(centres);
    List<double[][]> given = new ArrayList<>();
    for (double[][] ofState : centres) {
      double[][] own = new double[ofState.length][];
      for (int node = 0; node < own.length; node++) {
        own[node] = bins(ofState[node][0], ofState[node][1], edges);
      }
      given.add(own);
    }
    return new Outcomes(probability, given);
  }

  private static double root(double spread, double u) {
    return Math.sqrt(spread * spread + u * u);
  }

  private static double[] bins(double centre, double sd, double[] edges) {
    double[] bins = new double[edges.length + 1];
    double below = 0;
    for (int i = 0; i < edges.length; i++) {
      double z = (edges[i] - centre) / sd;
      double upTo = z > FAR ? 1 : z < -FAR ? 0 : Normal.cdf(z);
      bins[i] = upTo - below;
      below = upTo;
    }
    bins[edges.length] = 1 - below;
    return bins;
  }

  /** Values that part what may be read, over all states, into about equal shares. */
  private double[] edges(List<double[][]> centres) {
    List<double[]> points = new ArrayList<>();
    double mass = 0;
    for (int state = 0; state < centres.size(); state++) {
      double[][] own = centres.get(state);
      for (double[] centre : own) {
        for (double share : SHARES) {
          double weight = probability[state] / own.length;
          points.add(new double[] {centre[0] + share * centre[1], weight});
          mass += weight;
        }
      }
    }
    points.sort((a, b) -> Double.compare(a[0], b[0]));
    double[] edges = new double[BINS - 1];
    double below = 0;
    int next = 0;
    for (int i = 0; i < points.size() && next < edges.length; i++) {
      below += points.get(i)[1];
      if (below > (next + 1.0) / BINS * mass) {
        double after = i + 1 < points.size() ? points.get(i + 1)[0] : points.get(i)[0];
        double edge = (points.get(i)[0] + after) / 2;
        while (next < edges.length && below > (next + 1.0) / BINS * mass) {
          edges[next++] = edge;
        }
      }
    }
    Arrays.fill(edges, next, edges.length, points.isEmpty() ? 0 : points.get(points.size() - 1)[0]);
    return edges;
  }
}
