package kelter.electrical.heater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.check.Limits;
import kelter.core.law.PowerInputBand;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.core.source.Standing;
import kelter.electrical.heater.AlloyResistance.Alloy;
import kelter.electrical.heater.HeaterConnection.Connection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeaterTest {

  /**
   * IEC 60335-1, clause 10, Table 1 (text of IEC 335-1:1991 / GOST R MEK 335-1-94): arithmetic on
   * its rows, the edges included. Exact to rounding.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 0, 24",
    "25, 0, 30",
    "25.1, 22.59, 27.61",
    "150, 135, 165",
    "200, 180, 220",
    "200.1, 180.09, 220.1",
    "300, 270, 320",
    "400, 360, 420",
    "2000, 1800, 2100"
  })
  void inputOfHeatingAppliancesFollowsTheTable(double rated, double low, double high) {
    Limits band = PowerInputBand.heating(rated);
    assertEquals(low, band.low(), 1e-9);
    assertEquals(high, band.high(), 1e-9);
  }

  /** The same table, rows of motor-operated appliances. */
  @ParameterizedTest
  @CsvSource({
    "25, 30",
    "100, 120",
    "300, 360",
    "300.1, 360.1",
    "350, 410",
    "400, 460",
    "1000, 1150"
  })
  void inputOfMotorOperatedAppliancesFollowsTheTable(double rated, double high) {
    assertEquals(high, PowerInputBand.motor(rated).high(), 1e-9);
  }

  /**
   * Arithmetic on Ohm's law and the table above: 2000 W at 230 V is 26.45 ohm, and 2100 W and 1800
   * W are 25.19 and 29.39 ohm. Half a printed digit.
   */
  @Test
  void heaterOfTwoKilowatts() {
    assertEquals(26.45, HeaterResistance.resistance(2000, 230), 0.005);
    assertEquals(25.19, HeaterResistance.band(2000, 230).low(), 0.005);
    assertEquals(29.39, HeaterResistance.band(2000, 230).high(), 0.005);
  }

  @Test
  void computeTellsResistanceAndBand() {
    Computation computation =
        Computation.of(HeaterResistance.calculation(), Map.of("power", "2kW", "voltage", "230V"));
    assertEquals("26.45 ohm", computation.results().get(0).quantity().display());
    assertEquals("25.19 ohm", computation.results().get(1).quantity().display());
    assertEquals("29.39 ohm", computation.results().get(2).quantity().display());
  }

  @Test
  void voltsWherePowerIsExpectedAreRefused() {
    InputException refused =
        assertThrows(
            InputException.class,
            () ->
                Computation.of(
                    HeaterResistance.calculation(), Map.of("power", "230 V", "voltage", "230 V")));
    assertTrue(refused.getMessage().contains("power"), refused.getMessage());
  }

  @Test
  void thereIsNoBandUpTo25Watts() {
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.band(25, 230));
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.band(Double.NaN, 230));
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.resistance(2000, 0));
  }

  /**
   * Arithmetic on Ohm's law: three elements of 52.9 ohm on 230 V take 3 kW side by side and a third
   * of 1 kW one after the other; in star on 400 V the power of delta is three times as much.
   */
  @Test
  void connectionsOfLikeElements() {
    assertEquals(3000, HeaterConnection.power(52.9, 230, Connection.PARALLEL, 3), 1e-9);
    assertEquals(333.3, HeaterConnection.power(52.9, 230, Connection.SERIES, 3), 0.05);
    assertEquals(
        3 * HeaterConnection.power(52.9, 400, Connection.STAR, 3),
        HeaterConnection.power(52.9, 400, Connection.DELTA, 3),
        1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () -> HeaterConnection.power(52.9, 400, Connection.STAR, 2));
  }

  /** Arithmetic on Ohm's law and the mains range of (EU) 2019/2014: 207 V and 253 V. */
  @Test
  void powerGoesWithTheSquareOfTheVoltage() {
    assertEquals(0.81, ResistivePower.power(1, 230, 207), 1e-9);
    assertEquals(1.21, ResistivePower.power(1, 230, 253), 1e-9);
  }

  /** Maker's alloy table of C_t, printed to three decimals. */
  @ParameterizedTest
  @CsvSource({
    "CR20NI80, 100, 1.006",
    "CR20NI80, 500, 1.026",
    "CR20NI80, 800, 1.008",
    "CR15NI60, 300, 1.038",
    "CR15NI60, 1000, 1.095",
    "CR25AL5, 300, 1.008",
    "CR25AL5, 800, 1.040"
  })
  void factorsOfHeatingWire(Alloy alloy, double celsius, double factor) {
    assertEquals(factor, AlloyResistance.factor(alloy, celsius + 273.15), 0.0005);
  }

  @Test
  void wireOutsideTheTableIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> AlloyResistance.factor(Alloy.CR20NI80, 1400));
  }

  /**
   * School problem with a kettle (easyelimu.com): 3 kg from 20 °C to 100 °C, kettle 450 J/K, 3 kW:
   * 348 s with c = 4200 J/(kg K). Tolerance 0.5 %, because c is 4184 here.
   */
  @Test
  void kettleOfThreeKilowatts() {
    assertEquals(348, 80 / HeatUp.rate(3, 3000, 450, 1), 348 * 0.005);
  }

  /**
   * School problem (univerkov.com): 1.5 kg from 20 °C to 100 °C, 2 kW, 84 %: 300 s with c = 4200
   * J/(kg K).
   */
  @Test
  void kettleWithLoss() {
    assertEquals(300, 80 / HeatUp.rate(1.5, 2000, 0, 0.84), 300 * 0.005);
  }

  /** The same two problems read backwards: the rate gives the power. */
  @Test
  void rateGivesThePower() {
    assertEquals(3000, HeatUp.power(3, 80.0 / 348, 450, 1), 3000 * 0.005);
    assertEquals(2000, HeatUp.power(1.5, 80.0 / 300, 0, 0.84), 2000 * 0.005);
  }

  /** IEC 60335-1, clause 10, Table 2, from memory: arithmetic on its rows, the edges included. */
  @ParameterizedTest
  @CsvSource({"0.2, 0, 0.24", "0.5, 0.45, 0.55", "1, 0.9, 1.1", "1.5, 1.35, 1.6", "8, 7.2, 8.4"})
  void currentOfHeatingAppliances(double rated, double low, double high) {
    assertEquals(low, CurrentInputBand.heating(rated).low(), 1e-9);
    assertEquals(high, CurrentInputBand.heating(rated).high(), 1e-9);
  }

  /** The same table, rows of motor-operated appliances. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.24", "1, 1.2", "1.5, 1.8", "1.8, 2.1", "4, 4.6"})
  void currentOfMotorOperatedAppliances(double rated, double high) {
    assertEquals(high, CurrentInputBand.motor(rated).high(), 1e-9);
    assertEquals(0, CurrentInputBand.motor(rated).low(), 0);
  }

  @Test
  void thereIsNoBandWithoutACurrent() {
    assertThrows(IllegalArgumentException.class, () -> CurrentInputBand.heating(0));
    assertThrows(IllegalArgumentException.class, () -> CurrentInputBand.motor(Double.NaN));
  }

  /**
   * Arithmetic on Fourier's law: 2 kW over 200 cm² are 10 W/cm²; 1 mm of 1 W/(m K) makes 100 K of
   * it, compact limestone of 2.2 W/(m K) 45 K.
   */
  @Test
  void scaleMakesTheSheathHotter() {
    assertEquals(100, ScaleOnHeater.rise(2000, 0.02, 1e-3, 1), 1e-9);
    assertEquals(45.5, ScaleOnHeater.rise(2000, 0.02, 1e-3, 2.2), 0.05);
    double[] all = ScaleOnHeater.calculation().law().apply(new double[] {2000, 0.02, 0, 1});
    assertEquals(0, all[0], 0);
    assertEquals(100_000, all[1], 1e-9);
    assertThrows(
        IllegalArgumentException.class, () -> ScaleOnHeater.rise(2000, 0, 1e-3, Double.NaN));
  }

  /** Arithmetic on Ohm's law: two elements of 28.8 ohm, series on 240 V, parallel on 120 V. */
  @Test
  void heaterForTwoVoltages() {
    assertEquals(1000, HeaterConnection.power(28.8, 240, Connection.SERIES, 2), 1e-9);
    assertEquals(1000, HeaterConnection.power(28.8, 120, Connection.PARALLEL, 2), 1e-9);
    assertEquals(250, HeaterConnection.power(28.8, 120, Connection.SERIES, 2), 1e-9);
  }

  /** The project saw the table in a maker's print, and the default conductivity nowhere. */
  @Test
  void noSourceIsMarkedStrongerThanItIs() {
    assertEquals(Standing.SECOND_HAND, AlloyResistance.calculation().source().standing());
    assertEquals(Standing.FROM_MEMORY, ScaleOnHeater.calculation().source().standing());
  }

  /**
   * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Tables A.1 and A.3 at 300 K, from
   * memory: AISI 304 477, cotton 1300, borosilicate glass 835 J/(kg K); polypropylene 1.7 kJ/(kg K)
   * in handbooks of plastics. Within 6 %, which is how far such tables differ.
   */
  @ParameterizedTest
  @CsvSource({"1, 0, 0, 0, 1300", "0, 1, 0, 0, 835", "0, 0, 1, 0, 477", "0, 0, 0, 1, 1700"})
  void specificHeatsAreThoseOfHandbooks(
      double cotton, double crockery, double steel, double plastic, double expected) {
    assertEquals(
        expected, LoadHeatCapacity.capacity(cotton, crockery, steel, plastic), expected * 0.06);
  }

  @Test
  void aLoadAndAMachineAddUp() {
    assertEquals(0, LoadHeatCapacity.capacity(0, 0, 0, 0), 0);
    double[] both = LoadHeatCapacity.calculation().law().apply(new double[] {0, 13, 12.5, 1.2});
    assertEquals(13 * 840 + 12.5 * 500 + 1.2 * 1600, both[0], 1e-9);
    assertThrows(IllegalArgumentException.class, () -> LoadHeatCapacity.capacity(-1, 0, 0, 0));
  }
}
