package kelter.hydraulics.condensate;

import static kelter.hydraulics.AirSamples.inOrder;
import static kelter.hydraulics.AirSamples.part;
import static kelter.hydraulics.AirSamples.shown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.job.Component;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

/** What is poured, looked for and measured, one fault against the other. */
class RunOffTest {

  private static final Component PUMP =
      part(
          "condensate-pump",
          Map.of("winding-resistance", Quantity.of(260, "Ohm", QuantityKind.RESISTANCE)));

  @Test
  void aHoseBlockedOrSplit() {
    Component hose = part("hose");
    assertTrue(shown(hose, "blocked", 0.6, "poured") > 0.5);
    assertTrue(shown(hose, "split", 0.6, "poured") < 0.2);
    assertTrue(shown(hose, "split", 0.6, "wet") > 0.9);
    assertTrue(shown(hose, "blocked", 0.6, "wet") < 0.1);
  }

  @Test
  void aBlockedDrain() {
    Component drain = part("drain");
    assertTrue(shown(drain, "blocked", 1, "poured") > 0.9);
    assertTrue(inOrder(drain, "poured") < 0.2);
    assertEquals(0.625, shown(drain, "blocked", 0.5, "stands"), 1e-9);
  }

  /** Dead is told by its winding, blocked by its impeller; in order 260 Ohm, within the limits. */
  @Test
  void aPumpDeadOrBlocked() {
    assertEquals(260, inOrder(PUMP, "winding-resistance"), 1e-9);
    assertEquals(1e8, shown(PUMP, "dead", 0.5, "winding-resistance"), 1);
    assertTrue(shown(PUMP, "dead", 0.5, "runs") < 0.1);
    assertEquals(260, shown(PUMP, "blocked", 0.5, "winding-resistance"), 1e-9);
    assertTrue(shown(PUMP, "blocked", 0.5, "impeller") > 0.5);
    assertEquals(250, inOrder(part("condensate-pump"), "winding-resistance"), 1e-9);
  }
}
