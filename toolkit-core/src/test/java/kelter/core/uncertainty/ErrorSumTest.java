package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums of errors against closed forms, Commons Statistics and the examples of JCGM 101. */
class ErrorSumTest {

  private static double atMost(double x, ErrorTerm... terms) {
    return new InputQuantity(0, List.of(terms)).probabilityBetween(Double.NEGATIVE_INFINITY, x);
  }

  private static ErrorTerm within(double half) {
    return ErrorTerm.within(Shape.RECTANGULAR, half);
  }

  /** The distribution function of a rectangular distribution is a straight line. */
  @ParameterizedTest
  @CsvSource({"-0.31, 0", "-0.3, 0", "-0.15, 0.25", "0, 0.5", "0.22, 0.86666667", "0.3, 1"})
  void aRectangularErrorIsAStraightLine(double x, double expected) {
    assertEquals(expected, atMost(x, within(0.3)), 1e-8);
  }

  /**
   * Two rectangular errors are a trapezoid (JCGM 101:2008, 6.4.4), as Commons Statistics has it.
   */
  @ParameterizedTest
  @CsvSource({"0.3, 0.1", "0.1, 0.3", "0.3, 0.299", "5, 0.001"})
  void twoRectangularErrorsAreATrapezoid(double a, double b) {
    double end = a + b;
    double top = Math.abs(a - b);
    TrapezoidalDistribution reference = TrapezoidalDistribution.of(-end, -top, top, end);
    for (double share = -1.1; share < 1.15; share += 0.1) {
      double x = share * end;
      assertEquals(reference.cumulativeProbability(x), atMost(x, within(a), within(b)), 1e-12);
    }
  }

  @Test
  void aTriangularErrorIsTwoRectangularOnes() {
    TriangularDistribution reference = TriangularDistribution.of(-2, 0, 2);
    for (double x : new double[] {-1.5, -0.2, 0.7, 1.9}) {
      double expected = reference.cumulativeProbability(x);
      assertEquals(expected, atMost(x, ErrorTerm.within(Shape.TRIANGULAR, 2)), 1e-12);
    }
  }

  /**
   * A rectangular and a normal error: with G(z) = z F(z) + f(z), the integral of the normal
   * distribution function F with density f, it is s / 2a (G((x + a) / s) - G((x - a) / s)), found
   * by integration in parts.
   */
  @ParameterizedTest
  @CsvSource({"1, 1", "1, 0.1", "1, 0.001", "1, 10", "0.3, 0.15"})
  void aRectangularAndANormalErrorHaveAClosedForm(double a, double s) {
    for (double x = -3 * (a + s); x < 3 * (a + s); x += 0.217 * (a + s)) {
      double expected = s / (2 * a) * (integrated((x + a) / s) - integrated((x - a) / s));
      assertEquals(expected, atMost(x, within(a), ErrorTerm.normal(s)), 1e-8);
    }
  }

  private static double integrated(double z) {
    NormalDistribution standard = NormalDistribution.of(0, 1);
    return z * standard.cumulativeProbability(z) + standard.density(z);
  }

  /** A trapezoid and Student's t, by a fine sum over the trapezoid of Commons Statistics. */
  @ParameterizedTest
  @CsvSource({"2, 0.1", "3, 0.01", "5, 1", "4, 0.3"})
  void aScatterOfFewReadingsIsStudentsT(int readings, double scatter) {
    TrapezoidalDistribution limits = TrapezoidalDistribution.of(-0.35, -0.25, 0.25, 0.35);
    TDistribution student = TDistribution.of(readings - 1.0);
    int steps = 40_000;
    for (double x : new double[] {-1, -0.3, 0, 0.1, 0.27, 0.4, 2}) {
      double sum = 0;
      for (int i = 0; i < steps; i++) {
        double error = -0.35 + 0.7 * (i + 0.5) / steps;
        sum += limits.density(error) * student.cumulativeProbability((x - error) / scatter);
      }
      double expected = sum * 0.7 / steps;
      double told = atMost(x, within(0.3), within(0.05), ErrorTerm.scatter(scatter, readings));
      assertEquals(expected, told, 2e-6);
    }
  }

  /**
   * JCGM 101:2008, 9.2.3, four rectangular errors of standard uncertainty 1, table 3: 95 % lie
   * within 3.88, where the law of propagation tells 3.92. 9.2.4, one of them of 10, table 4: within
   * 17.0, where the law tells 19.9 (both from memory).
   */
  @ParameterizedTest
  @CsvSource({"1, 3.88, 0.02", "10, 17.0, 0.05"})
  void theAdditiveModelOfJcgm101(double fourth, double printed, double tolerance) {
    ErrorTerm one = ErrorTerm.stated(Shape.RECTANGULAR, 1);
    InputQuantity sum =
        new InputQuantity(0, List.of(one, one, one, ErrorTerm.stated(Shape.RECTANGULAR, fourth)));
    assertEquals(printed, sum.quantile(0.975), tolerance);
    assertEquals(-printed, sum.quantile(0.025), tolerance);
  }

  /**
   * Three equal rectangular errors of half-width 1: the third is taken as normal. The exact tail is
   * (3 - x)^3 / 48 from 1 to 3 (the sum of three uniform variables, Irwin and Hall), and within 1
   * 1/2 + x (9 - x^2) / 24 lies below x.
   */
  @Test
  void aThirdRectangularErrorAsANormalOneMovesLittle() {
    ErrorTerm[] three = Collections.nCopies(3, within(1)).toArray(new ErrorTerm[0]);
    for (double x = 0; x < 3; x += 0.05) {
      double exact = x < 1 ? 0.5 + x * (9 - x * x) / 24 : 1 - Math.pow(3 - x, 3) / 48;
      assertEquals(exact, atMost(x, three), 0.005);
    }
  }

  /** JCGM 106:2012, clause 7 (from memory): normal, 0.919 that a voltage is at most -5.40 V. */
  @Test
  void aNormalErrorAlone() {
    assertEquals(0.919, atMost(0.07, ErrorTerm.normal(0.05)), 5e-4);
  }

  @Test
  void withoutErrorItIsAStep() {
    assertEquals(1, atMost(0));
    assertEquals(1, atMost(0, within(0), ErrorTerm.normal(0)));
    assertEquals(0, atMost(Math.nextDown(0.0), within(0)));
    assertEquals(0, InputQuantity.exact(0).quantile(0.9));
  }

  @Test
  void aQuantileIsTheInverse() {
    InputQuantity known = new InputQuantity(7, List.of(within(0.3), ErrorTerm.scatter(0.2, 3)));
    for (double p : new double[] {0.001, 0.05, 0.5, 0.7, 0.95, 0.999}) {
      double below = known.probabilityBetween(Double.NEGATIVE_INFINITY, known.quantile(p));
      assertEquals(p, below, 1e-8);
    }
    assertThrows(IllegalArgumentException.class, () -> known.quantile(1));
    assertThrows(IllegalArgumentException.class, () -> known.quantile(Double.NaN));
  }
}
