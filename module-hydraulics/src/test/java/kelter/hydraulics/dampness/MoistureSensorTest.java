package kelter.hydraulics.dampness;

import static kelter.hydraulics.AirSamples.inOrder;
import static kelter.hydraulics.AirSamples.part;
import static kelter.hydraulics.AirSamples.shown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Component;
import org.junit.jupiter.api.Test;

/**
 * Moisture bars as the page "heat, air, cold and small machines", section 2, has them: wet cloth
 * below 100 kOhm, dry open, shorted by a wire they must read wet; a film reads dry.
 */
class MoistureSensorTest {

  private static final Component BARS = part("moisture-sensor");

  @Test
  void barsInOrderConform() {
    assertTrue(inOrder(BARS, "wet-resistance") < 100e3);
    assertTrue(inOrder(BARS, "joined-resistance") < 10);
    assertTrue(inOrder(BARS, "dry-resistance") > 5e6);
  }

  /** 20 kOhm of cloth behind 20 kOhm · √500 of film: 467 kOhm; a wire is pressed through it. */
  @Test
  void aFilmReadsDryButAWireReadsWet() {
    assertEquals(467e3, shown(BARS, "filmed", 0.5, "wet-resistance"), 5e3);
    assertTrue(shown(BARS, "filmed", 1, "wet-resistance") > 5e6, "as if it were dry");
    assertEquals(
        inOrder(BARS, "joined-resistance"), shown(BARS, "filmed", 1, "joined-resistance"), 1e-9);
  }

  @Test
  void aBrokenWireIsOpenAndAShortedOneNeverDry() {
    assertTrue(shown(BARS, "broken", 0.3, "joined-resistance") > 5e6);
    assertTrue(shown(BARS, "broken", 0.8, "dry-resistance") < 10);
  }
}
