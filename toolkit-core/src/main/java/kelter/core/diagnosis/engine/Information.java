package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Likelihood;
import kelter.core.uncertainty.Normal;
import kelter.core.vocabulary.Observable;

/**
 * What readings that were not taken might show in each state of a group, the instrument's error and
 * the model's spread included. A figure is sorted into bins that are about equally likely; that
 * loses a little of what it tells, and never adds to it (the data-processing inequality).
 */
final class Information {

  /** How many severities stand for a state, and for one that is unlikely. */
  private static final int SEVERITIES = 6;

  private static final int FEW_SEVERITIES = 3;
  private static final double UNLIKELY = 0.05;
  private static final int BINS = 10;
  private static final double NEGLIGIBLE = 3e-3;

  /** Beyond so many standard deviations lies nothing that matters here. */
  private static final double FAR = 6;

  /** The quantiles of a standard normal distribution at 1/8, 3/8, 5/8 and 7/8. */
  private static final double[] SHARES = {
    -1.1503493803760083, -0.31863936396437514, 0.31863936396437514, 1.1503493803760083
  };

  private static final double[][][] NONE = {};

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
   * @param nodes the severities of a state, by its number and how many are wanted
   */
  Information(
      Group group,
      double[] probability,
      List<Question> questions,
      BiFunction<Integer, Integer, List<double[]>> nodes) {
    this.questions = questions;
    this.probability = probability;
    this.shared = group.model().shared().size();
    Forecaster forecaster = group.model().forecaster(questions);
    for (int state = 0; state < probability.length; state++) {
      boolean matters = state != group.unexplainedState() && probability[state] > NEGLIGIBLE;
      int severities = probability[state] < UNLIKELY ? FEW_SEVERITIES : SEVERITIES;
      forecasts.add(matters ? forecasts(forecaster, nodes.apply(state, severities)) : NONE);
    }
  }

  /** Values and spreads at each severity; what is shared is asked for at the middle one only. */
  private double[][][] forecasts(Forecaster forecaster, List<double[]> nodes) {
    double[] loads = loads(forecaster, nodes.get(nodes.size() / 2));
    double[][][] answers = new double[nodes.size()][][];
    for (int node = 0; node < answers.length; node++) {
      answers[node] = forecast(forecaster, nodes.get(node));
      for (int k = 0; k < loads.length; k++) {
        answers[node][1][k] = root(answers[node][1][k], loads[k]);
      }
    }
    return answers;
  }

  private double[][] forecast(Forecaster forecaster, double[] severity) {
    double[][] answer = new double[2][questions.size()];
    forecaster.forecast(severity, answer[0], answer[1]);
    return answer;
  }

  /** By how much the shared quantities together spread each figure. */
  private double[] loads(Forecaster forecaster, double[] severity) {
    double[] loads = new double[questions.size()];
    double[][] usual = shared == 0 ? null : forecast(forecaster, severity);
    for (int j = severity.length - shared; j < severity.length; j++) {
      severity[j] = 1;
      double[][] moved = forecast(forecaster, severity);
      severity[j] = 0;
      for (int k = 0; k < loads.length; k++) {
        if (questions.get(k).observable().type() == Observable.Type.QUANTITY) {
          loads[k] = root(loads[k], scaled(k, moved[0][k]) - scaled(k, usual[0][k]));
        }
      }
    }
    return loads;
  }

  private double scaled(int k, double value) {
    return questions.get(k).observable().logarithmic() ? Math.log(value) : value;
  }

  @FunctionalInterface
  private interface Chance {
    double of(int outcome, double value, double spread);
  }

  /** What one of the questions may show. */
  AnswerOutcomes outcomes(int k) {
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

  private AnswerOutcomes outcomes(int k, int count, Chance chance) {
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
    return new AnswerOutcomes(probability, given);
  }

  private AnswerOutcomes figures(int k, Observable observable) {
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
    return new AnswerOutcomes(probability, given);
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
