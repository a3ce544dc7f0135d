package kelter.electrical.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensorTest {

  /** Coefficients of a 10 kOhm thermistor in a probe manual (campbellsci.com). */
  private static final SteinhartHart PROBE =
      new SteinhartHart(1.129241e-3, 2.341077e-4, 8.775468e-8);

  private static double kelvin(double celsius) {
    return celsius + 273.15;
  }

  /** Table C-1 of the same manual; the manual's own fit error is below 0.0025 K. */
  @ParameterizedTest
  @CsvSource({"-40, 336103.2", "-20, 97006.9", "-10, 55303.9", "0, 32650.9", "1, 31030.8"})
  void thermistorTable(double celsius, double ohm) {
    assertEquals(kelvin(celsius), PROBE.temperature(ohm), 0.003);
    assertEquals(ohm, PROBE.resistance(kelvin(celsius)), 2e-4 * ohm);
  }

  /** Three points of the table give the coefficients back, and with them the other points. */
  @Test
  void coefficientsComeFromThreePoints() {
    SteinhartHart fitted =
        SteinhartHart.through(336103.2, kelvin(-40), 97006.9, kelvin(-20), 32650.9, kelvin(0));
    assertEquals(-10, fitted.temperature(55303.9) - 273.15, 0.01);
    assertEquals(1, fitted.temperature(31030.8) - 273.15, 0.01);
  }

  /**
   * Constants between two points, recomputed elsewhere from the probe's equation: 3936.1 K from 25
   * °C and 50 °C, 3976.8 K from 25 °C and 85 °C; here from the table's own resistances.
   */
  @Test
  void betaOfTwoPoints() {
    assertEquals(3936.1, BetaThermistor.betaOf(9999.99, kelvin(25), 3601.10, kelvin(50)), 0.1);
    assertEquals(3891.9, BetaThermistor.betaOf(32650.9, kelvin(0), 3601.10, kelvin(50)), 0.2);
  }

  /** Arithmetic on the definition with 10 kOhm and 3950 K. */
  @ParameterizedTest
  @CsvSource({"0, 33620.6", "40, 5301.5", "50, 3588.2", "60, 2486.2", "85, 1086.7"})
  void thermistorByBeta(double celsius, double ohm) {
    BetaThermistor thermistor = new BetaThermistor(10000, 3950);
    assertEquals(ohm, thermistor.resistance(kelvin(celsius)), 0.06);
    assertEquals(kelvin(celsius), thermistor.temperature(ohm), 0.002);
  }

  /** IEC 60751:2008, table of PT100, to the printed digit. */
  @ParameterizedTest
  @CsvSource({
    "-40, 84.27",
    "-20, 92.16",
    "0, 100.00",
    "10, 103.90",
    "20, 107.79",
    "50, 119.40",
    "60, 123.24",
    "80, 130.90",
    "100, 138.51",
    "150, 157.33",
    "200, 175.86",
    "250, 194.10"
  })
  void platinumTable(double celsius, double ohm) {
    assertEquals(ohm, PlatinumThermometer.resistance(100, kelvin(celsius)), 0.005);
    assertEquals(kelvin(celsius), PlatinumThermometer.temperature(100, ohm), 0.015);
    assertEquals(10 * ohm, PlatinumThermometer.resistance(1000, kelvin(celsius)), 0.05);
  }

  /** IEC 60751, classes at 100 °C: A 0.35 K, B 0.8 K. */
  @Test
  void platinumTolerances() {
    assertEquals(0.35, PlatinumThermometer.toleranceA(kelvin(100)), 1e-9);
    assertEquals(0.8, PlatinumThermometer.toleranceB(kelvin(100)), 1e-9);
  }

  @Test
  void figuresOutsideAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> PlatinumThermometer.resistance(100, kelvin(900)));
    assertThrows(IllegalArgumentException.class, () -> PlatinumThermometer.temperature(100, 5));
    assertThrows(IllegalArgumentException.class, () -> PROBE.temperature(-1));
    assertThrows(IllegalArgumentException.class, () -> PROBE.temperature(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new BetaThermistor(10000, 0));
  }

  /** Arithmetic on the line: 0.5 V to 4.5 V, so that 2.5 V lie in the middle. */
  @Test
  void shareOfTheRange() {
    assertEquals(0.5, SensorLine.share(2.5, 0.5, 4.5), 1e-12);
    assertEquals(0.25, SensorLine.share(1.5, 0.5, 4.5), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> SensorLine.share(5, 0.5, 4.5));
    assertThrows(IllegalArgumentException.class, () -> SensorLine.share(1, 2, 2));
  }

  @Test
  void anOpenSensorHasNoResistance() {
    assertThrows(IllegalArgumentException.class, () -> Divider.resistance(5, 10e3, 5));
  }

  /** Arithmetic: 8 pulses a turn at 2 kHz are 15 000 rpm; 450 pulses a litre at 75 Hz 10 L/min. */
  @Test
  void pulses() {
    assertEquals(15_000, 60 * PulseSensor.rate(2000, 8), 1e-9);
    assertEquals(10, 60 * 1000 * PulseSensor.rate(75, 450_000), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> PulseSensor.rate(75, 0));
  }
}
