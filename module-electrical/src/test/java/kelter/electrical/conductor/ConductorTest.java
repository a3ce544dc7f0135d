package kelter.electrical.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.law.CopperResistance;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.electrical.conductor.ConductorResistance.Build;
import kelter.electrical.conductor.TemperatureRise.Metal;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorTest {

  private static double kelvin(double celsius) {
    return celsius + 273.15;
  }

  /**
   * Factors by which a reading is multiplied to get the one at 20 °C, table in the annex of IEC
   * 60228 as a cable maker prints it. That table is made with 0.004 1/K, so 0.5 %.
   */
  @OutsideCheck(
      of = "copper-resistance",
      against = "IEC 60228, annex, as a cable maker prints it, within 0.5 %")
  @ParameterizedTest
  @CsvSource({
    "5, 1.064",
    "10, 1.042",
    "30, 0.962",
    "40, 0.926",
    "60, 0.862",
    "70, 0.833",
    "90, 0.781"
  })
  void copperByTemperature(double celsius, double factor) {
    assertEquals(factor, CopperResistance.at(1, kelvin(celsius), kelvin(20)), 0.005 * factor);
  }

  /**
   * Copper of 1 mm² is 17.241 ohm/km (IEC 60028, the resistivity seen as 1.724e-6 ohm cm in a
   * handbook): half a printed digit.
   */
  @Test
  void resistivityOfCopper() {
    assertEquals(1.724e-8, CopperResistance.RESISTIVITY, 0.0005e-8);
  }

  /** Arithmetic on IEC 60335-1, 11.8, with k = 234.5 (copper) and 225 (aluminium). */
  @ParameterizedTest
  @CsvSource({
    "20, 25, 20, 24, COPPER, 59.625",
    "20, 25, 20, 20, COPPER, 63.625",
    "20, 25, 20, 20, ALUMINIUM, 61.25",
    "2.00, 2.28, 20, 20, COPPER, 35.63"
  })
  void riseByResistance(
      double before, double after, double t1, double t2, Metal metal, double rise) {
    assertEquals(rise, TemperatureRise.rise(before, after, kelvin(t1), kelvin(t2), metal), 0.005);
  }

  /**
   * IEC 60034-1 has 235 where IEC 60335-1 has 234.5 (both seen): 63.75 K against 63.625 K for the
   * same readings, so the two must not be mixed up.
   */
  @Test
  void theConstantIsTheOneForAppliances() {
    double rise = TemperatureRise.rise(20, 25, kelvin(20), kelvin(20), Metal.COPPER);
    assertTrue(Math.abs(rise - 63.75) > 0.1);
  }

  /** IEC 60228, Tables 1 to 3, as cable makers print them: Ohm/km, exact. */
  @OutsideCheck(
      of = "conductor-resistance",
      against = "IEC 60228, Tables 1 to 3, as cable makers print them")
  @ParameterizedTest
  @CsvSource({
    "0.5, SOLID, 36.0",
    "0.75, SOLID, 24.5",
    "1.0, SOLID, 18.1",
    "1.5, SOLID, 12.1",
    "2.5, SOLID, 7.41",
    "4, SOLID, 4.61",
    "6, SOLID, 3.08",
    "10, SOLID, 1.83",
    "0.5, FLEXIBLE, 39.0",
    "0.75, FLEXIBLE, 26.0",
    "1.0, FLEXIBLE, 19.5",
    "1.5, FLEXIBLE, 13.3",
    "2.5, FLEXIBLE, 7.98",
    "4, FLEXIBLE, 4.95",
    "6, FLEXIBLE, 3.30",
    "10, FLEXIBLE, 1.91"
  })
  void conductorsOfTheTables(double section, Build build, double perKilometre) {
    assertEquals(perKilometre, ConductorResistance.at20(1000, section * 1e-6, build), 1e-9);
  }

  /** Arithmetic on IEC 60228, Table 3: 3 m of 0.75 mm² and 5 m of 1.5 mm². */
  @Test
  void earthCoreOfACord() {
    assertEquals(0.078, ConductorResistance.at20(3, 0.75e-6, Build.FLEXIBLE), 0.0005);
    assertEquals(0.0665, ConductorResistance.at20(5, 1.5e-6, Build.FLEXIBLE), 0.00005);
  }

  @Test
  void aSectionBesideTheTableIsRefusedWithTheTable() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> ConductorResistance.at20(5, 1.2e-6, Build.FLEXIBLE));
    assertTrue(refused.getMessage().contains("1.2 mm2"), refused.getMessage());
    assertTrue(refused.getMessage().contains("1.5"), refused.getMessage());
  }

  /**
   * NBS Handbook 100 as wire makers print it: Ohm per 1000 ft at 20 °C, half a printed digit;
   * number 10 from memory.
   */
  @OutsideCheck(
      of = "wire-gauge",
      against = "NBS Handbook 100 as wire makers print it; number 10 from memory")
  @ParameterizedTest
  @CsvSource({
    "10, 0.9989, 0.00005",
    "12, 1.588, 0.0005",
    "14, 2.525, 0.0005",
    "16, 4.016, 0.0005",
    "18, 6.385, 0.0005",
    "20, 10.15, 0.005",
    "22, 16.14, 0.005",
    "24, 25.67, 0.005",
    "28, 64.90, 0.005",
    "30, 103.2, 0.05"
  })
  void wireByGauge(double gauge, double perThousandFeet, double tolerance) {
    assertEquals(perThousandFeet, WireGauge.resistancePerLength(gauge) * 304.8, tolerance * 1.2);
  }

  @Test
  void leadsAreTakenOff() {
    Computation computation =
        Computation.of(LeadNull.calculation(), Map.of("reading", "26.8 ohm", "leads", "0.4 ohm"));
    assertEquals("26.4 ohm", computation.results().get(0).quantity().display());
    assertThrows(
        InputException.class,
        () ->
            Computation.of(LeadNull.calculation(), Map.of("reading", "0.4 ohm", "leads", "9 ohm")));
    assertThrows(IllegalArgumentException.class, () -> LeadNull.between(Double.NaN, 0));
  }

  /**
   * A worked problem (physicsforums.com 381286), copper with 1/234.5 for each kelvin at 0 °C: 80
   * ohm at 20 °C and 100 ohm after four hours are 63.63 K; it computes with 0.004264: 0.01 K.
   */
  @OutsideCheck(of = "temperature-rise", against = "worked problem, physicsforums.com 381286")
  @Test
  void riseOfAWorkedProblem() {
    assertEquals(63.63, TemperatureRise.rise(80, 100, kelvin(20), kelvin(20), Metal.COPPER), 0.01);
  }

  /**
   * Coefficient of the international standard of annealed copper: 3930 ppm/K at 20 °C (manual of a
   * resistance meter, manualshive.com 2137367, appendix 4); 58 m/(ohm mm²) and 3.93e-3 1/K (a
   * handbook of power engineering, page 970).
   */
  @OutsideCheck(
      of = "copper-resistance",
      against = "3930 ppm/K at 20 °C, manual of a resistance meter (manualshive.com 2137367)")
  @Test
  void coefficientOfCopper() {
    assertEquals(3930e-6, CopperResistance.COEFFICIENT, 0.5e-6);
    assertEquals(1e-6 / 58, CopperResistance.RESISTIVITY, 1e-12);
    assertEquals(1.00393, CopperResistance.at(1, kelvin(20), kelvin(21)), 0.5e-5);
  }

  /** ASTM B258, as wire makers print it, from memory: inches of gauges 0, 10, 18, 24, 36, 40. */
  @OutsideCheck(of = "wire-gauge", against = "ASTM B258, diameters", worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({
    "0, 0.3249, 0.00005",
    "10, 0.1019, 0.00005",
    "18, 0.0403, 0.00005",
    "24, 0.0201, 0.00005",
    "36, 0.0050, 0.00005",
    "40, 0.0031, 0.00005"
  })
  void diameterByGauge(double gauge, double inches, double tolerance) {
    assertEquals(inches, WireGauge.diameter(gauge) / 0.0254, tolerance);
  }

  /**
   * A distributor's page on low resistances (forum.digikey.com 4429): a resistor of 20 ohm reads
   * 20.1 ohm with leads of 0.1 ohm.
   */
  @OutsideCheck(
      of = "lead-null",
      against = "a distributor on low resistances, forum.digikey.com 4429")
  @Test
  void leadsOfAPublishedReading() {
    assertEquals(20, LeadNull.between(20.1, 0.1), 1e-9);
  }
}
