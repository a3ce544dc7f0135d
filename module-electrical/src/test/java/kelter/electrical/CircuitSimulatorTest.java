package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.electrical.capacitor.CapacitanceFromCurrent;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.heater.HeaterConnection;
import kelter.electrical.heater.HeaterConnection.Connection;
import kelter.electrical.heater.ResistivePower;
import kelter.electrical.protection.LeakageCurrent;
import kelter.electrical.sensor.Divider;
import kelter.electrical.supply.SourceImpedance;
import org.junit.jupiter.api.Test;

/**
 * Laws against ngspice 39, whose results stand beside the netlists in the resource folder {@code
 * circuits}. Tolerances are half of the last digit that it printed, carried through the law.
 */
class CircuitSimulatorTest {

  private static final Map<String, Double> RESULTS = results();

  private static Map<String, Double> results() {
    Map<String, Double> all = new HashMap<>();
    try (InputStream file =
        CircuitSimulatorTest.class.getModule().getResourceAsStream("circuits/results.csv")) {
      List<String> lines =
          new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
      for (String line : lines) {
        String[] cells = line.split(",");
        all.put(cells[0] + " " + cells[1], Double.parseDouble(cells[2]));
      }
      return all;
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static double result(String key) {
    assertTrue(RESULTS.containsKey(key), key);
    return RESULTS.get(key);
  }

  /** heater.cir: 0.4 ohm in the supply, 26.45 ohm, 0.5 MOhm to earth. */
  @Test
  void heaterOnAWeakSupply() {
    double voltage = result("heater.cir heater-voltage");
    double leak = LeakageCurrent.current(500e3, 0, voltage, 50);
    double heater = ResistivePower.power(2000, 230, voltage) / voltage;
    assertEquals(result("heater.cir source-current"), heater + leak, 2.5e-5);
  }

  /**
   * The 0.4 ohm of the same netlist. Effective values of a transient run are good to 2 in 100 000
   * (8.56667 A through 26.4486 ohm are 226.573 V, and it printed 226.577 V): 5 mV over 8.57 A.
   */
  @Test
  void impedanceOfTheWeakSupply() {
    double impedance =
        SourceImpedance.impedance(
            230, result("heater.cir heater-voltage"), result("heater.cir source-current"));
    assertEquals(0.4, impedance, 6e-4);
  }

  /** capacitor.cir: 12 µF at 230 V, 50 Hz. */
  @Test
  void capacitorOnMains() {
    double capacitance =
        CapacitanceFromCurrent.capacitance(result("capacitor.cir current"), 230, 50);
    assertEquals(12e-6, capacitance, 1e-12);
  }

  /** discharge.cir: 1 µF from 2100 V to 50 V through 10 MOhm; its time step is 10 ms. */
  @Test
  void discharge() {
    assertEquals(
        result("discharge.cir time"), CapacitorDischarge.time(1e-6, 10e6, 2100, 50), 0.001);
  }

  /** ntc.cir: 10 kOhm to 5 V, thermistor at 10, 3.602 and 32.65 kOhm. */
  @Test
  void thermistorAtItsControl() {
    assertEquals(10000, Divider.resistance(result("ntc.cir voltage-10k"), 10e3, 5), 0.01);
    assertEquals(3602, Divider.resistance(result("ntc.cir voltage-3602"), 10e3, 5), 0.01);
    assertEquals(32650, Divider.resistance(result("ntc.cir voltage-32650"), 10e3, 5), 0.03);
  }

  /** windings.cir: three elements of 52.9 ohm on 400 V, 1 mOhm in the middle of the net. */
  @Test
  void starAndDelta() {
    double line = Math.sqrt(3) * 230.9401;
    double star = HeaterConnection.power(52.9, line, Connection.STAR, 3);
    double delta = HeaterConnection.power(52.9, line, Connection.DELTA, 3);
    assertEquals(
        result("windings.cir star-current"),
        HeaterConnection.lineCurrent(star, line, Connection.STAR),
        2e-6);
    assertEquals(
        result("windings.cir delta-current"),
        HeaterConnection.lineCurrent(delta, line, Connection.DELTA),
        6e-6);
  }
}
