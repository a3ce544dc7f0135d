package kelter.core.diagnosis.likelihood;

import java.util.Arrays;

/**
 * The forecasts for two faults together: what each does by itself, added on the scales of the
 * observables, and what they do to each other beyond that. The latter is tabled on a grid of three
 * by three severities and runs in parabolas between; where a forecast asked for between the points
 * is off by more than a part of a standard deviation, the grid is made finer, up to nine by nine.
 */
final class PairForecast {

  private static final int COARSEST = 2;
  private static final int FINEST = 8;

  /** By how many standard deviations a forecast may be off between the points. */
  private static final double CLOSE = 0.5;

  /** Below this many standard deviations there is no interaction. */
  private static final double NOTHING = 1e-3;

  private final Readings readings;
  private final int one;
  private final int other;
  private final ForecastTable tableOne;
  private final ForecastTable tableOther;
  private final double[] healthy;
  private final double[] severities;
  private final double[] least;
  private final double[] most;
  private final double[][] root;
  private int pieces = COARSEST;
  private double[][] interaction;
  private boolean interacts;

  PairForecast(
      Readings readings, int one, ForecastTable tableOne, int other, ForecastTable tableOther) {
    this.readings = readings;
    this.one = one;
    this.other = other;
    this.tableOne = tableOne;
    this.tableOther = tableOther;
    this.severities = readings.none();
    this.healthy = readings.healthy();
    this.least = new double[healthy.length];
    this.most = new double[healthy.length];
    this.interaction = coarse();
    this.root = limits();
  }

  /** The forecasts at three by three severities, those of the second fault running fastest. */
  double[][] root() {
    return root;
  }

  /**
   * The interaction at three by three severities. Two faults that do nothing to each other where
   * both are half there, nor where both are full, are taken to do nothing at all.
   */
  private double[][] coarse() {
    double[][] known = new double[(COARSEST + 1) * (COARSEST + 1)][];
    known[place(1, 1)] = interaction(Readings.HALF, Readings.HALF);
    known[place(2, 2)] = interaction(1, 1);
    interacts = known[place(1, 1)] != null || known[place(2, 2)] != null;
    for (int i = 0; interacts && i <= COARSEST; i++) {
      for (int j = 0; j <= COARSEST; j++) {
        if (i != j || i == 0) {
          known[place(i, j)] = interaction(i * Readings.HALF, j * Readings.HALF);
        }
      }
    }
    return known;
  }

  /** The interaction on the grid as it is now; that of a grid of half as many pieces is known. */
  private double[][] finer(double[][] coarser) {
    int side = pieces + 1;
    double[][] grid = new double[side * side][];
    interacts = false;
    for (int i = 0; i < side; i++) {
      for (int j = 0; j < side; j++) {
        boolean known = i % 2 == 0 && j % 2 == 0;
        grid[place(i, j)] =
            known
                ? coarser[i / 2 * (pieces / 2 + 1) + j / 2]
                : interaction((double) i / pieces, (double) j / pieces);
        interacts |= grid[place(i, j)] != null;
      }
    }
    return grid;
  }

  /** The place of a point of the grid. */
  private int place(int first, int second) {
    return first * (pieces + 1) + second;
  }

  /** Null where there is none. */
  private double[] interaction(double first, double second) {
    if (first == 0 && tableOne.startsHealthy() || second == 0 && tableOther.startsHealthy()) {
      return null;
    }
    double[] exact = exact(first, second);
    double[] interaction = new double[readings.withoutLoads()];
    boolean any = false;
    for (int k = 0; k < interaction.length; k++) {
      interaction[k] = exact[k] - sum(first, second, k);
      double sd = readings.ownDeviation(exact, k % readings.count());
      any |= Math.abs(interaction[k]) > NOTHING * sd;
    }
    return any ? interaction : null;
  }

  private double[] exact(double first, double second) {
    severities[one] = Math.max(ForecastTable.LEAST, first);
    severities[other] = Math.max(ForecastTable.LEAST, second);
    return readings.forecastWithoutLoads(severities);
  }

  private double sum(double first, double second, int column) {
    return tableOne.at(first)[column] + tableOther.at(second)[column] - healthy[column];
  }

  /** Finds the limits, and returns the forecasts at all points of the grid. */
  private double[][] limits() {
    double[][] grid = new double[(pieces + 1) * (pieces + 1)][];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int i = 0; i <= pieces; i++) {
      for (int j = 0; j <= pieces; j++) {
        double[] forecast = unlimited((double) i / pieces, (double) j / pieces);
        grid[place(i, j)] = forecast;
        for (int k = 0; k < forecast.length; k++) {
          least[k] = forecast[k] < least[k] ? forecast[k] : least[k];
          most[k] = forecast[k] > most[k] ? forecast[k] : most[k];
        }
      }
    }
    return grid;
  }

  /** Makes the grid finer until forecasts between its points are close. */
  void refine() {
    while (pieces < FINEST && !(isCloseAt(0.5, 1.5) && isCloseAt(1.5, 0.5))) {
      pieces *= 2;
      interaction = finer(interaction);
      limits();
    }
  }

  private boolean isCloseAt(double first, double second) {
    double s = first / COARSEST;
    double t = second / COARSEST;
    double[] exact = exact(s, t);
    double[] forecast = at(s, t);
    for (int k = 0; k < readings.withoutLoads(); k++) {
      double sd = readings.ownDeviation(exact, k % readings.count());
      if (!(Math.abs(forecast[k] - exact[k]) <= CLOSE * sd)) {
        return false;
      }
    }
    return true;
  }

  /** The forecast, within what its grid has, so that no spread or chance swings out of bounds. */
  double[] at(double first, double second) {
    double[] forecast = unlimited(first, second);
    for (int k = readings.count(); k < 2 * readings.count(); k++) {
      forecast[k] = Math.max(least[k], Math.min(most[k], forecast[k]));
    }
    for (int k : readings.chances()) {
      forecast[k] = Math.max(least[k], Math.min(most[k], forecast[k]));
    }
    return forecast;
  }

  private double[] unlimited(double first, double second) {
    double[] byOne = tableOne.at(first);
    double[] byOther = tableOther.at(second);
    double[] forecast = new double[healthy.length];
    for (int k = 0; k < forecast.length; k++) {
      forecast[k] = byOne[k] + byOther[k] - healthy[k];
    }
    addInteraction(first, second, forecast);
    return forecast;
  }

  private void addInteraction(double first, double second, double[] forecast) {
    if (!interacts) {
      return;
    }
    int i = Math.min((int) (first * pieces / 2), pieces / 2 - 1);
    int j = Math.min((int) (second * pieces / 2), pieces / 2 - 1);
    double[] s = Parabola.weights(first * pieces / 2 - i);
    double[] t = Parabola.weights(second * pieces / 2 - j);
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        double[] at = interaction[place(2 * i + a, 2 * j + b)];
        double weight = s[a] * t[b];
        for (int k = 0; at != null && weight != 0 && k < at.length; k++) {
          forecast[k] += weight * at[k];
        }
      }
    }
  }
}
