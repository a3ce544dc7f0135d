package kelter.core.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The chance of a symptom over the severity of a fault. */
class FaultSymptomTest {

  private static final FaultSymptom RISING =
      new FaultSymptom("loud", severity -> severity < 0.7 ? 0.2 : 0.5);

  /**
   * Odds by hand: 0.2 are odds of 1 to 4; to make them even they are multiplied by 4, and so are
   * those of 0.5, which makes 4 to 1, a chance of 0.8.
   */
  @Test
  void anotherChanceInTheMiddleShiftsAllOdds() {
    FaultSymptom shifted = RISING.through(0.5);
    assertEquals("loud", shifted.symptom());
    assertEquals(0.5, shifted.at(FaultSymptom.MIDDLE), 1e-12);
    assertEquals(0.8, shifted.at(1), 1e-12);
    assertEquals(0.2, RISING.through(0.2).at(0.3), 1e-12);
  }

  @Test
  void whatIsCertainInTheMiddleCannotBeShifted() {
    FaultSymptom never = new FaultSymptom("loud", severity -> 0);
    FaultSymptom always = new FaultSymptom("loud", severity -> 1);
    assertSame(never, never.through(0.5));
    assertSame(always, always.through(0.5));
  }

  @Test
  void whatIsNoChanceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new FaultSymptom("loud", s -> 1.01).at(0.5));
    assertThrows(
        IllegalArgumentException.class, () -> new FaultSymptom("loud", s -> -0.01).at(0.5));
    assertThrows(
        IllegalArgumentException.class, () -> new FaultSymptom("loud", s -> Double.NaN).at(0.5));
  }
}
