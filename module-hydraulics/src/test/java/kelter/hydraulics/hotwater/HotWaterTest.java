package kelter.hydraulics.hotwater;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import kelter.hydraulics.pump.VibrationPump;
import kelter.hydraulics.water.Iapws97Region4;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.NoOutsideCheck;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The laws of hot water against figures worked out elsewhere. */
class HotWaterTest {

  private static final double ZERO = 273.15;
  private static final double L_PER_MIN = 1e-3 / 60;
  private static final double BAR = 1e5;

  /** "Kinds: water-using machines", table IH: L/min = 14.3 kW/K, recomputed there. */
  @OutsideCheck(
      of = "flow-heater",
      against = "table IH of a reference page on water-using machines",
      worth = Worth.RECOMPUTED)
  @ParameterizedTest
  @CsvSource({"3500, 25, 2.0", "8500, 28, 4.3", "21000, 38, 7.9", "24000, 38, 9.0"})
  void flowOfAnInstantaneousHeater(double power, double rise, double expected) {
    double flow = FlowHeater.flow(power, rise, Water.at(ZERO + 10)) / L_PER_MIN;
    assertEquals(expected, flow, 0.06);
  }

  /** By hand: 0.56 of 60 °C and 0.44 of 10 °C: 38 °C. */
  @NoOutsideCheck(
      of = "mixed-water",
      because = "a balance of heat by its definition; worked by hand")
  @Test
  void mixed() {
    assertEquals(ZERO + 38, MixedWater.of(0.56, ZERO + 60, ZERO + 10), 1e-9);
  }

  /** By hand: 50 e^-0.2 = 40.94; after one volume 50/e = 18.39. */
  @NoOutsideCheck(
      of = "stirred-store",
      because = "an exponential by its definition; worked by hand")
  @ParameterizedTest
  @CsvSource({"0, 60", "0.2, 50.94", "1, 28.39"})
  void stirred(double drawn, double expected) {
    assertEquals(ZERO + expected, StirredStore.outlet(drawn, ZERO + 60, ZERO + 10), 0.005);
  }

  /** Table SH: from 10 °C to 60 °C 1.7 %: 1.3 L of 80, 3.2 L of 189. */
  @OutsideCheck(
      of = "thermal-expansion",
      against = "table SH of a reference page on water-using machines",
      worth = Worth.RECOMPUTED)
  @ParameterizedTest
  @CsvSource({"80, 1.3", "189, 3.2"})
  void expansion(double litres, double expected) {
    double share = ThermalExpansion.share(Water.at(ZERO + 10), Water.at(ZERO + 60));
    assertEquals(0.017, share, 0.0005);
    assertEquals(expected, litres * share, 0.06);
  }

  /** Specific volumes of the library if97 1.0.5 at the pressure of the air. */
  @OutsideCheck(of = "thermal-expansion", against = "library if97 1.0.5")
  @ParameterizedTest
  @CsvSource({"10, 60", "15, 85"})
  void expansionByTheVolumesOfALibrary(double cold, double hot) throws Exception {
    IF97 reference = new IF97(IF97.UnitSystem.SI);
    double before = reference.specificVolumePT(101_325, ZERO + cold);
    double after = reference.specificVolumePT(101_325, ZERO + hot);
    assertEquals(
        after / before - 1,
        ThermalExpansion.share(Water.at(ZERO + cold), Water.at(ZERO + hot)),
        1e-8);
  }

  /** IAPWS R7-97(2012), Table 36. */
  @OutsideCheck(of = "steam-temperature", against = "IAPWS R7-97(2012), Table 36")
  @ParameterizedTest
  @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
  void boiling(double megapascal, double expected) {
    assertEquals(expected, Iapws97Region4.boilingTemperature(1e6 * megapascal), 1e-6);
  }

  /** Table EM: 1.0 bar gauge 120.5 °C, 1.2 bar 123.5 °C, by Antoine's equation there. */
  @OutsideCheck(
      of = "steam-temperature",
      against = "table EM of a reference page on water-using machines, by Antoine's equation",
      worth = Worth.RECOMPUTED)
  @ParameterizedTest
  @CsvSource({"1.0, 120.5", "1.2, 123.5"})
  void steam(double gauge, double expected) {
    assertEquals(ZERO + expected, SteamTemperature.at(gauge * BAR), 0.35);
  }

  /** Table EM: 500 to 650 mL/min freely and 15 bar at the most give 180 to 260 at 9 bar. */
  @OutsideCheck(
      of = "vibration-pump",
      against = "table EM of a reference page on water-using machines",
      worth = Worth.RECOMPUTED)
  @ParameterizedTest
  @CsvSource({"500, 200", "650, 260"})
  void vibrationPump(double free, double expected) {
    VibrationPump pump = new VibrationPump(free, 15 * BAR);
    assertEquals(expected, pump.flow(9 * BAR), 1e-9 * expected);
    assertEquals(0, pump.flow(16 * BAR));
  }

  /** By hand: 1 - Q/2 = Q² / 2 is met at Q = 1: what the opening takes, the pump gives. */
  @Test
  void vibrationPumpAgainstAnOpening() {
    assertEquals(1, new VibrationPump(2, 1).through(0.5), 1e-12);
  }
}
