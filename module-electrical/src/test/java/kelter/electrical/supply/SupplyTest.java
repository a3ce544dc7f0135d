package kelter.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.electrical.supply.SupplyRange.Range;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyTest {

  /**
   * 230 V ±10 % as in (EU) 2019/2014, Art. 2; EN 50160 as an electricians' forum cites it. ANSI
   * C84.1, 120 V: figure 1 of an electric utility's leaflet on voltage tolerance, which has 126,
   * 114, 108 V in range A and 127, 110, 104 V in range B. Its rows of 208 V and 240 V, from memory,
   * follow from those of 120 V, see below.
   */
  @OutsideCheck(
      of = "supply-range",
      against =
          "(EU) 2019/2014, Art. 2; an electric utility's leaflet on ANSI C84.1; rows of"
              + " 208 V and 240 V follow from 120 V")
  @ParameterizedTest
  @CsvSource({
    "EN_50160_WEEK, 207, 253",
    "EN_50160_ALWAYS, 195.5, 253",
    "ANSI_SERVICE_A, 114, 126",
    "ANSI_SERVICE_B, 110, 127",
    "ANSI_UTILIZATION_A, 108, 126",
    "ANSI_UTILIZATION_B, 104, 127",
    "ANSI_SERVICE_A_240, 228, 252",
    "ANSI_SERVICE_B_240, 220, 254",
    "ANSI_UTILIZATION_A_240, 216, 252",
    "ANSI_UTILIZATION_B_240, 208, 254",
    "ANSI_UTILIZATION_A_208, 187, 218",
    "ANSI_UTILIZATION_B_208, 180, 220"
  })
  void ranges(Range range, double low, double high) {
    assertEquals(low, range.limits().low(), 1e-9);
    assertEquals(high, range.limits().high(), 1e-9);
  }

  /**
   * Kirchhoff's voltage law: 240 V lie between two lines of 120 V in opposite phase, 208 V between
   * two of three in star, which is √3 times one of them. Half a volt.
   */
  @ParameterizedTest
  @CsvSource({
    "ANSI_SERVICE_A, ANSI_SERVICE_A_240, 2",
    "ANSI_SERVICE_B, ANSI_SERVICE_B_240, 2",
    "ANSI_UTILIZATION_A, ANSI_UTILIZATION_A_240, 2",
    "ANSI_UTILIZATION_B, ANSI_UTILIZATION_B_240, 2",
    "ANSI_UTILIZATION_A, ANSI_UTILIZATION_A_208, 1.7320508",
    "ANSI_UTILIZATION_B, ANSI_UTILIZATION_B_208, 1.7320508"
  })
  void linesFollowFromOneLeg(Range leg, Range lines, double factor) {
    assertEquals(leg.limits().low() * factor, lines.limits().low(), 0.5);
    assertEquals(leg.limits().high() * factor, lines.limits().high(), 0.5);
  }

  /** Arithmetic on EN 50160's own percentages of 230 V. */
  @Test
  void percentages() {
    assertEquals(230 * 0.85, Range.EN_50160_ALWAYS.limits().low(), 1e-9);
    assertEquals(230 * 1.10, Range.EN_50160_WEEK.limits().high(), 1e-9);
  }

  /** Arithmetic on Ohm's and Joule's laws: 4 V lost at 8 A are 0.5 ohm and 32 W. */
  @Test
  void heatInAJoint() {
    double[] joint = SourceImpedance.jointCalculation().law().apply(new double[] {4, 8});
    assertEquals(0.5, joint[0], 1e-9);
    assertEquals(32, joint[1], 1e-9);
    assertEquals(0.5, SourceImpedance.impedance(230, 226, 8), 1e-9);
  }

  @Test
  void aNetThatMovedIsRefused() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> SourceImpedance.impedance(228, 231, 8));
    assertTrue(refused.getMessage().contains("231 V"), refused.getMessage());
  }

  /**
   * 80 % of a circuit, as others print it: 1440 W of 15 A and 1920 W of 20 A at 120 V
   * (manhattanreefs.com 9744). A worked example (electoolshq.com): 1200 W at 120 V and a power
   * factor of 0.9 draw 11.1 A. Printed digits.
   */
  @OutsideCheck(
      of = "circuit-load",
      against = "manhattanreefs.com 9744 and a worked example of electoolshq.com")
  @ParameterizedTest
  @CsvSource({"1440, 15", "1920, 20"})
  void shareOfTheCircuit(double watts, double device) {
    double[] load = CircuitLoad.calculation().law().apply(new double[] {watts, 120, device, 1});
    assertEquals(0.80, load[1], 1e-12);
    assertEquals(11.1, CircuitLoad.current(1200, 120, 0.9), 0.05);
  }

  /**
   * NBSIR 76-1011, abstract: as much as 35 W at 15 A and 5 W at 0.8 A. Not used to make the law:
   * NFPA 921, as a fire investigator's page cites it, up to 30 W to 40 W with 15 A to 20 A; 10 %.
   */
  @OutsideCheck(
      of = "glowing-connection",
      against = "NFPA 921 as a fire investigator's page cites it, within 10 %")
  @Test
  void aGlowingJointMakesTensOfWatts() {
    assertEquals(35, GlowingConnection.heat(15), 1e-9);
    assertEquals(5, GlowingConnection.heat(0.8), 1e-9);
    assertEquals(35, (GlowingConnection.heat(15) + GlowingConnection.heat(20)) / 2, 40 * 0.1);
    assertTrue(GlowingConnection.heat(20) < 40 * 1.1);
    assertEquals(GlowingConnection.heat(20), GlowingConnection.heat(60), 0);
    assertTrue(GlowingConnection.heat(1e-5) < 1e-4);
    double[] all = GlowingConnection.calculation().law().apply(new double[] {15});
    assertEquals(35 / 15.0, all[1], 1e-9);
    assertThrows(IllegalArgumentException.class, () -> GlowingConnection.heat(0));
  }
}
