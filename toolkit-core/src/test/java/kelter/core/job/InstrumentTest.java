package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.job.Instrument.Function;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import org.junit.jupiter.api.Test;

class InstrumentTest {

  private static final Instrument METER =
      new Instrument(
          "meter",
          "",
          List.of(
              range(QuantityKind.RESISTANCE, 2000),
              range(QuantityKind.RESISTANCE, 200),
              range(QuantityKind.VOLTAGE, 600)));

  private static Function range(QuantityKind kind, double end) {
    return new Function(kind, new Accuracy(0.01, 0), end / 2000, end);
  }

  private static double end(QuantityKind kind, double value) {
    return METER.range(kind, value).orElseThrow().end();
  }

  @Test
  void theSmallestRangeThatReachesIsTaken() {
    assertEquals(200, end(QuantityKind.RESISTANCE, 26.4), 0);
    assertEquals(200, end(QuantityKind.RESISTANCE, 200), 0);
    assertEquals(2000, end(QuantityKind.RESISTANCE, 201), 0);
    assertEquals(2000, end(QuantityKind.RESISTANCE, 5000), 0);
    assertEquals(600, end(QuantityKind.VOLTAGE, 230), 0);
  }

  @Test
  void aKindOfTheSameDimensionWillDo() {
    Instrument rule = new Instrument("rule", "", List.of(range(QuantityKind.LENGTH, 2)));
    assertEquals(2, rule.range(QuantityKind.HEAD, 0.6).orElseThrow().end(), 0);
    assertTrue(METER.range(QuantityKind.MASS, 1).isEmpty());
  }

  /** UCUM 2.2: a metre of water is 9.80665 kPa. */
  @Test
  void aGaugeOfPressureTellsAHead() {
    Instrument gauge =
        new Instrument(
            "gauge",
            "",
            List.of(
                new Function(QuantityKind.GAUGE_PRESSURE, new Accuracy(0, 980.665), 0, 98066.5)));
    Function head = gauge.range(QuantityKind.HEAD, 1.5).orElseThrow();
    assertEquals(10, head.end(), 1e-12);
    assertEquals(0.1 / Math.sqrt(3), head.standardUncertainty(1.5), 1e-12);
    assertTrue(gauge.range(QuantityKind.DISTANCE, 1.5).isEmpty());
  }

  @Test
  void anOhmmeterIsNoInsulationTesterAndTheOtherWayRound() {
    Instrument tester =
        new Instrument("tester", "", List.of(range(QuantityKind.INSULATION_RESISTANCE, 2e8)));
    assertTrue(METER.range(QuantityKind.INSULATION_RESISTANCE, 26.4).isEmpty());
    assertTrue(tester.range(QuantityKind.RESISTANCE, 26.4).isEmpty());
  }

  /** JCGM 100:2008, F.2.2.1: a resolution counts as 0.29 of itself: 1 V of 230 V ± 1 %. */
  @Test
  void aRangeIsWorthItsErrorAndItsRounding() {
    Function volts = new Function(QuantityKind.VOLTAGE, new Accuracy(0.01, 0), 1, 600);
    double error = 2.3 / Math.sqrt(3);
    assertEquals(Math.hypot(error, 0.2887), volts.standardUncertainty(230), 1e-4);
  }

  @Test
  void rangesThatAreNoneAreRefused() {
    Accuracy exact = new Accuracy(0, 0);
    assertThrows(
        IllegalArgumentException.class, () -> new Function(QuantityKind.MASS, exact, -1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new Function(QuantityKind.MASS, exact, 0, 0));
  }
}
