package kelter.core.diagnosis.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;

/**
 * One fault model, weighed by the readings that it forecasts. Its states are: nothing wrong, each
 * fault by itself, the pairs of faults that matter, and something that no known fault explains.
 *
 * <p>A pair is left out where a bound of its probability is negligible beside the states weighed
 * before it; the sum of these bounds is kept.
 */
public final class Group {

  /** The place of the state in which nothing is wrong. */
  public static final int HEALTHY = 0;

  private static final int[] NONE = {};

  /** A share of the whole below which a pair is left out. */
  private static final double LOG_NEGLIGIBLE = Math.log(1e-6);

  /** A share of the whole below which a part of a pair is left out. */
  private static final double LOG_NEGLIGIBLE_PART = Math.log(1e-4);

  /** A share of the whole from which on a pair is integrated finely. */
  private static final double LOG_MATTERS = Math.log(1e-2);

  private final FaultModel model;
  private final List<Fault> faults;
  private final Readings readings;
  private final double[] prior;
  private final SeverityIntegral[] singles;
  private final ForecastTable[] tables;
  private final List<Pair> pairs = new ArrayList<>();
  private double[] logPrior;
  private double[] logWeight;
  private double[][] alone;
  private double logLeftOut = Double.NEGATIVE_INFINITY;

  private record Pair(int one, int other, double logPrior, PairIntegral integral) {

    public double logBound() {
      return logPrior + integral.logBound();
    }
  }

  public Group(FaultModel model, List<Item> items, Priors priors, EngineSettings settings) {
    this.model = model;
    this.faults = model.faults();
    this.readings = new Readings(model, items);
    this.prior = new double[faults.size()];
    for (int i = 0; i < prior.length; i++) {
      prior[i] = settings.beside(priors.of(faults.get(i)));
    }
    this.singles = new SeverityIntegral[faults.size()];
    this.tables = new ForecastTable[faults.size()];
    // Where nothing was read, nothing can be unexplained.
    weigh(items.isEmpty() ? 0 : settings.beside(settings.unexplained()), settings.mostFaults() > 1);
  }

  /** The prior odds of a fault against its absence. */
  private double odds(int fault) {
    return prior[fault] / (1 - prior[fault]);
  }

  private void weigh(double unexplained, boolean withPairs) {
    int n = faults.size();
    double sum = 1;
    for (int i = 0; i < n; i++) {
      sum += odds(i);
      for (int j = 0; withPairs && j < i; j++) {
        sum += model.mayMeet(i, j) ? odds(i) * odds(j) : 0;
      }
    }
    double logExplained = Math.log1p(-unexplained) - Math.log(sum);
    logPrior = new double[n + 2];
    logPrior[HEALTHY] = logExplained;
    for (int i = 0; i < n; i++) {
      logPrior[i + 1] = logExplained + Math.log(odds(i));
    }
    logPrior[n + 1] = Math.log(unexplained);
    logWeight = logPrior.clone();
    logWeight[HEALTHY] += readings.log(readings.healthy());
    for (int i = 0; i < n; i++) {
      tables[i] = new ForecastTable(readings, i);
      singles[i] = SeverityIntegral.of(tables[i]::logLikelihood, tables[i].edges());
      logWeight[i + 1] += singles[i].logIntegral();
    }
    for (Item item : readings.items()) {
      logWeight[n + 1] += item.likelihood().logUnexplained();
    }
    if (withPairs) {
      weighPairs(logExplained);
    }
    alone = new double[logWeight.length][];
  }

  private void weighPairs(double logExplained) {
    int n = faults.size();
    List<Pair> open = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        if (model.mayMeet(i, j)) {
          double log = logExplained + Math.log(odds(i) * odds(j));
          open.add(
              new Pair(
                  i,
                  j,
                  log,
                  new PairIntegral(
                      readings, new PairForecast(readings, i, tables[i], j, tables[j]))));
        }
      }
    }
    open.sort((a, b) -> Double.compare(b.logBound(), a.logBound()));
    double logTotal = Double.NEGATIVE_INFINITY;
    for (double weight : logWeight) {
      logTotal = logSum(logTotal, weight);
    }
    double[] priors = new double[open.size()];
    double[] weights = new double[open.size()];
    for (Pair pair : open) {
      double negligible = logTotal + LOG_NEGLIGIBLE_PART;
      if (pair.logBound() < logTotal + LOG_NEGLIGIBLE) {
        logLeftOut = logSum(logLeftOut, pair.logBound());
        continue;
      }
      PairIntegral integral = pair.integral.rough(negligible - pair.logPrior);
      if (pair.logPrior + integral.logIntegral() > logTotal + LOG_MATTERS) {
        integral = pair.integral.fine(negligible - pair.logPrior);
      }
      logLeftOut = logSum(logLeftOut, pair.logPrior + integral.logDropped());
      if (!integral.isLeftOut()) {
        priors[pairs.size()] = pair.logPrior;
        weights[pairs.size()] = pair.logPrior + integral.logIntegral();
        logTotal = logSum(logTotal, weights[pairs.size()]);
        pairs.add(new Pair(pair.one, pair.other, pair.logPrior, integral));
      }
    }
    logPrior = insert(logPrior, priors);
    logWeight = insert(logWeight, weights);
  }

  /** Puts the pairs in front of the last state. */
  private double[] insert(double[] states, double[] ofPairs) {
    double[] all = Arrays.copyOf(states, states.length + pairs.size());
    all[all.length - 1] = states[states.length - 1];
    System.arraycopy(ofPairs, 0, all, states.length - 1, pairs.size());
    return all;
  }

  private static double logSum(double a, double b) {
    double top = Math.max(a, b);
    return top == Double.NEGATIVE_INFINITY ? top : top + Math.log1p(Math.exp(-Math.abs(a - b)));
  }

  public FaultModel model() {
    return model;
  }

  public List<Fault> faults() {
    return faults;
  }

  public Readings readings() {
    return readings;
  }

  /** The chance of a fault before anything was measured. */
  public double prior(int fault) {
    return prior[fault];
  }

  public int states() {
    return logWeight.length;
  }

  public int unexplainedState() {
    return logWeight.length - 1;
  }

  /** The places of the faults that are there in a state. */
  public int[] faultsOf(int state) {
    if (state == HEALTHY || state == unexplainedState()) {
      return NONE;
    }
    if (state <= faults.size()) {
      return new int[] {state - 1};
    }
    Pair pair = pair(state);
    return new int[] {pair.one, pair.other};
  }

  private Pair pair(int state) {
    return pairs.get(state - faults.size() - 1);
  }

  public boolean hasFault(int state, int fault) {
    for (int each : faultsOf(state)) {
      if (each == fault) {
        return true;
      }
    }
    return false;
  }

  /** How bad one of the faults of a state is. */
  public Diagnosis.Severity severity(int state, int fault) {
    return state <= faults.size()
        ? singles[state - 1].distribution()
        : pair(state).integral.distribution(pair(state).one == fault);
  }

  public double logPrior(int state) {
    return logPrior[state];
  }

  /** Prior times likelihood of a state, as a natural logarithm. */
  public double logWeight(int state) {
    return logWeight[state];
  }

  /** A bound of the weight of the pairs that were left out, as a natural logarithm. */
  public double logLeftOut() {
    return logLeftOut;
  }

  /**
   * The severities of all faults in a state, at a few nodes of equal weight; one node where nothing
   * is to choose.
   */
  public List<double[]> nodes(int state, int count) {
    List<double[]> nodes = new ArrayList<>();
    int[] present = faultsOf(state);
    if (present.length == 0) {
      nodes.add(readings.none());
    } else if (present.length == 1) {
      for (double s : singles[state - 1].quantiles(count)) {
        nodes.add(severities(present, s));
      }
    } else {
      for (double[] s : pair(state).integral.nodes(count)) {
        nodes.add(severities(present, s));
      }
    }
    return nodes;
  }

  private double[] severities(int[] present, double... severity) {
    double[] all = readings.none();
    for (int i = 0; i < present.length; i++) {
      all[present[i]] = severity[i];
    }
    return all;
  }

  /** The forecast of the readings in a state at its likeliest severity. */
  public double[] likeliestForecast(int state) {
    int[] present = faultsOf(state);
    double[] severity =
        switch (present.length) {
          case 0 -> readings.none();
          case 1 -> severities(present, singles[state - 1].mode());
          default -> severities(present, pair(state).integral.mode());
        };
    return readings.forecast(severity);
  }

  /** The natural logarithm of the likelihood of one reading, whatever the others say. */
  public double logAlone(int state, int item) {
    if (alone[state] == null) {
      alone[state] = new double[readings.count()];
      Arrays.fill(alone[state], Double.NaN);
    }
    if (Double.isNaN(alone[state][item])) {
      alone[state][item] = weighAlone(state, item);
    }
    return alone[state][item];
  }

  private double weighAlone(int state, int item) {
    if (state == unexplainedState()) {
      return readings.items().get(item).likelihood().logUnexplained();
    }
    if (state == HEALTHY) {
      return readings.log(readings.healthy(), item);
    }
    if (state > faults.size()) {
      return pair(state).integral.logAlone(item);
    }
    ForecastTable table = tables[state - 1];
    return SeverityIntegral.of(s -> table.logLikelihood(s, item), table.edges(item)).logIntegral();
  }
}
