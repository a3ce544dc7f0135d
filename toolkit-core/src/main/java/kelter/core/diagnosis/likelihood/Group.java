package kelter.core.diagnosis.likelihood;

import java.util.ArrayList;
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
  private final List<State> states;
  private final double logLeftOut;

  private record State(int[] faults, double logPrior, StateIntegral integral) {

    double logWeight() {
      return logPrior + integral.logIntegral();
    }
  }

  /** A pair of faults that may matter. */
  private record Pair(int one, int other, double logPrior, PairLook look) {

    double logBound() {
      return logPrior + look.logBound();
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
    // Where nothing was read, nothing can be unexplained.
    double unexplained = items.isEmpty() ? 0 : settings.beside(settings.unexplained());
    boolean withPairs = settings.mostFaults() > 1;
    double logExplained = Math.log1p(-unexplained) - Math.log(sumOfOdds(withPairs));
    List<State> weighed = new ArrayList<>();
    weighed.add(new State(NONE, logExplained, healthy()));
    ForecastTable[] tables = new ForecastTable[prior.length];
    for (int i = 0; i < prior.length; i++) {
      tables[i] = new ForecastTable(readings, i);
      double log = logExplained + Math.log(odds(i));
      weighed.add(new State(new int[] {i}, log, new StateIntegral.OneFault(tables[i])));
    }
    State last = new State(NONE, Math.log(unexplained), unexplained());
    this.logLeftOut =
        withPairs ? addPairs(weighed, last, pairs(logExplained, tables)) : Double.NEGATIVE_INFINITY;
    weighed.add(last);
    this.states = List.copyOf(weighed);
  }

  /** The prior odds of a fault against its absence. */
  private double odds(int fault) {
    return prior[fault] / (1 - prior[fault]);
  }

  /** The odds of all states that are explained, against nothing wrong. */
  private double sumOfOdds(boolean withPairs) {
    double sum = 1;
    for (int i = 0; i < prior.length; i++) {
      sum += odds(i);
      for (int j = 0; withPairs && j < i; j++) {
        sum += model.mayMeet(i, j) ? odds(i) * odds(j) : 0;
      }
    }
    return sum;
  }

  private StateIntegral healthy() {
    double[] ofEach = new double[readings.count()];
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = readings.log(readings.healthy(), k);
    }
    return new StateIntegral.NoFault(readings.log(readings.healthy()), ofEach);
  }

  private StateIntegral unexplained() {
    double[] ofEach = new double[readings.count()];
    double sum = 0;
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = Math.log(readings.items().get(k).likelihood().unexplained());
      sum += ofEach[k];
    }
    return new StateIntegral.NoFault(sum, ofEach);
  }

  /** The pairs of faults that can meet, those that may matter most first. */
  private List<Pair> pairs(double logExplained, ForecastTable[] tables) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < prior.length; i++) {
      for (int j = i + 1; j < prior.length; j++) {
        if (model.mayMeet(i, j)) {
          PairForecast forecast = new PairForecast(readings, i, tables[i], j, tables[j]);
          double log = logExplained + Math.log(odds(i) * odds(j));
          pairs.add(new Pair(i, j, log, new PairLook(readings, forecast)));
        }
      }
    }
    pairs.sort((a, b) -> Double.compare(b.logBound(), a.logBound()));
    return pairs;
  }

  /**
   * Adds the pairs that matter beside the states weighed before.
   *
   * @return a bound of what was left out, as a natural logarithm
   */
  private static double addPairs(List<State> weighed, State unexplained, List<Pair> pairs) {
    double logTotal = Double.NEGATIVE_INFINITY;
    for (State state : weighed) {
      logTotal = logSum(logTotal, state.logWeight());
    }
    logTotal = logSum(logTotal, unexplained.logWeight());
    double logLeftOut = Double.NEGATIVE_INFINITY;
    for (Pair pair : pairs) {
      if (pair.logBound() < logTotal + LOG_NEGLIGIBLE) {
        logLeftOut = logSum(logLeftOut, pair.logBound());
        continue;
      }
      double negligible = logTotal + LOG_NEGLIGIBLE_PART - pair.logPrior;
      PairIntegral integral = pair.look.rough(negligible);
      if (pair.logPrior + integral.logIntegral() > logTotal + LOG_MATTERS) {
        integral = pair.look.fine(negligible);
      }
      logLeftOut = logSum(logLeftOut, pair.logPrior + integral.logDropped());
      if (!integral.isLeftOut()) {
        weighed.add(new State(new int[] {pair.one, pair.other}, pair.logPrior, integral));
        logTotal = logSum(logTotal, pair.logPrior + integral.logIntegral());
      }
    }
    return logLeftOut;
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
    return states.size();
  }

  public int unexplainedState() {
    return states.size() - 1;
  }

  /** The places of the faults that are there in a state. */
  public int[] faultsOf(int state) {
    return states.get(state).faults;
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
    return states.get(state).integral.distribution(faultsOf(state)[0] == fault ? 0 : 1);
  }

  public double logPrior(int state) {
    return states.get(state).logPrior;
  }

  /** Prior times likelihood of a state, as a natural logarithm. */
  public double logWeight(int state) {
    return states.get(state).logWeight();
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
    for (double[] severity : states.get(state).integral.nodes(count)) {
      nodes.add(severities(state, severity));
    }
    return nodes;
  }

  private double[] severities(int state, double[] ofPresent) {
    double[] all = readings.none();
    for (int i = 0; i < ofPresent.length; i++) {
      all[faultsOf(state)[i]] = ofPresent[i];
    }
    return all;
  }

  /** The forecast of the readings in a state at its likeliest severity. */
  public double[] likeliestForecast(int state) {
    return readings.forecast(severities(state, states.get(state).integral.mode()));
  }

  /** The natural logarithm of the likelihood of each reading, whatever the others say. */
  public double[] logAlone(int state) {
    double[] ofEach = new double[readings.count()];
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = states.get(state).integral.logAlone(k);
    }
    return ofEach;
  }
}
