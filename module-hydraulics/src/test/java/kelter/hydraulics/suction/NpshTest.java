package kelter.hydraulics.suction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;
import org.junit.jupiter.api.Test;

class NpshTest {

  private static final double FOOT = 0.3048; // m
  private static final double PSI = 6894.757; // Pa

  /**
   * Crane TP-410, problem 7.32: 5 psi on the water, 60 °F, 25 ft of lift, 6 ft of loss, air at 14.7
   * psi: 13.89 ft, printed 4.233 m.
   */
  @Test
  void suctionOfAHandbook() {
    Water water = Water.at((60 + 459.67) / 1.8);
    double npsh = NpshAvailable.of(water, (5 + 14.7) * PSI, -25 * FOOT, 6 * FOOT);
    assertEquals(4.233, npsh, 0.02);
    // The same handbook takes 0.256 psi for the vapour.
    assertEquals(0.256, water.vapourPressure() / PSI, 0.001);
  }

  /**
   * Arithmetic on IAPWS figures: an open sump of water at 80 °C (971.79 kg/m3, 47.41 kPa) with the
   * water 50 mm above the pump and no loss offers (101.325 - 47.415) kPa / (971.79 * 9.80665) +
   * 0.05 = 5.707 m.
   */
  @Test
  void hotSump() {
    Computation computation =
        Computation.of(
            NpshAvailable.CALCULATION, Map.of("level", "0.05 m", "temperature", "80 Cel"));
    assertEquals(5.707, computation.results().get(0).quantity().value(), 0.001);
  }

  /** At 100 °C an open sump offers nothing but the height of the water (definition of boiling). */
  @Test
  void boilingSump() {
    assertEquals(0.1, NpshAvailable.of(Water.at(373.124), Water.STANDARD_ATMOSPHERE, 0.1, 0), 0.01);
  }

  @Test
  void cavitationSetsInSoonerWhenItIsHot() {
    Hose filter = new Hose(0.1, 0.026, 0, 40);
    double cold =
        NpshAvailable.onsetOfCavitation(
            Water.at(293.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1);
    double hot =
        NpshAvailable.onsetOfCavitation(
            Water.at(353.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1);
    assertTrue(hot < cold && hot > 0);
    assertEquals(
        0,
        NpshAvailable.onsetOfCavitation(
            Water.at(372.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1));
  }
}
