package kelter.core.diagnosis.likelihood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;

/**
 * All readings that one model forecasts, weighed together against a forecast.
 *
 * <p>A forecast is one array: the value of each reading on the scale of its observable, then the
 * spread of each, then for each shared quantity of the model by how much it moves each value for
 * one standard deviation. Readings that share nothing are weighed one by one; those that do are
 * weighed jointly in {@link Linked}. Not for several threads at once.
 */
public final class Readings {

  /** Below this a product is turned into a logarithm before it underflows. */
  private static final double SMALL = 1e-150;

  private static final double OUT_OF_REACH = 1.01;

  /** A fault that is half there. */
  static final double HALF = 0.5;

  private final List<Item> items;
  private final Likelihood[] likelihood;
  private final Forecaster forecaster;
  private final int faults;
  private final int shared;
  private final double[] value;
  private final double[] spread;
  private final double[] bound;
  private final double[] narrowest;
  private final int[] alone;
  private final List<Linked> linked;
  private final double[] healthy;
  private final int[] chances;

  /** For each fault the forecast where it alone is half there; null where it was not asked for. */
  private final double[][] halfThere;

  public Readings(FaultModel model, List<Item> items) {
    this.items = List.copyOf(items);
    this.likelihood = new Likelihood[items.size()];
    List<Question> questions = new ArrayList<>();
    for (int k = 0; k < likelihood.length; k++) {
      likelihood[k] = items.get(k).likelihood();
      questions.add(items.get(k).question());
    }
    this.faults = model.faults().size();
    this.shared = model.shared().size();
    this.value = new double[items.size()];
    this.spread = new double[items.size()];
    this.bound = new double[items.size()];
    this.narrowest = new double[items.size()];
    this.forecaster =
        items.isEmpty() ? (severity, values, spreads) -> {} : model.forecaster(questions);
    this.halfThere = new double[faults][];
    this.linked = Linked.among(items, shared, movedBy());
    this.healthy = forecast(none());
    boolean[] isChance = new boolean[items.size()];
    boolean[] isAlone = new boolean[items.size()];
    Arrays.fill(isAlone, true);
    for (int k = 0; k < likelihood.length; k++) {
      isChance[k] = likelihood[k] instanceof ChanceLikelihood;
    }
    for (Linked link : linked) {
      for (int member : link.members()) {
        isAlone[member] = false;
      }
    }
    this.chances = places(isChance);
    this.alone = places(isAlone);
  }

  private static int[] places(boolean[] chosen) {
    int[] places = new int[chosen.length];
    int count = 0;
    for (int k = 0; k < chosen.length; k++) {
      if (chosen[k]) {
        places[count++] = k;
      }
    }
    return Arrays.copyOf(places, count);
  }

  /** Which shared quantities move which readings, seen at no fault and at each fault by itself. */
  private boolean[][] movedBy() {
    boolean[][] moved = new boolean[shared][items.size()];
    for (int fault = -1; shared > 0 && fault < faults; fault++) {
      double[] forecast = fault < 0 ? forecast(none()) : halfThere(fault);
      for (int j = 0; j < shared; j++) {
        for (int k = 0; k < items.size(); k++) {
          moved[j][k] |= forecast[load(j, k)] != 0;
        }
      }
    }
    return moved;
  }

  public List<Item> items() {
    return items;
  }

  public int count() {
    return likelihood.length;
  }

  /** No fault, and every shared quantity as usual. */
  public double[] none() {
    return new double[faults + shared];
  }

  /** The forecast if nothing is wrong. */
  double[] healthy() {
    return healthy;
  }

  /** The forecast where one fault alone is half there. */
  double[] halfThere(int fault) {
    if (halfThere[fault] == null) {
      double[] severity = none();
      severity[fault] = HALF;
      halfThere[fault] = forecast(severity);
    }
    return halfThere[fault];
  }

  /** The places of the forecasts that are chances. */
  int[] chances() {
    return chances;
  }

  /** The place in a forecast of what a shared quantity does to a reading. */
  private int load(int quantity, int item) {
    return (2 + quantity) * likelihood.length + item;
  }

  /** The forecast for the severities of all faults, shared quantities as usual. */
  public double[] forecast(double[] severity) {
    double[] forecast = forecastWithoutLoads(severity);
    int n = likelihood.length;
    for (int j = 0; j < shared; j++) {
      severity[faults + j] = 1;
      ask(severity, forecast, load(j, 0));
      severity[faults + j] = 0;
      for (int k = 0; k < n; k++) {
        forecast[load(j, k)] -= forecast[k];
      }
    }
    return forecast;
  }

  /** The same without what the shared quantities do, which takes only one solve. */
  double[] forecastWithoutLoads(double[] severity) {
    int n = likelihood.length;
    double[] forecast = new double[n * (2 + shared)];
    ask(severity, forecast, 0);
    System.arraycopy(spread, 0, forecast, n, n);
    return forecast;
  }

  /** How many figures of a forecast are values and spreads; what is behind them is loads. */
  int withoutLoads() {
    return 2 * likelihood.length;
  }

  private void ask(double[] severity, double[] into, int from) {
    if (likelihood.length == 0) {
      return;
    }
    forecaster.forecast(severity, value, spread);
    for (int k = 0; k < likelihood.length; k++) {
      into[from + k] = likelihood[k].scaled(value[k]);
    }
  }

  /** The natural logarithm of the likelihood of all readings. */
  public double log(double[] forecast) {
    int n = likelihood.length;
    double log = 0;
    double product = 1;
    for (int k : alone) {
      double term = likelihood[k].of(forecast[k], forecast[n + k]);
      if (term < SMALL) {
        log += Math.log(term);
      } else {
        product *= term;
        if (product < SMALL) {
          log += Math.log(product);
          product = 1;
        }
      }
    }
    for (Linked link : linked) {
      log += link.log(forecast);
    }
    return log + Math.log(product);
  }

  /** The natural logarithm of the likelihood of one reading, whatever the others say. */
  public double log(double[] forecast, int item) {
    return Math.log(likelihood[item].of(forecast[item], spread(forecast, item)));
  }

  /** The spread of a forecast by itself, shared quantities included. */
  public double spread(double[] forecast, int item) {
    double variance = square(forecast[likelihood.length + item]);
    for (int j = 0; j < shared; j++) {
      variance += square(forecast[load(j, item)]);
    }
    return Math.sqrt(variance);
  }

  /** The standard deviation by which a reading and its forecast differ when nothing is shared. */
  public double ownDeviation(double[] forecast, int item) {
    return likelihood[item].deviationOf(forecast[likelihood.length + item]);
  }

  /**
   * A bound of the natural logarithm of the likelihood for every forecast whose figures lie between
   * those of the forecasts given. For linked readings, which are N(y1) N(y2 | y1) ... with each
   * conditional density at most that at the peak of the reading's own error, the bound is that of
   * the reading that is farthest off times those peaks.
   */
  public double logBound(double[][] forecasts) {
    int n = likelihood.length;
    for (int k = 0; k < n; k++) {
      limits(forecasts, k);
    }
    double log = 0;
    double product = 1;
    for (int k : alone) {
      product *= bound[k];
      if (product < SMALL) {
        log += Math.log(product);
        product = 1;
      }
    }
    for (Linked link : linked) {
      double peaks = 0;
      double least = 0;
      for (int k : link.members()) {
        double peak = link.logPeak(k, narrowest[k]);
        peaks += peak;
        least = Math.min(least, Math.log(bound[k]) - peak);
      }
      log += peaks + least;
    }
    return log + Math.log(product);
  }

  /** The least and greatest figures of a reading over some forecasts, and what they allow. */
  private void limits(double[][] forecasts, int item) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double narrow = Double.POSITIVE_INFINITY;
    double wide = 0;
    double own = Double.POSITIVE_INFINITY;
    for (double[] forecast : forecasts) {
      double centre = forecast[item];
      double width = forecast[likelihood.length + item];
      own = width < own ? width : own;
      width = shared == 0 ? width : spread(forecast, item);
      low = centre < low ? centre : low;
      high = centre > high ? centre : high;
      narrow = width < narrow ? width : narrow;
      wide = width > wide ? width : wide;
    }
    narrowest[item] = own;
    bound[item] = likelihood[item].bound(low, high, narrow, wide);
  }

  /**
   * Whether a reading is so far from all the forecasts for which a bound was last asked that only a
   * blunder explains it.
   */
  public boolean isOutOfReach(int item) {
    return bound[item] <= OUT_OF_REACH * likelihood[item].blunderTerm();
  }

  /** Where the likelihood has sharp edges: pairs of a reading and what was read. */
  List<Edge> edges(int from, int to) {
    List<Edge> edges = new ArrayList<>();
    for (int k = from; k < to; k++) {
      for (double each : likelihood[k].edges()) {
        edges.add(new Edge(k, each));
      }
    }
    return edges;
  }

  /**
   * A sharp edge of the likelihood.
   *
   * @param item the reading
   * @param at what was read, on the scale of the observable
   */
  record Edge(int item, double at) {}

  private static double square(double x) {
    return x * x;
  }
}
