package kelter.electrical.heater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.check.Limits;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.electrical.heater.AlloyResistance.Alloy;
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
    "150, 135, 165",
    "200, 180, 220",
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
  @CsvSource({"25, 30", "100, 120", "300, 360", "350, 410", "400, 460", "1000, 1150"})
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
        Computation.of(HeaterResistance.CALCULATION, Map.of("power", "2kW", "voltage", "230V"));
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
                    HeaterResistance.CALCULATION, Map.of("power", "230 V", "voltage", "230 V")));
    assertTrue(refused.getMessage().contains("power"), refused.getMessage());
  }

  @Test
  void thereIsNoBandUpTo25Watts() {
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.band(25, 230));
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.band(Double.NaN, 230));
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.resistance(2000, 0));
  }

  /**
   * ngspice 39 on the netlist heater.cir: 226.577 V at 26.45 ohm beside a leak of 0.5 MOhm draw
   * 8.56667 A. The leak by Ohm's law is 0.453 mA. Half of the last digits printed: 0.5 mV at 26.45
   * ohm and 5 uA.
   */
  @Test
  void currentAtTheVoltageThatIsThereAgreesWithACircuitSimulator() {
    double current = ResistivePower.power(2000, 230, 226.577) / 226.577;
    assertEquals(8.56667, current + 226.577 / 500e3, 2.5e-5);
  }

  /**
   * ngspice 39 on the netlist windings.cir: an element of 52.9 ohm takes 4.365597 A at 230.9401 V,
   * which is 1 kW at 230 V.
   */
  @Test
  void elementInStarAgreesWithACircuitSimulator() {
    assertEquals(52.9, HeaterResistance.resistance(1000, 230), 1e-9);
    assertEquals(4.365597, ResistivePower.power(1000, 230, 230.9401) / 230.9401, 2e-6);
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
}
