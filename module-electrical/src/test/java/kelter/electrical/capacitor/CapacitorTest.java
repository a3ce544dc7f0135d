package kelter.electrical.capacitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
}
