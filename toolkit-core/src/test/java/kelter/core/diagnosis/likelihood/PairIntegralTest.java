package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The integral over two severities, against sums over a fine grid that are written out here from
 * the definition of the integral.
 */
class PairIntegralTest {

  private static final double BLUNDER = 0.01;
  private static final double SPAN = 200;

  private static List<Observable> observables(int count) {
    List<Observable> observables = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      observables.add(
          Observable.named("reading-" + k, "reading")
              .quantity(QuantityKind.RESISTANCE, -100, SPAN - 100)
              .by(LinearModel.PROCEDURE));
    }
    return observables;
  }

  /** Two faults with slopes, readings with the given errors, and a small spread. */
  private static Readings readings(double[][] slope, double[] y, double[] u) {
    List<Observable> observables = observables(y.length);
    double[] spread = new double[y.length];
    java.util.Arrays.fill(spread, 0.01);
    LinearModel model =
        new LinearModel(
            observables,
            new double[y.length],
            slope,
            spread,
            List.of(LinearModel.fault("one", 0.1), LinearModel.fault("two", 0.1)));
    List<Item> items = new ArrayList<>();
    for (int k = 0; k < y.length; k++) {
      items.add(
          new Item(
              new Question("part", observables.get(k), Conditions.NONE),
              "",
              Likelihood.value(observables.get(k), y[k], u[k], BLUNDER),
              Optional.empty()));
    }
    return new Readings(model, items);
  }

  private static PairLook look(Readings readings) {
    return new PairLook(
        readings,
        new PairForecast(
            readings, 0, new ForecastTable(readings, 0), 1, new ForecastTable(readings, 1)));
  }

  private static double onAGrid(double[][] slope, double[] y, double[] u, int steps) {
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      for (int j = 0; j < steps; j++) {
        double s = (i + 0.5) / steps;
        double t = (j + 0.5) / steps;
        double product = 1;
        for (int k = 0; k < y.length; k++) {
          double sd = Math.sqrt(u[k] * u[k] + 0.01 * 0.01);
          double z = (y[k] - slope[0][k] * s - slope[1][k] * t) / sd;
          double density = Math.exp(-z * z / 2) / (sd * Math.sqrt(2 * Math.PI));
          product *= (1 - BLUNDER) * density + BLUNDER / SPAN;
        }
        sum += product;
      }
    }
    return Math.log(sum / steps / steps);
  }

  @ParameterizedTest
  @CsvSource({"1.0, 0.5", "0.3, 0.2", "0.1, 0.3", "0.05, 0.04"})
  void agreesWithAFineGrid(double first, double second) {
    double[][] slope = {{8, -2.4, -0.8}, {1, -1.9, 3}};
    double[] y = {4.1, -2.0, 0.9};
    double[] u = {first, second, first};

    PairIntegral integral = look(readings(slope, y, u)).fine(Double.NEGATIVE_INFINITY);

    assertEquals(onAGrid(slope, y, u, 3000), integral.logIntegral(), 2e-3);
  }

  @Test
  void theRoughIntegralIsRightToSomePerCent() {
    double[][] slope = {{8, -2.4, -0.8}, {1, -1.9, 3}};
    double[] y = {4.1, -2.0, 0.9};
    double[] u = {0.3, 0.2, 0.3};

    PairIntegral integral = look(readings(slope, y, u)).rough(Double.NEGATIVE_INFINITY);

    assertEquals(onAGrid(slope, y, u, 2000), integral.logIntegral(), 0.1);
  }

  @Test
  void aRidgeAlongTheDiagonalIsNotLost() {
    double[][] slope = {{10}, {10}};
    double[] y = {7.3};
    double[] u = {0.03};

    PairIntegral integral = look(readings(slope, y, u)).fine(Double.NEGATIVE_INFINITY);

    assertEquals(onAGrid(slope, y, u, 6000), integral.logIntegral(), 0.02);
  }

  @ParameterizedTest
  @CsvSource({"4.1, -2.0", "9, 5", "-3, 0", "50, 50", "4.1, 90"})
  void theBoundHolds(double first, double second) {
    double[][] slope = {{8, -2.4}, {1, -1.9}};
    double[] y = {first, second};
    double[] u = {0.2, 0.2};

    PairLook looked = look(readings(slope, y, u));

    double integral = looked.fine(Double.NEGATIVE_INFINITY).logIntegral();
    assertTrue(looked.logBound() >= integral, looked.logBound() + " < " + integral);
  }

  @Test
  void whatIsLeftOutIsWithinItsBound() {
    double[][] slope = {{8, -2.4, -0.8}, {1, -1.9, 3}};
    double[] y = {4.1, -2.0, 0.9};
    double[] u = {0.1, 0.1, 0.1};
    PairLook looked = look(readings(slope, y, u));
    double all = Math.exp(looked.fine(Double.NEGATIVE_INFINITY).logIntegral());

    PairIntegral rough = looked.fine(Math.log(all * 0.01));

    double left = Math.exp(rough.logDropped());
    double kept = rough.isLeftOut() ? 0 : Math.exp(rough.logIntegral());
    assertTrue(left > 0);
    assertTrue(kept <= all * 1.001 && all <= (kept + left) * 1.001, kept + " " + all + " " + left);
  }

  @Test
  void severitiesAreThoseOfTheReadings() {
    double[][] slope = {{10, 0}, {0, 10}};
    PairIntegral integral =
        look(readings(slope, new double[] {4, 7}, new double[] {0.3, 0.5}))
            .fine(Double.NEGATIVE_INFINITY);

    // Well inside the square the severity is normal about the reading over the slope.
    assertEquals(0.4, integral.distribution(0).mean(), 2e-3);
    assertEquals(0.03, integral.distribution(0).sd(), 2e-3);
    assertEquals(0.7, integral.distribution(1).mean(), 2e-3);
    assertEquals(0.05, integral.distribution(1).sd(), 3e-3);
    assertEquals(0.4, integral.mode()[0], 0.02);
    assertEquals(0.7, integral.mode()[1], 0.03);
  }
}
