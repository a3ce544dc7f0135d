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
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeaterTest {

  /**
   * IEC 60335-1, clause 10, Table 1 (text of IEC 335-1:1991 / GOST R MEK 335-1-94): arithmetic on
   * its rows, the edges included. Exact to rounding.
   */
  @OutsideCheck(
      of = "power-input-band",
      against = "IEC 60335-1, clause 10, Table 1, in the text of GOST R MEK 335-1-94")
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
    Limits band = PowerInputBand.TABLE.heating(rated);
    assertEquals(low, band.low(), 1e-9);
    assertEquals(high, band.high(), 1e-9);
  }

  /** The same table, rows of motor-operated appliances. */
  @OutsideCheck(of = "power-input-band", against = "the same table, motor-operated appliances")
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
    assertEquals(high, PowerInputBand.TABLE.motor(rated).high(), 1e-9);
  }

  /**
   * Arithmetic on the table above, 2100 W and 1800 W; the laws by which it becomes a resistance are
   * held against published figures below. Half a printed digit.
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
  @OutsideCheck(of = "alloy-resistance", against = "a maker's table of C_t")
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
  @OutsideCheck(of = "heat-up-time", against = "school problem, easyelimu.com, within 0.5 %")
  @Test
  void kettleOfThreeKilowatts() {
    assertEquals(348, 80 / HeatUp.rate(3, 3000, 450, 1), 348 * 0.005);
  }

  /**
   * School problem (univerkov.com): 1.5 kg from 20 °C to 100 °C, 2 kW, 84 %: 300 s with c = 4200
   * J/(kg K).
   */
  @OutsideCheck(of = "heat-up-time", against = "school problem, univerkov.com, within 0.5 %")
  @Test
  void kettleWithLoss() {
    assertEquals(300, 80 / HeatUp.rate(1.5, 2000, 0, 0.84), 300 * 0.005);
  }

  /** The same two problems read backwards: the rate gives the power. */
  @OutsideCheck(
      of = "power-from-heating",
      against = "the same two school problems read backwards (easyelimu.com, univerkov.com)")
  @Test
  void rateGivesThePower() {
    assertEquals(3000, HeatUp.power(3, 80.0 / 348, 450, 1), 3000 * 0.005);
    assertEquals(2000, HeatUp.power(1.5, 80.0 / 300, 0, 0.84), 2000 * 0.005);
  }

  /** IEC 60335-1, clause 10, Table 2, from memory: arithmetic on its rows, the edges included. */
  @OutsideCheck(
      of = "current-input-band",
      against = "IEC 60335-1, clause 10, Table 2",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"0.2, 0, 0.24", "0.5, 0.45, 0.55", "1, 0.9, 1.1", "1.5, 1.35, 1.6", "8, 7.2, 8.4"})
  void currentOfHeatingAppliances(double rated, double low, double high) {
    assertEquals(low, CurrentInputBand.TABLE.heating(rated).low(), 1e-9);
    assertEquals(high, CurrentInputBand.TABLE.heating(rated).high(), 1e-9);
  }

  /** The same table, rows of motor-operated appliances. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.24", "1, 1.2", "1.5, 1.8", "1.8, 2.1", "4, 4.6"})
  void currentOfMotorOperatedAppliances(double rated, double high) {
    assertEquals(high, CurrentInputBand.TABLE.motor(rated).high(), 1e-9);
    assertEquals(0, CurrentInputBand.TABLE.motor(rated).low(), 0);
  }

  @Test
  void thereIsNoBandWithoutACurrent() {
    assertThrows(IllegalArgumentException.class, () -> CurrentInputBand.TABLE.heating(0));
    assertThrows(IllegalArgumentException.class, () -> CurrentInputBand.TABLE.motor(Double.NaN));
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
  @OutsideCheck(
      of = "load-heat-capacity",
      against = "Incropera and DeWitt, Tables A.1 and A.3; handbooks of plastics; within 6 %",
      worth = Worth.FROM_MEMORY)
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

  /**
   * A water-heater maker's manual (manualsdump.com 51783, page 3) works 4500 W and 240 V: 12.8 ohm,
   * 18.75 A; a maker of heating elements (ivaldi.fr) three of 1000 W and 230 V side by side: 17.63
   * ohm, one after the other 158.7 ohm. Half of the last printed digit.
   */
  @OutsideCheck(
      of = "heater-resistance",
      against =
          "a water-heater maker's manual (manualsdump.com 51783) and a maker of elements"
              + " (ivaldi.fr)")
  @ParameterizedTest
  @CsvSource({"4500, 240, 12.8, 0.05", "3000, 230, 17.63, 0.005", "333.333, 230, 158.7, 0.05"})
  void resistanceOfHeatersThatMakersPrint(
      double watts, double volts, double ohms, double tolerance) {
    assertEquals(ohms, HeaterResistance.resistance(watts, volts), tolerance);
  }

  /**
   * What others say of heaters for 240 V: 4500 W give 3380 W and 16.25 A on 208 V (a summary of a
   * water heater's label), 1125 W on 120 V (waterheaterrescue.com), 5500 W give 4125 W on 208 V (a
   * label, rounded to three quarters). Within 0.2 %.
   */
  @OutsideCheck(
      of = "power-at-voltage",
      against = "water heaters' labels and waterheaterrescue.com, within 0.2 %")
  @ParameterizedTest
  @CsvSource({"4500, 208, 3380", "4500, 120, 1125", "5500, 208, 4125"})
  void heatersOnAnotherVoltage(double rated, double volts, double watts) {
    assertEquals(watts, ResistivePower.power(rated, 240, volts), 0.002 * watts);
    double[] all = ResistivePower.calculation().law().apply(new double[] {4500, 240, 208});
    assertEquals(16.25, all[1], 0.005);
  }

  /**
   * A maker of heating elements (ivaldi.fr), elements of 1000 W and 230 V, which have 52.9 ohm: two
   * side by side 2000 W, two and three one after the other 500 W and 333 W, three on a net of 400 V
   * in star 3000 W; three of 1000 W and 400 V, which have 160 ohm, there 1000 W.
   */
  @OutsideCheck(of = "heater-connection", against = "a maker of heating elements (ivaldi.fr)")
  @ParameterizedTest
  @CsvSource({
    "52.9, 230, PARALLEL, 2, 2000",
    "52.9, 230, SERIES, 2, 500",
    "52.9, 230, SERIES, 3, 333",
    "52.9, 400, STAR, 3, 3000",
    "160, 400, STAR, 3, 1000"
  })
  void connectionsThatAMakerPrints(
      double ohms, double volts, Connection connection, int elements, double watts) {
    // 400 V is 230 V times the square root of 3 within 0.5 %, and so 1 % of the power.
    double tolerance = connection == Connection.STAR ? 0.01 * watts : 0.5;
    assertEquals(watts, HeaterConnection.power(ohms, volts, connection, elements), tolerance);
  }

  /**
   * School problem (shaalaa.com 24296): coils of 24 ohm on 220 V draw 9.2 A alone, 4.58 A in series
   * and 18.33 A in parallel. Half of the last printed digit.
   */
  @OutsideCheck(of = "heater-connection", against = "school problem, shaalaa.com 24296")
  @ParameterizedTest
  @CsvSource({"PARALLEL, 1, 9.2, 0.05", "SERIES, 2, 4.58, 0.005", "PARALLEL, 2, 18.33, 0.005"})
  void currentsOfTwoCoils(Connection connection, int coils, double amperes, double tolerance) {
    double power = HeaterConnection.power(24, 220, connection, coils);
    assertEquals(amperes, HeaterConnection.lineCurrent(power, 220, connection), tolerance);
  }

  /**
   * Slabs of textbooks: a furnace wall of 0.15 m and 1.7 W/(m K), 0.6 m², 1700 W at 250 K
   * (Incropera and DeWitt, example 1.1, from memory); 0.3048 m and 0.3 W/(m K), 492.13 W/m² at 500
   * K (enggcyclopedia.com, furnace wall). Printed digits.
   */
  @OutsideCheck(
      of = "scale-on-heater",
      against =
          "worked slabs: enggcyclopedia.com; Incropera and DeWitt, example 1.1, from" + " memory")
  @ParameterizedTest
  @CsvSource({"1700, 0.6, 0.15, 1.7, 250, 0.05", "492.13, 1, 0.3048, 0.3, 500, 0.01"})
  void conductionThroughAPlaneLayer(
      double watts, double area, double thickness, double conductivity, double kelvin, double t) {
    assertEquals(kelvin, ScaleOnHeater.rise(watts, area, thickness, conductivity), t);
  }

  /**
   * Table 2 itself is printed on no page that was found, so that its limits in ampere stay from
   * memory. Its per cents are those of Table 1, of which a text was read: far above the steps both
   * must agree.
   */
  @OutsideCheck(
      of = "current-input-band",
      against =
          "per cents of IEC 60335-1, Table 1, of which a text was read; the limits in"
              + " ampere have none")
  @Test
  void currentAndPowerMayDeviateByTheSameShare() {
    Limits current = CurrentInputBand.TABLE.heating(16);
    Limits power = PowerInputBand.TABLE.heating(3680);
    assertEquals(power.low() / 3680, current.low() / 16, 1e-12);
    assertEquals(power.high() / 3680, current.high() / 16, 1e-12);
    assertEquals(
        PowerInputBand.TABLE.motor(3680).high() / 3680,
        CurrentInputBand.TABLE.motor(16).high() / 16,
        1e-12);
  }

  /** IAPWS R6-95 at 0.1 MPa: 10, 20, 40, 60, 80 °C, by a program that implements it. */
  @ParameterizedTest
  @ValueSource(doubles = {4195.16, 4184.06, 4179.42, 4184.96, 4196.76})
  void heatCapacityOfWater(double expected) {
    assertEquals(expected, HeatUp.WATER_HEAT_CAPACITY, 0.004 * expected);
  }

  /** IEC 60335-1, clause 10, Table 1: the rows end with 25 W, up to which there is no lower end. */
  @Test
  void exactlyTwentyFiveWattsHaveNoBandOfResistance() {
    assertThrows(IllegalArgumentException.class, () -> HeaterResistance.band(25, 230));
    assertTrue(HeaterResistance.band(25.1, 230).high() < Double.POSITIVE_INFINITY);
  }
}
