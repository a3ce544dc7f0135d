package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings that share a quantity, against sums over that quantity that are written out here: given
 * it the readings are independent.
 */
class LinkedTest {

  private static final double SPAN = 500;

  /** A supply whose voltage nobody has measured moves three readings. */
  private record Mains(double[] base, double[] load, double[] spread) implements FaultModel {

    @Override
    public String id() {
      return "mains";
    }

    @Override
    public List<Fault> faults() {
      return List.of(LinearModel.fault("low", 0.1));
    }

    @Override
    public List<SharedQuantity> shared() {
      return List.of(
          new SharedQuantity("voltage", "voltage of the mains", Source.fromMemory("a test")));
    }

    @Override
    public List<Question> questions() {
      List<Question> questions = new ArrayList<>();
      for (int k = 0; k < base.length; k++) {
        questions.add(new Question("part", observable(k), Conditions.NONE));
      }
      return questions;
    }

    @Override
    public Forecaster forecaster(List<Question> asked) {
      int[] place =
          asked.stream()
              .mapToInt(q -> Integer.parseInt(q.observable().id().substring("reading-".length())))
              .toArray();
      return (severity, value, width) -> {
        for (int k = 0; k < place.length; k++) {
          value[k] = base[place[k]] * (1 - 0.2 * severity[0]) + load[place[k]] * severity[1];
          width[k] = spread[place[k]];
        }
      };
    }
  }

  private static Observable observable(int k) {
    return Observable.named("reading-" + k, "reading")
        .quantity(QuantityKind.VOLTAGE, 0, SPAN)
        .by(LinearModel.PROCEDURE);
  }

  /** Readings that are each moved by the voltage in its own measure. */
  private static Mains many(int n) {
    double[] base = new double[n];
    double[] load = new double[n];
    double[] spread = new double[n];
    for (int k = 0; k < n; k++) {
      base[k] = 100 + 5 * k;
      load[k] = 3 + k % 4;
      spread[k] = 1 + k % 3;
    }
    return new Mains(base, load, spread);
  }

  private static final Mains MODEL =
      new Mains(new double[] {100, 200, 50}, new double[] {4, 9, -2}, new double[] {0.5, 2, 1});

  private static Readings readings(double[] y, double[] u, double blunder) {
    return readings(MODEL, y, u, blunder);
  }

  private static Readings readings(Mains model, double[] y, double[] u, double blunder) {
    List<Item> items = new ArrayList<>();
    for (int k = 0; k < y.length; k++) {
      items.add(
          new Item(
              new Question("part", observable(k), Conditions.NONE),
              "",
              Likelihood.value(observable(k), y[k], u[k], blunder),
              Optional.empty()));
    }
    return new Readings(model, items);
  }

  private static double overTheSharedQuantity(double[] y, double[] u, double blunder) {
    return overTheSharedQuantity(MODEL, y, u, blunder);
  }

  private static double overTheSharedQuantity(Mains model, double[] y, double[] u, double blunder) {
    double step = 1e-3;
    double sum = 0;
    for (double z = -10; z <= 10; z += step) {
      double product = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
      for (int k = 0; k < y.length; k++) {
        double sd = Math.sqrt(u[k] * u[k] + model.spread[k] * model.spread[k]);
        double d = (y[k] - model.base[k] - model.load[k] * z) / sd;
        double density = Math.exp(-d * d / 2) / (sd * Math.sqrt(2 * Math.PI));
        product *= (1 - blunder) * density + blunder / SPAN;
      }
      sum += product * step;
    }
    return Math.log(sum);
  }

  @ParameterizedTest
  @CsvSource({
    "104, 209, 48, 0.01",
    "104, 209, 48, 1e-9",
    "96, 209, 48, 0.01",
    "104, 209, 90, 0.01",
    "10, 400, 300, 0.01"
  })
  void agreesWithTheSumOverTheSharedQuantity(double a, double b, double c, double blunder) {
    double[] y = {a, b, c};
    double[] u = {0.3, 1, 0.5};
    Readings readings = readings(y, u, blunder);

    double log = readings.log(readings.forecast(readings.none()));

    assertEquals(overTheSharedQuantity(y, u, blunder), log, 1e-6);
  }

  /** With more than ten readings the integral is Laplace's, and any number may be blunders. */
  @ParameterizedTest
  @CsvSource({
    "11, 0, 0.01",
    "11, 1, 0.01",
    "11, 3, 0.01",
    "20, 0, 0.01",
    "20, 6, 0.01",
    "40, 0, 1e-9",
    "40, 1, 0.01",
    "40, 12, 0.01",
    "40, 39, 0.01"
  })
  void manyReadingsAgreeWithTheSumToo(int n, int blunders, double chance) {
    Mains model = many(n);
    double voltage = 0.8;
    double[] y = new double[n];
    double[] u = new double[n];
    for (int k = 0; k < n; k++) {
      u[k] = 0.5;
      double noise = Math.sin(7.0 * k) * 1.4 * Math.hypot(u[k], model.spread[k]);
      y[k] = n - k <= blunders ? 40 + 10 * k : model.base[k] + model.load[k] * voltage + noise;
    }
    Readings readings = readings(model, y, u, chance);

    double log = readings.log(readings.forecast(readings.none()));

    assertEquals(overTheSharedQuantity(model, y, u, chance), log, 0.05);
  }

  @Test
  void theBoundHolds() {
    for (double a = 80; a < 120; a += 7) {
      for (double b = 150; b < 250; b += 17) {
        Readings readings = readings(new double[] {a, b, 49}, new double[] {0.3, 1, 0.5}, 0.01);
        double[] forecast = readings.forecast(readings.none());
        assertTrue(readings.logBound(new double[][] {forecast}) >= readings.log(forecast) - 1e-12);
      }
    }
  }

  /**
   * Two readings of one thing say little more than one: what the machine itself deviates by is in
   * both. With n readings of error u about a common deviation of spread s, the mean has the
   * variance s2 + u2 / n (JCGM 100:2008, 4.2.3 and 5.2).
   */
  @Test
  void aThingMeasuredTwiceIsNotTwiceTheEvidence() {
    double u = 0.1;
    double once = againstOne(List.of(92.0), u);
    double twice = againstOne(List.of(92.0, 92.0), u);

    double s = MODEL.spread[0];
    double expectedOnce = -Math.pow(8, 2) / 2 / (16 + s * s + u * u);
    double expectedTwice = -Math.pow(8, 2) / 2 / (16 + s * s + u * u / 2);
    assertEquals(expectedOnce, once, 1e-9);
    assertEquals(expectedTwice, twice, 1e-9);
  }

  /** log of the likelihood at 92 V against the one at the forecast of 100 V, for reading 0. */
  private static double againstOne(List<Double> values, double u) {
    return likelihood(values, u) - likelihood(values.stream().map(v -> 100.0).toList(), u);
  }

  private static double likelihood(List<Double> values, double u) {
    List<Item> items = new ArrayList<>();
    for (double value : values) {
      items.add(
          new Item(
              new Question("part", observable(0), Conditions.NONE),
              "",
              Likelihood.value(observable(0), value, u, 1e-300),
              Optional.empty()));
    }
    Readings readings = new Readings(MODEL, items);
    return readings.log(readings.forecast(readings.none()));
  }

  /** Readings that a low mains would explain together are no evidence for a fault. */
  @Test
  void whatIsSharedIsNotCountedTwice() {
    Diagnosis diagnosis =
        new DiagnosisEngine(EngineSettings.USUAL)
            .diagnose(
                LinearModel.job(
                    "weak",
                    List.of(observable(0), observable(1), observable(2)),
                    new double[] {94, 186.5, 53},
                    new double[] {0.3, 1, 0.5}),
                List.of(MODEL));

    assertTrue(diagnosis.faults().get(0).probability() < 0.6, diagnosis.faults().toString());
    assertTrue(diagnosis.basis().suspects().isEmpty());
  }
}
