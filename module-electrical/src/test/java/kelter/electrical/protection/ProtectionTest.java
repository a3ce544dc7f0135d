package kelter.electrical.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.safety.ProtectionClass;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Limits of EN 50678:2020: the document was not open, so they are held against its predecessors DIN
 * VDE 0701 and 0702, as manuals of test instruments print them. Limits of IEC 60335-1, 13.2, from
 * texts that cite it.
 */
class ProtectionTest {

  /**
   * DIN VDE 0701, table by length in the manual of a tester (manualsbrain.com 526744, page 15): up
   * to 5 m, 12.5 m and so on; 1 ohm at most.
   */
  @OutsideCheck(
      of = "protective-conductor-limit",
      against = "DIN VDE 0701 in the manual of a tester (manualsbrain.com 526744)")
  @ParameterizedTest
  @CsvSource({
    "1, 0.3",
    "5, 0.3",
    "12.5, 0.4",
    "20, 0.5",
    "27.5, 0.6",
    "35, 0.7",
    "42.5, 0.8",
    "50, 0.9",
    "57.5, 1.0",
    "100, 1.0"
  })
  void protectiveConductorByLength(double length, double limit) {
    assertEquals(limit, ProtectiveConductorLimit.limit(length, 1.5e-6), 1e-9);
  }

  @Test
  void largerSectionsAreNotCovered() {
    assertThrows(IllegalArgumentException.class, () -> ProtectiveConductorLimit.limit(5, 2.5e-6));
    assertThrows(IllegalArgumentException.class, () -> ProtectiveConductorLimit.limit(0, 1.5e-6));
  }

  /** That table gives 0.4 ohm from 5 m on: between its lengths the rule here is the stricter. */
  @ParameterizedTest
  @CsvSource({"5.1, 0.4", "12, 0.4", "19.9, 0.5", "51, 1.0"})
  void betweenTheLengthsTheRuleIsStricter(double length, double table) {
    double limit = ProtectiveConductorLimit.limit(length, 1.5e-6);
    assertTrue(limit <= table && limit >= table - 0.1 - 1e-9, limit + " ohm");
  }

  /** DIN VDE 0701-1:2000 in the manual of a tester (manualslib.de 255662, page 43). */
  @OutsideCheck(
      of = "insulation-limit",
      against = "DIN VDE 0701-1:2000 in the manual of a tester (manualslib.de 255662)")
  @ParameterizedTest
  @CsvSource({"I, false, 1e6", "I, true, 0.3e6", "II, false, 2e6", "III, false, 0.25e6"})
  void insulationByClass(ProtectionClass protectionClass, boolean heaters, double limit) {
    assertEquals(limit, InsulationLimit.limit(protectionClass, heaters), 1e-6);
  }

  /** By the numeral of IEC 61140 and by the figure that some nameplates have. */
  @ParameterizedTest
  @CsvSource({"I, 1", "II, 2", "III, 0.25", "1, 1", "2, 2", "3, 0.25"})
  void insulationByName(String protectionClass, double megohms) {
    Computation computed =
        Computation.of(InsulationLimit.calculation(), Map.of("class", protectionClass));
    assertEquals(megohms * 1e6, computed.results().get(0).quantity().si(), 1e-6);
  }

  @Test
  void whatIsFromMemorySaysSo() {
    assertTrue(InsulationLimit.SOURCE.display().contains("from memory"));
    assertTrue(ProtectiveConductorLimit.SOURCE.display().contains("from memory"));
  }

  /**
   * IEC 60335-1, 13.2, in the text of GB 4706.1: arithmetic on 0.75 mA/kW with its least and
   * greatest value.
   */
  @OutsideCheck(of = "leakage-limit", against = "IEC 60335-1, 13.2, in the text of GB 4706.1")
  @ParameterizedTest
  @CsvSource({
    "CLASS_I_HEATING, 2000, 1.5",
    "CLASS_I_HEATING, 500, 0.75",
    "CLASS_I_HEATING, 8000, 5",
    "CLASS_I_MOTOR, 0, 3.5",
    "CLASS_I_PORTABLE, 1000, 0.75",
    "CLASS_II, 1000, 0.25",
    "CLASS_0_OR_III, 0, 0.5"
  })
  void leakageInTheTypeTest(LeakageLimit.Build build, double watts, double milliamperes) {
    assertEquals(milliamperes * 1e-3, LeakageLimit.typeTest(build, watts), 1e-9);
  }

  /**
   * DIN VDE 0701-0702 in the manuals of two testers (manualslib.de 762104, page 27; a maker of test
   * boards, page 24): 3.5 mA, heaters above 3.5 kW 1 mA/kW, at most 10 mA; touch current 0.5 mA.
   */
  @OutsideCheck(of = "leakage-limit", against = "DIN VDE 0701-0702 in the manuals of two testers")
  @ParameterizedTest
  @CsvSource({"2000, 3.5", "3500, 3.5", "5000, 5", "12000, 10"})
  void protectiveConductorCurrentAfterRepair(double watts, double milliamperes) {
    assertEquals(milliamperes * 1e-3, LeakageLimit.afterRepair(watts), 1e-9);
    assertEquals(0.5e-3, LeakageLimit.touch(), 1e-12);
  }

  /**
   * Arithmetic on Ohm's law: 230 V over 1 MOhm are 0.23 mA; and on the reactance of a capacitor: 16
   * µF at 50 Hz have 198.94 ohm, 1.1561 A at 230 V.
   */
  @Test
  void leakageThroughInsulationAndFilter() {
    assertEquals(0.23e-3, LeakageCurrent.current(1e6, 0, 230, 50), 1e-9);
    assertEquals(1.1561, LeakageCurrent.current(1e12, 16e-6, 230, 50), 0.00005);
    assertThrows(IllegalArgumentException.class, () -> LeakageCurrent.current(0, 0, 230, 50));
  }

  /**
   * UL 8750, 8.7.1, as cited: 0.5 MIU for two-wire and for grounded portable units, 0.75 MIU for
   * grounded stationary or fixed units; 1 MIU is 1 mA at the frequency of the mains. UL 859, 57.1,
   * and UL 507, 42.1, as test reports cite them: 0.1 ohm.
   */
  @OutsideCheck(
      of = "north-american-limit",
      against = "UL 8750, UL 859 and UL 507, as others cite them")
  @Test
  void northAmericanLimits() {
    assertEquals(0.5e-3, NorthAmericanLimit.leakage(NorthAmericanLimit.Build.TWO_WIRE), 1e-12);
    assertEquals(
        0.5e-3, NorthAmericanLimit.leakage(NorthAmericanLimit.Build.GROUNDED_PORTABLE), 1e-12);
    assertEquals(
        0.75e-3, NorthAmericanLimit.leakage(NorthAmericanLimit.Build.GROUNDED_STATIONARY), 1e-12);
    assertEquals(0.1, NorthAmericanLimit.bonding(), 1e-12);
    assertTrue(NorthAmericanLimit.calculation().source().display().contains("second-hand"));
  }

  /**
   * UL 943, class A, as cited: (20/I)^1.43 from 6 mA to 264 mA, and not more than 25 ms at its end;
   * one second at 20 mA is arithmetic on it. The note in NFPA 70: not below 4 mA, at 6 mA it must.
   */
  @OutsideCheck(
      of = "ground-fault-interrupter",
      against = "UL 943, class A, and NFPA 70, as others cite them")
  @Test
  void groundFaultInterrupter() {
    assertEquals(0.025, GroundFaultInterrupter.time(264e-3), 0.0005);
    assertEquals(1, GroundFaultInterrupter.time(20e-3), 1e-9);
    assertEquals(
        GroundFaultInterrupter.Answer.MUST_NOT_TRIP, GroundFaultInterrupter.answer(3.9e-3));
    assertEquals(GroundFaultInterrupter.Answer.MAY_TRIP, GroundFaultInterrupter.answer(5e-3));
    assertEquals(GroundFaultInterrupter.Answer.MUST_TRIP, GroundFaultInterrupter.answer(6e-3));
    assertThrows(IllegalArgumentException.class, () -> GroundFaultInterrupter.time(5e-3));
    assertThrows(IllegalArgumentException.class, () -> GroundFaultInterrupter.time(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> GroundFaultInterrupter.answer(Double.NaN));
  }
}
