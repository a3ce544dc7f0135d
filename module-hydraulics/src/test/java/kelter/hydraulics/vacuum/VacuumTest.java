package kelter.hydraulics.vacuum;

import static kelter.hydraulics.AirSamples.inOrder;
import static kelter.hydraulics.AirSamples.part;
import static kelter.hydraulics.AirSamples.shown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Component;
import org.junit.jupiter.api.Test;

/** Hose, bag and body by hand, from 20 kPa, 33 L/s and the straight fan line. */
class VacuumTest {

  private static final Component HOSE = part("suction-hose");
  private static final Component BODY = part("housing");

  /** With the hose K = 1.111, q = 0.6; without it 0.667, 0.686. */
  @Test
  void aHoseInOrderConforms() {
    assertEquals(1, inOrder(HOSE, "suction-kept"), 1e-9);
    assertEquals(0.875, inOrder(HOSE, "flow-kept"), 0.002);
    assertTrue(inOrder(HOSE, "ball-stops") < 0.1);
  }

  /** 200 times its loss: K = 1.111 (0.6 + 80) = 89.6, q = 0.100; closed, nothing changes. */
  @Test
  void aBlockedHoseStopsBallAndFlowButKeepsItsSuction() {
    assertEquals(0.146, shown(HOSE, "blocked", 1, "flow-kept"), 0.002);
    assertEquals(1, shown(HOSE, "blocked", 1, "suction-kept"), 1e-9);
    assertTrue(shown(HOSE, "blocked", 0.5, "ball-stops") > 0.9);
    assertTrue(shown(HOSE, "split", 0.5, "ball-stops") < 0.1);
  }

  /**
   * 3 cm2: c = 0.6·3e-4·182.6/0.033 = 0.996, x = (√(0.992 + 4) − 0.996)/2 = 0.619, x² = 0.383.
   * Open: 1/√1.111 = 0.949 beside 0.996, K' = 0.264, q = 0.824, of which 0.488 by the hose,
   * 0.402/0.686.
   */
  @Test
  void aSplitHoseLosesSuction() {
    assertEquals(0.383, shown(HOSE, "split", 0.5, "suction-kept"), 0.002);
    assertEquals(0.586, shown(HOSE, "split", 0.5, "flow-kept"), 0.003);
    assertTrue(shown(HOSE, "split", 0.5, "split") > 0.9);
  }

  @Test
  void aCrackedBodyHasLessSuctionAndDrawsPaper() {
    assertEquals(20_000, inOrder(BODY, "sealed-suction"), 1e-6);
    assertEquals(7660, shown(BODY, "cracked", 0.5, "sealed-suction"), 30);
    assertTrue(shown(BODY, "cracked", 0.5, "draws-paper") > 0.9);
  }

  @Test
  void aFullBag() {
    assertTrue(shown(part("bag"), "full", 1, "filled") > 0.9);
    assertEquals(0.25, inOrder(part("bag"), "filled"), 1e-9);
  }
}
