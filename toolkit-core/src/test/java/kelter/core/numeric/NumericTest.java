package kelter.core.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Roots and integrals with values known in closed form, or to the digits given. */
class NumericTest {

  @Test
  @DisplayName("x = cos x at 0.739085133215160642 (OEIS A003957)")
  void dottieNumber() {
    assertEquals(0.739085133215160642, Root.between(x -> x - Math.cos(x), 0, 1, 0), 1e-15);
    assertEquals(0.739085133215160642, Root.between(x -> Math.cos(x) - x, 0, 1, 1e-6), 1e-6);
  }

  @Test
  @DisplayName("Newton's x^3 - 2 x - 5 = 0 at 2.09455148154232659 (OEIS A007493)")
  void newtonsCubic() {
    assertEquals(2.09455148154232659, Root.between(x -> x * x * x - 2 * x - 5, 0, 1000, 0), 2e-15);
  }

  @Test
  void aRootAtAnEndIsFound() {
    assertEquals(1, Root.between(x -> x - 1, 1, 5, 0));
    assertEquals(5, Root.between(x -> x - 5, 1, 5, 0));
  }

  @Test
  void aJumpIsFound() {
    assertEquals(0.3, Root.between(x -> x < 0.3 ? 1 : -2, 0, 1, 1e-9), 1e-9);
  }

  @Test
  void infinityIsVeryGreat() {
    assertEquals(
        2, Root.between(x -> x < 1 ? Double.POSITIVE_INFINITY : 2 - x, -1000, 100, 0), 1e-14);
  }

  @Test
  void whatHasNoRootIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Root.between(x -> x * x + 1, -1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Root.between(Math::sqrt, -1, 3, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> Root.between(x -> Math.abs(x) > 0.5 ? x : Double.NaN, -1, 2, 0));
  }

  @ParameterizedTest
  @DisplayName("The integral of x^n from 0 to 2 is 2^(n + 1) / (n + 1)")
  @CsvSource({"0", "1", "2", "3"})
  void simpsonOfPowers(int n) {
    double exact = Math.pow(2, n + 1) / (n + 1);

    assertEquals(exact, Simpson.integral(x -> Math.pow(x, n), 0, 2, 1), 1e-15 * exact);
    assertEquals(exact, Simpson.integral(x -> Math.pow(x, n), 0, 2, 50), 1e-14 * exact);
  }

  @Test
  @DisplayName("The integral of sin from 0 to pi is 2; the error is at most pi^5 / (2880 n^4)")
  void simpsonOfSine() {
    double error = Math.pow(Math.PI, 5) / (2880 * Math.pow(10, 4));

    assertEquals(2, Simpson.integral(Math::sin, 0, Math.PI, 10), error);
  }

  @Test
  void weightsOfSimpsonSumToOne() {
    assertEquals(1, Simpson.weight(0) + Simpson.weight(1) + Simpson.weight(2), 2e-16);
  }

  @ParameterizedTest
  @DisplayName("The integral of x^n from -1 to 2 is (2^(n + 1) - (-1)^(n + 1)) / (n + 1)")
  @CsvSource({"0", "1", "7", "14", "15"})
  void gaussLegendreOfPowers(int n) {
    double exact = (Math.pow(2, n + 1) - Math.pow(-1, n + 1)) / (n + 1);

    assertEquals(exact, GaussLegendre.integral(x -> Math.pow(x, n), -1, 2), 1e-14 * exact);
  }

  @Test
  @DisplayName("The integral of 1/x from 1 to 2 is ln 2")
  void gaussLegendreOfLogarithm() {
    assertEquals(Math.log(2), GaussLegendre.integral(x -> 1 / x, 1, 2), 1e-12);
  }
}
