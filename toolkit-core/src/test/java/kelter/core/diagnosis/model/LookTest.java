package kelter.core.diagnosis.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How likely somebody notices something. */
class LookTest {

  /** The logistic function is 0.5 at 0 and 0.7311 at 1; 0.94 of it stand on 0.03. */
  @Test
  void theChanceRisesFromThreeToNinetySevenInAHundred() {
    assertEquals(0.5, Look.probability(2, 2, 0.5), 1e-12);
    assertEquals(0.03 + 0.94 * 0.7311, Look.probability(2.5, 2, 0.5), 5e-5);
    assertEquals(0.03 + 0.94 * 0.2689, Look.probability(1.5, 2, 0.5), 5e-5);
    assertEquals(0.03, Look.probability(-100, 2, 0.5), 1e-9);
    assertEquals(0.97, Look.probability(100, 2, 0.5), 1e-9);
  }

  @Test
  void belowZeroTheWidthTurnsItRound() {
    assertEquals(0.97, Look.probability(-100, 2, -0.5), 1e-9);
    assertEquals(0.03 + 0.94 * 0.2689, Look.probability(2.5, 2, -0.5), 5e-5);
  }

  /** Half and a fifth: both fail in 0.5 · 0.8 = 0.4. */
  @Test
  void oneOfTwoReasonsIsEnough() {
    assertEquals(0.6, Look.either(0.5, 0.2), 1e-12);
    assertEquals(0.3, Look.either(0, 0.3), 1e-12);
    assertEquals(1, Look.either(1, 0.3), 1e-12);
  }
}
