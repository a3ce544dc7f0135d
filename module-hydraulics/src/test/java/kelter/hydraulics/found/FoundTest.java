package kelter.hydraulics.found;

import static kelter.hydraulics.AirSamples.inOrder;
import static kelter.hydraulics.AirSamples.part;
import static kelter.hydraulics.AirSamples.shown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Room, tray and cover; a dehumidifier ices below 15 °C, section 5 of the page. */
class FoundTest {

  @Test
  void aColdRoom() {
    assertEquals(293.15, inOrder(part("room"), "temperature"), 1e-9);
    assertEquals(282.65, shown(part("room"), "too-cold", 0.5, "temperature"), 1e-9);
    assertTrue(shown(part("room"), "too-cold", 0.01, "temperature") < 288.15);
  }

  @Test
  void crumbsAndABurntCover() {
    assertTrue(shown(part("crumb-tray"), "full", 1, "crumbs") > 0.9);
    assertTrue(shown(part("wave-guide-cover"), "burnt", 1, "state") > 0.9);
    assertTrue(inOrder(part("crumb-tray"), "crumbs") < 0.2);
  }
}
