package kelter.core.diagnosis.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourseTest {

  @ParameterizedTest
  @CsvSource({"0.02, 0.5, 0.1", "0.01, 0.99, 0.01", "0.04, 0.05, 0.97", "0.3, 0.3, 0.3"})
  void aChanceGoesThroughItsThreeValuesAndStaysOne(double from, double middle, double to) {
    Course course = Course.chance(from, middle, to);
    assertEquals(from, course.at(0), 1e-12);
    assertEquals(middle, course.at(0.5), 1e-12);
    assertEquals(to, course.at(1), 1e-12);
    for (double severity = 0; severity <= 1; severity += 0.01) {
      assertTrue(course.at(severity) > 0 && course.at(severity) < 1, "at " + severity);
    }
  }

  /**
   * By hand. Odds of 1/4, 1 and 4 are 1/2 a quarter of the way. Odds of 1, 4 and 1 are a parabola
   * of exponents of 4, which is 3/4 there: 4^(3/4) = 2.8284, a chance of 0.7388.
   */
  @Test
  void oddsGoByAParabolaOfTheirLogarithm() {
    assertEquals(1 / 3.0, Course.chance(0.2, 0.5, 0.8).at(0.25), 1e-12);
    assertEquals(0.7388, Course.chance(0.5, 0.8, 0.5).at(0.25), 1e-4);
    assertEquals(0.7388, Course.chance(0.5, 0.8, 0.5).at(0.75), 1e-4);
  }

  @Test
  void certaintyHasNoOdds() {
    assertThrows(IllegalArgumentException.class, () -> Course.chance(0, 0.5, 0.9));
    assertThrows(IllegalArgumentException.class, () -> Course.chance(0.1, 0.5, 1));
    assertThrows(IllegalArgumentException.class, () -> Course.chance(0.1, Double.NaN, 0.9));
  }

  /** Of severities that are evenly spread, half lie on either side of the step. */
  @Test
  void aStepIsOneThingBelowTheMiddleAndAnotherAbove() {
    assertEquals(2, Course.step(2, 10).at(1e-9));
    assertEquals(2, Course.step(2, 10).at(0.49));
    assertEquals(10, Course.step(2, 10).at(0.5));
    assertEquals(10, Course.step(2, 10).at(1));
  }
}
