package kelter.cli.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All values have room, and round steps stand where a reader expects them. */
class ScaleTest {

  private static Scale of(Double... values) {
    return Scale.withNearZero(List.of(values), 0, 100);
  }

  @Test
  void valuesBelowZeroHaveRoom() {
    Scale scale = of(-20.0, 0.0, 25.0, 100.0);

    assertTrue(scale.low() < -20 && scale.high() > 100);
    assertTrue(scale.place(-20) > 0);
    assertTrue(scale.place(-20) < scale.place(0));
    assertTrue(scale.place(100) < 100);
  }

  @Test
  void zeroIsThereOnlyWhereItIsNear() {
    assertEquals(0, of(4.0, 20.0).low());
    assertEquals(0, of(-20.0, -4.0).high());
    assertTrue(of(210.0, 230.0).low() > 200);
    assertTrue(of(-230.0, -210.0).high() < -200);
  }

  @Test
  void oneValueOrNoneHasAScaleToo() {
    assertEquals(0, of(7.0).low());
    assertTrue(of(7.0).high() > 7);
    assertEquals(0, of(-7.0).high());
    assertEquals(1, of(0.0).high());
    assertEquals(1, of().high());
    assertEquals(1, of(Double.NaN).high());
  }

  /** Written down by hand. */
  @Test
  void stepsAreRoundAndWithinTheEnds() {
    assertArrayEquals(
        new double[] {-20, 0, 20, 40, 60, 80, 100}, new Scale(-20, 100, 0, 1, false).steps(), 1e-9);
    assertArrayEquals(
        new double[] {0, 0.2, 0.4, 0.6, 0.8, 1}, new Scale(0, 1, 0, 1, false).steps(), 1e-9);
    assertArrayEquals(
        new double[] {205, 210, 215, 220, 225, 230},
        new Scale(204, 231, 0, 1, false).steps(),
        1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0013, 0.7, 3, 9.99, 10, 29.9, 30.1, 61, 12345, 8.7e7})
  void thereAreNeitherTooManyStepsNorTooFew(double span) {
    int number = new Scale(-span / 3, span, 0, 1, false).steps().length;

    assertTrue(number >= 2 && number <= 7, number + " steps");
  }
}
