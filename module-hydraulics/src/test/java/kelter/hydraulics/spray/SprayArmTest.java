package kelter.hydraulics.spray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.hydraulics.water.StandardGravity;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;

class SprayArmTest {

  /**
   * Worked example (scribd.com, document 495973957; it is that of Çengel and Cimbala, Fluid
   * Mechanics): a sprinkler of four jets of 10 mm at 0.6 m, 20 L/s of 1 kg/L in all, held at 300
   * rpm by a generator: 537.7 N m and 16.9 kW.
   */
  @OutsideCheck(
      of = "spray-arm",
      against = "Çengel and Cimbala, Fluid Mechanics, worked example (scribd.com 495973957)")
  @Test
  void sprinklerOfATextbook() {
    double area = 4 * Math.PI / 4 * 0.01 * 0.01;
    double velocity = 0.020 / area;
    double head = velocity * velocity / (2 * StandardGravity.G);
    SprayArm arm = new SprayArm(area, 0.6, 0, 0);
    double torque = arm.torque(head, 5, 1000);
    assertEquals(537.7, torque, 0.2);
    assertEquals(16.9e3, torque * 2 * Math.PI * 5, 0.06e3);
    // Free running, the water leaves without turning: the rim is as fast as the jet, 63.7 m/s.
    assertEquals(63.7 / (2 * Math.PI * 0.6), arm.speed(head, 1000), 0.02);
  }

  /**
   * White, Fluid Mechanics, Example 3.15 in form, from memory: at rest the torque is the moment of
   * the jets' momentum. 1 kg/s at 10 m/s and 0.2 m, inclined by 60°: 1 N m (arithmetic).
   */
  @Test
  void torqueAtRest() {
    double head = 100 / (2 * StandardGravity.G);
    SprayArm arm = new SprayArm(1e-4, 0.2, Math.PI / 3, 0);
    assertEquals(1, arm.torque(head, 0, 1000), 1e-9);
  }

  @Test
  void stiffBearingStopsIt() {
    double head = 100 / (2 * StandardGravity.G);
    assertEquals(0, new SprayArm(1e-4, 0.2, Math.PI / 3, 1.1).speed(head, 1000));
    assertThrows(IllegalArgumentException.class, () -> new SprayArm(0, 0.2, 0, 0));
  }

  /**
   * At the same pressure each jet keeps its momentum: with half of them closed half the torque is
   * left (moment of momentum), and a bearing that took 0.6 of it now stops the arm.
   */
  @Test
  void closedJetsStopTheArm() {
    double[] open = {10_000, 1e-4, 0.2, 0.5, 0, 293.15, 0};
    double[] torque = SprayArm.calculation().law().apply(open);
    open[6] = 0.5;
    assertEquals(torque[0] / 2, SprayArm.calculation().law().apply(open)[0], 1e-12);
    open[4] = 0.6 * torque[0];
    assertEquals(0, SprayArm.calculation().law().apply(open)[1]);
    open[6] = 0;
    assertTrue(SprayArm.calculation().law().apply(open)[1] > 0);
  }
}
