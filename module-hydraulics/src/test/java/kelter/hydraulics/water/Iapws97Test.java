package kelter.hydraulics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class Iapws97Test {

  /** IAPWS R7-97(2012), Table 5, printed to nine digits. */
  @OutsideCheck(of = "water-properties", against = "IAPWS R7-97(2012), Table 5")
  @ParameterizedTest
  @CsvSource({
    "300, 3e6, 0.100215168e-2, 4.17301218e3",
    "300, 80e6, 0.971180894e-3, 4.01008987e3",
    "500, 3e6, 0.120241800e-2, 4.65580682e3"
  })
  void verificationTableOfRegion1(double t, double p, double volume, double heatCapacity) {
    assertEquals(volume, 1 / Iapws97Region1.density(t, p), 0.6e-11);
    assertEquals(heatCapacity, Iapws97Region1.heatCapacity(t, p), 2e-9 * heatCapacity);
  }

  /** IAPWS R7-97(2012), Table 35, printed to nine digits, in MPa. */
  @OutsideCheck(of = "water-properties", against = "IAPWS R7-97(2012), Table 35")
  @ParameterizedTest
  @CsvSource({"300, 0.353658941e-2", "500, 0.263889776e1", "600, 0.123443146e2"})
  void verificationTableOfRegion4(double t, double pressure) {
    assertEquals(pressure * 1e6, Iapws97Region4.vapourPressure(t), 2e-9 * pressure * 1e6);
  }

  /** IAPWS R12-08, Table 4 (factor of the critical point 1), in µPa s, printed to six decimals. */
  @OutsideCheck(of = "water-properties", against = "IAPWS R12-08, Table 4")
  @ParameterizedTest
  @CsvSource({
    "998, 298.15, 889.735100",
    "1200, 298.15, 1437.649467",
    "1000, 373.15, 307.883622",
    "1, 433.15, 14.538324",
    "1000, 433.15, 217.685358"
  })
  void verificationTableOfViscosity(double density, double t, double micro) {
    assertEquals(micro * 1e-6, Iapws2008Viscosity.viscosity(density, t), 0.6e-12);
  }

  /** The library com.hummeling:if97 1.0.5, an implementation of the same formulations. */
  @OutsideCheck(of = "water-properties", against = "library if97 1.0.5")
  @ParameterizedTest
  @ValueSource(doubles = {1, 4, 10, 20, 37, 50, 60, 75, 90, 99})
  void referenceLibrary(double celsius) throws Exception {
    IF97 reference = new IF97(IF97.UnitSystem.SI);
    double t = celsius + 273.15;
    Water water = Water.at(t);
    assertEquals(1 / reference.specificVolumePT(101_325, t), water.density(), 1e-9 * 1000);
    double cp = reference.isobaricHeatCapacityPT(101_325, t);
    assertEquals(cp, water.heatCapacity(), 1e-9 * cp);
    double vapour = reference.saturationPressureT(t);
    assertEquals(vapour, water.vapourPressure(), 1e-9 * vapour);
    double viscosity = reference.dynamicViscosityRhoT(water.density(), t);
    assertEquals(viscosity, water.viscosity(), 1e-9 * viscosity);
  }

  /** IAPWS R6-95 (scientific formulation) at 0.1 MPa, computed with the Python package iapws. */
  @OutsideCheck(of = "water-properties", against = "IAPWS R6-95 by the Python package iapws")
  @ParameterizedTest
  @CsvSource({
    "10, 999.7018",
    "20, 998.2065",
    "40, 992.2158",
    "60, 983.1952",
    "80, 971.7898",
    "90, 965.3090"
  })
  void densityAgreesWithTheScientificFormulation(double celsius, double density) {
    // R7-97 states agreement within 0.003 % in this region.
    assertEquals(density, Water.at(celsius + 273.15).density(), 3e-5 * density);
  }

  /** The CIPM formula, Tanaka et al., Metrologia 38 (2001) 301, as evaluated elsewhere. */
  @Test
  void densityAgreesWithTheFormulaOfMetrology() {
    assertEquals(999.9749, Water.at(277.15).density(), 0.02);
    assertEquals(998.2067, Water.at(293.15).density(), 0.02);
  }
}
