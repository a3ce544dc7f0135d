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

  private final Begun begun;
  private final List<State> states;
  private final double logLeftOut;

  /** What is the same whichever pairs are weighed. */
  private record Begun(
      FaultModel model,
      List<Fault> faults,
      Readings readings,
      double[] prior,
      PriorOdds odds,
      double logExplained,
      ForecastTable[] tables,
      boolean withPairs) {

    /** The pairs of faults that can meet, those that may matter most first. */
    List<Pair> pairs(Outside outside) {
      List<Pair> pairs = new ArrayList<>();
      PairLook look = null; // without readings all pairs look alike
      for (int i = 0; withPairs && i < prior.length; i++) {
        for (int j = i + 1; j < prior.length; j++) {
          if (odds.of(i, j) > 0) {
            if (look == null || readings.count() > 0) {
              look = new PairLook(readings, new PairForecast(readings, i, tables[i], j, tables[j]));
            }
            double log = logExplained + Math.log(odds.of(i, j));
            pairs.add(new Pair(i, j, log, outside.logMost(i, j), outside.logLeast(i, j), look));
          }
        }
      }
      pairs.sort((a, b) -> Double.compare(b.logBound(), a.logBound()));
      return pairs;
    }
  }

  private record State(int[] faults, double logPrior, StateIntegral integral) {

    double logWeight() {
      return logPrior + integral.logIntegral();
    }
  }

  /** A pair of faults that may matter. */
  private record Pair(
      int one, int other, double logPrior, double logMost, double logLeast, PairLook look) {

    /** A bound of its weight in the machine. */
    double logBound() {
      return logPrior + look.logBound() + logMost;
    }
  }

  private Group(Begun begun, List<State> states, double logLeftOut) {
    this.begun = begun;
    this.states = List.copyOf(states);
    this.logLeftOut = logLeftOut;
  }

  /**
   * Weighs nothing wrong, each fault by itself, and what no known fault explains. Pairs have their
   * share of the prior and are not weighed yet.
   *
   * @param model the model
   * @param items its readings
   * @param priors the chance of each fault before anything was measured
   * @param brought which of its faults bring others of them; nothing where states hold one fault
   * @param settings what is taken for granted
   */
  public static Group of(
      FaultModel model,
      List<Item> items,
      Priors priors,
      List<Brought> brought,
      EngineSettings settings) {
    List<Fault> faults = model.faults();
    Readings readings = new Readings(model, items);
    double[] prior = new double[faults.size()];
    for (int i = 0; i < prior.length; i++) {
      prior[i] = settings.beside(priors.of(faults.get(i)));
    }
    double unexplained = settings.beside(settings.unexplained());
    boolean withPairs = settings.mostFaults() > 1;
    PriorOdds odds = new PriorOdds(model, prior, withPairs, brought);
    double logExplained = Math.log1p(-unexplained) - Math.log(odds.sum());
    ForecastTable[] tables = new ForecastTable[prior.length];
    Begun begun = new Begun(model, faults, readings, prior, odds, logExplained, tables, withPairs);
    List<State> weighed = new ArrayList<>();
    weighed.add(new State(NONE, logExplained, healthy(readings)));
    for (int i = 0; i < prior.length; i++) {
      tables[i] = new ForecastTable(readings, i);
      double log = logExplained + Math.log(odds.of(i));
      weighed.add(new State(new int[] {i}, log, new StateIntegral.OneFault(tables[i])));
    }
    weighed.add(new State(NONE, Math.log(unexplained), unexplained(readings)));
    return new Group(begun, weighed, Double.NEGATIVE_INFINITY);
  }

  /** The same with the pairs of faults that matter beside the states of this group. */
  public Group withPairs() {
    double logTotal = Double.NEGATIVE_INFINITY;
    for (State state : states) {
      logTotal = logSum(logTotal, state.logWeight());
    }
    return withPairs(new Alone(logTotal));
  }

  /** How much all that lies outside of a group speaks for its states. */
  public interface Outside {

    /** The natural logarithm of the weight of all there is. */
    double logTotal();

    /** The most that it can speak for a pair of faults, as a natural logarithm. */
    double logMost(int one, int other);

    /** The least that it can speak for a pair of faults, as a natural logarithm. */
    double logLeast(int one, int other);
  }

  private record Alone(double logTotal) implements Outside {
    @Override
    public double logMost(int one, int other) {
      return 0;
    }

    @Override
    public double logLeast(int one, int other) {
      return 0;
    }
  }

  /** The same with the pairs of faults that matter in the whole machine. */
  public Group withPairs(Outside outside) {
    if (!begun.withPairs) {
      return this;
    }
    List<State> weighed = new ArrayList<>(states.subList(0, unexplainedState()));
    double logDropped = addPairs(weighed, begun.pairs(outside), outside.logTotal());
    weighed.add(states.get(unexplainedState()));
    return new Group(begun, weighed, logDropped);
  }

  private static StateIntegral healthy(Readings readings) {
    double[] ofEach = new double[readings.count()];
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = readings.log(readings.healthy(), k);
    }
    return new StateIntegral.NoFault(readings.log(readings.healthy()), ofEach);
  }

  private static StateIntegral unexplained(Readings readings) {
    double[] ofEach = new double[readings.count()];
    double sum = 0;
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = Math.log(readings.items().get(k).likelihood().unexplained());
      sum += ofEach[k];
    }
    return new StateIntegral.NoFault(sum, ofEach);
  }

  /**
   * Adds the pairs that matter beside the states weighed before.
   *
   * @return a bound of what was left out, as a natural logarithm
   */
  private static double addPairs(List<State> weighed, List<Pair> pairs, double logAll) {
    double logTotal = logAll;
    double logLeftOut = Double.NEGATIVE_INFINITY;
    for (Pair pair : pairs) {
      if (pair.logBound() < logTotal + LOG_NEGLIGIBLE) {
        logLeftOut = logSum(logLeftOut, pair.logBound() - pair.logMost);
        continue;
      }
      double logFactor = pair.logPrior + pair.logMost;
      double negligible = logTotal + LOG_NEGLIGIBLE_PART - logFactor;
      PairIntegral integral = pair.look.rough(negligible);
      if (logFactor + integral.logIntegral() > logTotal + LOG_MATTERS) {
        integral = pair.look.fine(negligible);
      }
      logLeftOut = logSum(logLeftOut, pair.logPrior + integral.logDropped());
      if (!integral.isLeftOut()) {
        weighed.add(new State(new int[] {pair.one, pair.other}, pair.logPrior, integral));
        logTotal = logSum(logTotal, pair.logPrior + integral.logIntegral() + pair.logLeast);
      }
    }
    return logLeftOut;
  }

  private static double logSum(double a, double b) {
    double top = Math.max(a, b);
    return top == Double.NEGATIVE_INFINITY ? top : top + Math.log1p(Math.exp(-Math.abs(a - b)));
  }

  public FaultModel model() {
    return begun.model;
  }

  public List<Fault> faults() {
    return begun.faults;
  }

  public Readings readings() {
    return begun.readings;
  }

  /** The chance of a fault before anything was measured, what brings it left out. */
  public double prior(int fault) {
    return begun.prior[fault];
  }

  /** The chance of a fault before anything was measured, by itself or beside another. */
  public double priorOf(int fault) {
    return Math.exp(begun.logExplained) * begun.odds.with(fault);
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
   * The shares of the nodes of a state as the readings leave them, 1 in all; one node where there
   * is no severity.
   */
  public double[] shares(int state) {
    return states.get(state).integral.shares();
  }

  /** The severity of one of the faults of a state at one of its nodes. */
  public double severityAt(int state, int node, int fault) {
    return states.get(state).integral.severity(node, faultsOf(state)[0] == fault ? 0 : 1);
  }

  /**
   * The severities of all faults in a state, at a few nodes of equal weight; one node where nothing
   * is to choose.
   *
   * @param shares the shares of all nodes of the state, 1 in all
   */
  public List<double[]> nodes(int state, int count, double[] shares) {
    List<double[]> nodes = new ArrayList<>();
    for (double[] severity : states.get(state).integral.nodes(count, shares)) {
      nodes.add(severities(state, severity));
    }
    return nodes;
  }

  private double[] severities(int state, double[] ofPresent) {
    double[] all = begun.readings.none();
    for (int i = 0; i < ofPresent.length; i++) {
      all[faultsOf(state)[i]] = ofPresent[i];
    }
    return all;
  }

  /** The forecast of the readings in a state at its likeliest severity. */
  public double[] likeliestForecast(int state) {
    return begun.readings.forecast(severities(state, states.get(state).integral.mode()));
  }

  /** The natural logarithm of the likelihood of each reading, whatever the others say. */
  public double[] logAlone(int state) {
    double[] ofEach = new double[begun.readings.count()];
    for (int k = 0; k < ofEach.length; k++) {
      ofEach[k] = states.get(state).integral.logAlone(k);
    }
    return ofEach;
  }
}
