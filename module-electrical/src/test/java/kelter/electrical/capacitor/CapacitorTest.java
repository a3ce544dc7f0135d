package kelter.electrical.capacitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.source.Standing;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapacitorTest {

  /** Peak of 230 V. */
  private static final double PEAK = 325.27;

  /** Arithmetic on the RC law and the 34 V of IEC 60335-1, 22.5, printed digits. */
  @ParameterizedTest
  @CsvSource({"0.1e-6, 1e6, 0.2258", "0.47e-6, 1e6, 1.0614"})
  void timeToThePlugLimit(double capacitance, double resistance, double seconds) {
    assertEquals(seconds, CapacitorDischarge.time(capacitance, resistance, PEAK, 34), 0.00006);
  }

  /** The same, read as the voltage that is left after 1 s. */
  @ParameterizedTest
  @CsvSource({"0.47e-6, 1e6, 38.74", "1e-6, 1e6, 119.66"})
  void voltageLeftAfterASecond(double capacitance, double resistance, double volts) {
    assertEquals(volts, CapacitorDischarge.voltageAfter(capacitance, resistance, PEAK, 1), 0.006);
  }

  /** ngspice 39 on the netlist discharge.cir: 37.37669 s; its time step is 10 ms. */
  @Test
  void dischargeAgreesWithACircuitSimulator() {
    assertEquals(37.37669, CapacitorDischarge.time(1e-6, 10e6, 2100, 50), 0.001);
  }

  @Test
  void nothingIsLeftToWaitForBelowTheEnd() {
    assertEquals(0, CapacitorDischarge.time(1e-6, 1e6, 20, 34));
    assertThrows(IllegalArgumentException.class, () -> CapacitorDischarge.time(0, 1e6, 325, 34));
    assertThrows(IllegalArgumentException.class, () -> CapacitorDischarge.time(1e-6, 1e6, 325, -1));
  }

  /** Arithmetic on the definition: 16 µF at the peak of 230 V, and 1 µF at 2100 V. */
  @Test
  void storedEnergy() {
    assertEquals(0.8464, StoredEnergy.energy(16e-6, PEAK), 0.0001);
    assertEquals(2.205, StoredEnergy.energy(1e-6, 2100), 1e-9);
  }

  /** Arithmetic on the definition: 16 µF at 50 Hz take 1.1561 A at 230 V. */
  @Test
  void capacitanceFromCurrent() {
    assertEquals(16e-6, CapacitanceFromCurrent.capacitance(1.1561, 230, 50), 1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () -> CapacitanceFromCurrent.capacitance(1.1561, 230, Double.NaN));
  }

  /** Arithmetic on Ohm's law: 325 V over 1 GOhm are 0.325 µA; 1 GOhm and 10 µF are 10 000 s. */
  @Test
  void leakage() {
    double[] all = CapacitorLeakage.calculation().law().apply(new double[] {10e-6, 1e9, 325});
    assertEquals(0.325e-6, all[0], 1e-12);
    assertEquals(10_000, all[1], 1e-6);
    assertThrows(IllegalArgumentException.class, () -> CapacitorLeakage.current(325, Double.NaN));
  }

  /**
   * discharge.cir of ngspice 39: 1 µF with 10 MOhm falls from 2100 V to 50 V in 37.37669 s; the
   * time constant of 10 s is arithmetic on it: 37.37669 / ln 42.
   */
  @OutsideCheck(of = "capacitor-leakage", against = "ngspice 39, discharge.cir")
  @Test
  void timeConstantOfTheCircuitSimulator() {
    double[] all = CapacitorLeakage.calculation().law().apply(new double[] {1e-6, 10e6, 2100});
    assertEquals(37.37669 / Math.log(42), all[1], 0.001);
  }

  /**
   * Makers' figures for aluminium electrolytic capacitors: 2200 µF and 35 V, 770 µA (a maker's
   * answer on leakage over time); 47 µF and 40 V, 18.8 µA; 100 µF and 10 V, 10 µA (answers that
   * work data sheets); 3 µA at least.
   */
  @OutsideCheck(
      of = "capacitor-leakage-limit",
      against = "makers' figures for electrolytic capacitors")
  @ParameterizedTest
  @CsvSource({"2200, 35, 770", "47, 40, 18.8", "100, 10, 10", "1, 10, 3"})
  void leakageLimitOfElectrolytics(double microfarads, double volts, double microamperes) {
    assertEquals(
        microamperes * 1e-6,
        CapacitorLeakageLimit.limit(
            microfarads * 1e-6, volts, CapacitorLeakageLimit.Build.ELECTROLYTIC),
        1e-9);
  }

  /**
   * IEC 60384-14, from memory: 15 000 MOhm, 5000 s. Data sheets of two makers of filter capacitors
   * promise more, 100 000 MOhm up to 0.33 µF and 30 000 s above, and must lie below the limit.
   */
  @OutsideCheck(
      of = "capacitor-leakage-limit",
      against = "IEC 60384-14; data sheets of two makers must lie below",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"0.1, 100e9", "0.33, 100e9", "0.47, 63.83e9", "2.2, 13.64e9"})
  void goodFilmCapacitorsLieBelowTheLimit(double microfarads, double promised) {
    double limit =
        CapacitorLeakageLimit.limit(microfarads * 1e-6, 100, CapacitorLeakageLimit.Build.FILM);
    assertEquals(microfarads > 0.33 ? 5.0 / 30 : 0.15, 100 / promised / limit, 0.0005);
  }

  /**
   * Data sheets of two makers of motor capacitors to IEC 60252-1: 3000 s, and 10 000 MOhm µF. At
   * the limit of the first 5 µF and 100 V leak 100 V / (3000 s / 5 µF) = 0.167 µA; the second lies
   * below it. The 5000 s of filter capacitors would refuse what the first promises.
   */
  @OutsideCheck(
      of = "capacitor-leakage-limit",
      against = "data sheets of two makers of motor capacitors to IEC 60252-1")
  @Test
  void runCapacitorsHaveALimitOfTheirOwn() {
    double limit = CapacitorLeakageLimit.limit(5e-6, 100, CapacitorLeakageLimit.Build.RUN);
    assertEquals(0.1667e-6, limit, 0.0001e-6);
    assertTrue(100 / (10_000 / 5e-6) < limit);
    assertTrue(limit > CapacitorLeakageLimit.limit(5e-6, 100, CapacitorLeakageLimit.Build.FILM));
  }

  /**
   * A textbook's example (studylib.net 18724461, example 17-9): 80.0 µF at 2.50 kV hold 0.200 C and
   * 250 J.
   */
  @OutsideCheck(of = "stored-energy", against = "a textbook's example 17-9 (studylib.net 18724461)")
  @Test
  void energyAndChargeOfATextbook() {
    double[] all = StoredEnergy.calculation().law().apply(new double[] {80e-6, 2500});
    assertEquals(250, all[0], 0.5);
    assertEquals(0.200, all[1], 0.0005);
  }

  /**
   * Run capacitors read under load at 60 Hz, as two pages of air-conditioning technicians work them
   * with the constant 2652: 1.1 A and 383 V are 7.61 µF (prestigeairtx.com, cut and not rounded),
   * 8.3 A and 295.4 V 74.5 µF (hvacrschool.com).
   */
  @OutsideCheck(
      of = "capacitance-from-current",
      against = "prestigeairtx.com and hvacrschool.com, run capacitors under load")
  @ParameterizedTest
  @CsvSource({"1.1, 383, 7.61, 0.01", "8.3, 295.4, 74.5, 0.05"})
  void capacitanceUnderLoad(double amperes, double volts, double microfarads, double tolerance) {
    assertEquals(
        microfarads, 1e6 * CapacitanceFromCurrent.capacitance(amperes, volts, 60), tolerance);
  }

  /** The 34 V a second after unplugging, as two texts cite IEC 60335-1, 22.5 (bbs2.angui.org). */
  @Test
  void endVoltageOfThePlug() {
    assertEquals(34, CapacitorDischarge.EXTRA_LOW, 0);
    assertEquals(Standing.SECOND_HAND, CapacitorDischarge.calculation().source().standing());
  }
}
