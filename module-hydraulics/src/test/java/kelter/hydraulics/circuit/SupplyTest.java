package kelter.hydraulics.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.law.InductionMachine;
import kelter.hydraulics.pump.PumpCurve;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SupplyTest {

  private static final double US_GALLON_PER_MINUTE = 6.30902e-5; // m3/s
  private static final double FOOT = 0.3048; // m
  private static final double SLIP = 0.05;
  private static final PumpMotor INDUCTION = new PumpMotor.Induction(new InductionMachine(SLIP, 2));

  private static final PumpCurve CURVE =
      PumpCurve.through(
          new double[] {0, 200 * US_GALLON_PER_MINUTE, 300 * US_GALLON_PER_MINUTE},
          new double[] {80 * FOOT, 60 * FOOT, 30 * FOOT});

  private static PumpSet pump(PumpMotor motor) {
    return new PumpSet(CURVE, motor, 200 * US_GALLON_PER_MINUTE, 0.5, PumpCondition.GOOD);
  }

  /**
   * General effect of voltage on induction motors, a table that is printed in many handbooks of
   * electric machines (seen at filipinoengineer.com/blog/?p=18077): at 90 % of the voltage the slip
   * rises by 23 % and the greatest torque falls by 19 %, at 110 % it falls by 17 % and rises by 21
   * %. The table takes the torque for a straight line up to rated load; that of a motor which pulls
   * twice its rated torque at most bends a little before, so that its slip changes by up to 6 % of
   * itself more.
   */
  @OutsideCheck(
      of = "pump-with-motor",
      against = "table of the effect of voltage on induction motors, filipinoengineer.com")
  @ParameterizedTest
  @CsvSource({"0.9, 23, -19", "1.1, -17, 21"})
  void voltageAndInduction(double voltage, double slipPercent, double torquePercent) {
    Supply supply = new Supply(1, voltage);
    double slip = 1 - (1 - SLIP) * INDUCTION.speed(0, 1, supply);
    assertEquals(slipPercent, 100 * (slip / SLIP - 1), 6);
    double most = 2 * (1 + torquePercent / 100);
    assertTrue(INDUCTION.speed(0, most - 0.01, supply) > 0);
    assertEquals(0, INDUCTION.speed(0, most + 0.01, supply));
  }

  /** Two poles turn at most 3000 times a minute at 50 Hz and 3600 at 60 Hz: n = 2 f / p. */
  @Test
  void frequencyAndSpeed() {
    Supply sixty = new Supply(60.0 / 50, 1);
    assertEquals(
        3600.0 / 3000, INDUCTION.speed(0, 0, sixty) / INDUCTION.speed(0, 0, Supply.RATED), 1e-12);
    assertEquals(3600.0 / 3000, new PumpMotor.Synchronous(2).speed(0.5, 0, sixty), 1e-12);
  }

  /**
   * A maker's bulletin TIB-33: 200 gpm, 60 ft, 5 bhp at 1700 rpm; at 2000 rpm 235 gpm, 83 ft, 8.1
   * bhp. Here the frequency of a synchronous motor makes the speed.
   */
  @Test
  void affinityOfABulletin() {
    PumpSet fast = pump(new PumpMotor.Synchronous(3)).on(new Supply(2000.0 / 1700, 1));
    OperatingPoint point = fast.atFlow(235.3 * US_GALLON_PER_MINUTE);
    assertEquals(83, point.head() / FOOT, 0.6);
    assertEquals(8.1, 5 * point.shaftPower(), 0.06);
  }

  /** A pump for 60 Hz on 50 Hz: (50/60)² is 0.694 of the head at no flow (affinity laws). */
  @Test
  void sixtyHertzPumpOnFifty() {
    PumpSet slow = pump(new PumpMotor.Synchronous(2)).on(new Supply(50.0 / 60, 1));
    assertEquals(0.694, slow.atFlow(0).head() / CURVE.shutOffHead(), 0.0006);
  }

  /** An inverter makes its own frequency. */
  @Test
  void inverterDoesNotNotice() {
    PumpMotor inverter = new PumpMotor.Inverter(1.2);
    assertEquals(
        inverter.speed(1, 0.5, Supply.RATED), inverter.speed(1, 0.5, new Supply(1.2, 0.9)));
  }

  /**
   * Too little voltage: a synchronous motor of one and a half times its rated torque falls out of
   * step under its rated load below two thirds of the voltage (flux in proportion to voltage).
   */
  @Test
  void lowVoltageStallsASynchronousMotor() {
    PumpMotor motor = new PumpMotor.Synchronous(1.5);
    assertEquals(1, motor.speed(1, 0, new Supply(1, 0.68)));
    assertEquals(0, motor.speed(1, 0, new Supply(1, 0.65)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 8, Double.NaN, Double.POSITIVE_INFINITY, -1})
  void supplyOfAnotherWorldIsRefused(double ratio) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> new Supply(ratio, 1));
    assertTrue(refused.getMessage().startsWith("frequency"), refused.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new Supply(1, ratio));
  }
}
