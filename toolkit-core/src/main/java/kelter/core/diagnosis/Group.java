package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One fault model, weighed by the readings that it forecasts. Its states are: nothing wrong, each
 * fault by itself, and something that no known fault explains.
 */
final class Group {

  /** The place of the state in which nothing is wrong. */
  static final int HEALTHY = 0;

  /**
   * A reading that the model forecasts.
   *
   * @param question what was measured
   * @param shown the reading as it is told to a person
   * @param likelihood how likely it is for a forecast
   */
  record Item(Question question, String shown, Likelihood likelihood) {}

  private final FaultModel model;
  private final List<Fault> faults;
  private final List<Item> items;
  private final Forecaster forecaster;
  private final double[] logPrior;
  private final double[] logWeight;
  private final SeverityIntegral[] integrals;
  private final ForecastTable[] tables;
  private final Map<Integer, List<Diagnosis.Evidence>> evidence = new HashMap<>();

  Group(FaultModel model, List<Item> items, EngineSettings settings) {
    this.model = model;
    this.faults = model.faults();
    this.items = List.copyOf(items);
    this.forecaster =
        items.isEmpty()
            ? (severity, value, spread) -> {}
            : model.forecaster(items.stream().map(Item::question).toList());
    // Where nothing was read, nothing can be unexplained.
    this.logPrior = priors(faults, items.isEmpty() ? 0 : settings.unexplained());
    this.logWeight = logPrior.clone();
    this.integrals = new SeverityIntegral[faults.size()];
    this.tables = new ForecastTable[faults.size()];
    weigh();
  }

  /** Nothing wrong, each fault by itself, unexplained; more than one fault in a group left out. */
  private static double[] priors(List<Fault> faults, double unexplained) {
    double healthy = 1;
    for (Fault fault : faults) {
      healthy *= 1 - fault.prior();
    }
    double[] prior = new double[faults.size() + 2];
    prior[HEALTHY] = healthy;
    double sum = healthy;
    for (int i = 0; i < faults.size(); i++) {
      double p = faults.get(i).prior();
      prior[i + 1] = healthy * p / (1 - p);
      sum += prior[i + 1];
    }
    double[] log = new double[prior.length];
    for (int i = 0; i < faults.size() + 1; i++) {
      log[i] = Math.log(prior[i] / sum * (1 - unexplained));
    }
    log[prior.length - 1] = Math.log(unexplained);
    return log;
  }

  private void weigh() {
    double[] value = new double[items.size()];
    double[] spread = new double[items.size()];
    logWeight[HEALTHY] += logLikelihood(new double[faults.size()], value, spread);
    List<Likelihood> likelihoods = items.stream().map(Item::likelihood).toList();
    for (int i = 0; i < faults.size(); i++) {
      tables[i] = new ForecastTable(forecaster, faults.size(), i, likelihoods);
      integrals[i] = SeverityIntegral.of(tables[i]::logLikelihood, tables[i].edges());
      logWeight[i + 1] += integrals[i].logIntegral();
    }
    for (Item item : items) {
      logWeight[unexplainedState()] += item.likelihood().logUnexplained();
    }
  }

  private double logLikelihood(double[] severity, double[] value, double[] spread) {
    forecaster.forecast(severity, value, spread);
    double sum = 0;
    for (int k = 0; k < value.length; k++) {
      sum += items.get(k).likelihood().log(value[k], spread[k]);
    }
    return sum;
  }

  FaultModel model() {
    return model;
  }

  List<Item> items() {
    return items;
  }

  int states() {
    return logWeight.length;
  }

  int unexplainedState() {
    return logWeight.length - 1;
  }

  boolean isFault(int state) {
    return state != HEALTHY && state != unexplainedState();
  }

  Fault fault(int state) {
    return faults.get(state - 1);
  }

  Diagnosis.Severity severity(int state) {
    return integrals[state - 1].distribution();
  }

  double logPrior(int state) {
    return logPrior[state];
  }

  /** Prior times likelihood of a state, as a natural logarithm. */
  double logWeight(int state) {
    return logWeight[state];
  }

  /**
   * The severities of all faults in a state, at a few nodes; one node where nothing is to choose.
   */
  List<double[]> nodes(int state, int count) {
    List<double[]> nodes = new ArrayList<>();
    if (!isFault(state)) {
      nodes.add(new double[faults.size()]);
      return nodes;
    }
    for (double s : integrals[state - 1].quantiles(count)) {
      double[] severity = new double[faults.size()];
      severity[state - 1] = s;
      nodes.add(severity);
    }
    return nodes;
  }

  /** What each reading says, by itself, for a state, in bits. */
  List<Diagnosis.Evidence> evidence(int state) {
    return evidence.computeIfAbsent(state, this::weighEach);
  }

  private List<Diagnosis.Evidence> weighEach(int state) {
    List<Diagnosis.Evidence> each = new ArrayList<>();
    double[] value = new double[items.size()];
    double[] spread = new double[items.size()];
    forecaster.forecast(new double[faults.size()], value, spread);
    for (int k = 0; k < items.size(); k++) {
      Item item = items.get(k);
      double healthy = item.likelihood().log(value[k], spread[k]);
      double nats =
          isFault(state)
              ? logAlone(state - 1, k) - healthy
              : state == HEALTHY
                  ? healthy - item.likelihood().logUnexplained()
                  : item.likelihood().logUnexplained() - healthy;
      each.add(
          new Diagnosis.Evidence(
              item.question().component(),
              item.question().observable().id(),
              item.shown(),
              nats / Math.log(2)));
    }
    return each;
  }

  private double logAlone(int fault, int item) {
    return SeverityIntegral.of(s -> tables[fault].logLikelihood(s, item), tables[fault].edges(item))
        .logIntegral();
  }

  /**
   * The squared deviations of the values from a state at its likeliest severity, and their number.
   */
  double[] misfit(int state) {
    double[] severity = new double[faults.size()];
    if (isFault(state)) {
      severity[state - 1] = integrals[state - 1].mode();
    }
    double[] value = new double[items.size()];
    double[] spread = new double[items.size()];
    forecaster.forecast(severity, value, spread);
    double sum = 0;
    int count = 0;
    for (int k = 0; k < value.length; k++) {
      double z = items.get(k).likelihood().deviation(value[k], spread[k]);
      if (!Double.isNaN(z)) {
        sum += z * z;
        count++;
      }
    }
    return new double[] {sum, count};
  }
}
