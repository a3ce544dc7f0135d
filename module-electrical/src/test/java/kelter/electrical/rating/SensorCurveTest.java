package kelter.electrical.rating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The curve of a sensor of which the job has a table. */
class SensorCurveTest {

  private static final Source SOURCE = new Source("made up for tests", Standing.INVENTED);

  /** 10 kOhm at 25 °C and beta 3950 K at 0, 25 and 60 °C: 33.62, 10 and 2.486 kOhm. */
  private static SensorCurve table() {
    double[][] points = {{0, 33_620.7}, {25, 10_000}, {60, 2486.2}};
    List<Curve.Point> all = new ArrayList<>();
    for (double[] point : points) {
      all.add(
          new Curve.Point(
              Quantity.of(point[0], "Cel", QuantityKind.TEMPERATURE),
              Quantity.of(point[1], "Ohm", QuantityKind.RESISTANCE)));
    }
    Component sensor =
        new Component(
            "sensor",
            "temperature-sensor",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of("resistance", new Curve(all)),
            SOURCE);
    return SensorCurve.of(sensor).orElseThrow();
  }

  /**
   * By hand from R = R25 exp(beta (1/T - 1/298.15 K)), between whose points the logarithm is
   * straight over 1/T: 20.17 kOhm at 10 °C, 5.3015 kOhm at 40 °C.
   */
  @ParameterizedTest
  @CsvSource({"0, 33620.7", "10, 20174.6", "25, 10000", "40, 5301.5", "60, 2486.2"})
  void betweenThePointsOfATableAThermistorFollowsItsLaw(double celsius, double ohm) {
    assertEquals(ohm, table().ohm(celsius + 273.15), ohm * 1e-4);
  }

  @Test
  void nothingIsToldOutsideTheTable() {
    assertTrue(Double.isNaN(table().ohm(272.9)));
    assertTrue(Double.isNaN(table().ohm(333.4)));
    assertTrue(Double.isNaN(table().ohm(Double.NaN)));
  }
}
