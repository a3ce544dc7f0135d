package kelter.electrical.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
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
  @OutsideCheck(
      of = "thermistor-temperature",
      against = "Table C-1 of a probe manual (campbellsci.com)")
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

  /**
   * A thermistor's own table beside its β between 25 °C and 50 °C: Table C-1 of the probe manual
   * named above gives 32650.9 ohm at 0 °C, 55303.9 ohm at -10 °C. Within 1 K, as the law promises.
   */
  @OutsideCheck(
      of = "thermistor-resistance",
      against = "Table C-1 of a probe manual (campbellsci.com), within 1 K")
  @ParameterizedTest
  @CsvSource({"0, 32650.9", "1, 31030.8", "-10, 55303.9", "50, 3601.10"})
  void betaHoldsWithinAKelvinNearItsPoints(double celsius, double ohm) {
    double beta = BetaThermistor.betaOf(9999.99, kelvin(25), 3601.10, kelvin(50));
    BetaThermistor thermistor = new BetaThermistor(9999.99, beta);
    assertEquals(kelvin(celsius), thermistor.temperature(ohm), 1);
    assertEquals(ohm, thermistor.resistance(kelvin(celsius)), 0.06 * ohm);
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
  @OutsideCheck(of = "platinum-resistance", against = "IEC 60751:2008, table of PT100")
  @OutsideCheck(of = "platinum-temperature", against = "IEC 60751:2008, table of PT100")
  @ParameterizedTest
  @CsvSource({
    "-150, 39.72",
    "-100, 60.26",
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

  /**
   * Pressures that others print: of 100 psi on 0.5 V to 4.5 V 2.5 V are 50 psi, of 75 psi on 0 V to
   * 5 V 2.5 V are 37.5 psi (forum.digikey.com, two makers' sensors); of 100 psi on 1 V to 5 V 1.4 V
   * are 10 psi and 4.4 V 85 psi (calculator.academy, table).
   */
  @OutsideCheck(
      of = "sensor-line",
      against = "two makers' sensors (forum.digikey.com) and a table of calculator.academy")
  @ParameterizedTest
  @CsvSource({
    "2.5, 0.5, 4.5, 100, 50",
    "0.5, 0.5, 4.5, 100, 0",
    "2.5, 0, 5, 75, 37.5",
    "1.4, 1, 5, 100, 10",
    "4.4, 1, 5, 100, 85"
  })
  void pressureByVoltage(double volts, double zero, double full, double range, double pressure) {
    assertEquals(pressure, range * SensorLine.share(volts, zero, full), 1e-9);
  }

  @Test
  void aVoltageFarOutsideIsNoShare() {
    assertThrows(IllegalArgumentException.class, () -> SensorLine.share(5, 0.5, 4.5));
    assertThrows(IllegalArgumentException.class, () -> SensorLine.share(1, 2, 2));
  }

  @Test
  void anOpenSensorHasNoResistance() {
    assertThrows(IllegalArgumentException.class, () -> Divider.resistance(5, 10e3, 5));
  }

  /**
   * An encoder's training page (digikey.cn, AMT31): 60 pulses in 10 s with 250 a turn are 1.44 rpm;
   * a tachometer on a motor of six cylinders (corvair.org): 60 Hz with 3 a turn 1200 rpm.
   */
  @OutsideCheck(
      of = "tacho-speed",
      against = "an encoder (digikey.cn, AMT31) and a tachometer (corvair.org)")
  @ParameterizedTest
  @CsvSource({"6, 250, 1.44", "60, 3, 1200"})
  void speedByPulses(double hertz, double pulses, double rpm) {
    assertEquals(rpm, 60 * PulseSensor.rate(hertz, pulses), 1e-9);
  }

  /**
   * A turbine sensor whose maker prints 450 pulses a litre and, in a table (from memory), 32.5 Hz
   * at 240 L/h, 49.3 Hz at 360 L/h, 65.5 Hz at 480 L/h, 90.2 Hz at 720 L/h: within the 10 % that
   * such sensors are sold with.
   */
  @OutsideCheck(
      of = "flow-sensor",
      against = "a maker's table of a turbine sensor, within 10 %",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"32.5, 240", "49.3, 360", "65.5, 480", "90.2, 720"})
  void flowByPulses(double hertz, double litresPerHour) {
    double flow = 3600 * 1000 * PulseSensor.rate(hertz, 450_000);
    assertEquals(litresPerHour, flow, 0.1 * litresPerHour);
  }

  /**
   * A maker's page (flowtek.cn): with 600 pulses a litre the flow in L/min is a tenth of the Hz.
   */
  @OutsideCheck(of = "flow-sensor", against = "a maker's page, flowtek.cn")
  @Test
  void flowIsATenthOfTheFrequency() {
    assertEquals(7.5, 60 * 1000 * PulseSensor.rate(75, 600_000), 1e-9);
  }

  @Test
  void aSensorHasPulses() {
    assertThrows(IllegalArgumentException.class, () -> PulseSensor.rate(75, 0));
  }
}
