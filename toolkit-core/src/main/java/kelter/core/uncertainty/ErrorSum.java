package kelter.core.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kelter.core.numeric.GaussLegendre;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The distribution of a sum of independent errors, by convolution (JCGM 101:2008, 5.2, for an
 * additive model).
 *
 * <p>The two widest rectangular errors make a trapezoid (JCGM 101:2008, 6.4.4); a triangular one
 * counts as two rectangular ones of half its width. All others make a kernel: Student's t with the
 * degrees of freedom of Welch and Satterthwaite where a scatter is among them (JCGM 100:2008, G.4),
 * else a normal distribution. A third rectangular error is thus taken as normal, which moves no
 * probability by more than 0.005.
 *
 * @param wide half the width of the widest rectangular error, 0 if there is none
 * @param narrow half the width of the next, at most that
 * @param scale the standard uncertainty of all others together
 * @param degreesOfFreedom those of the others, infinite for a normal kernel
 */
record ErrorSum(double wide, double narrow, double scale, double degreesOfFreedom) {

  /** A part so much smaller than the other moves no probability that is told. */
  private static final double NOTHING = 1e-9;

  /** Where the integral over the trapezoid is cut, in scales of the kernel from its middle. */
  private static final double[] BENDS = {-40, -12, -4, -1.5, 0, 1.5, 4, 12, 40};

  static ErrorSum of(List<ErrorTerm> terms) {
    List<ErrorTerm> rectangular = new ArrayList<>();
    List<ErrorTerm> others = new ArrayList<>();
    for (ErrorTerm term : terms) {
      switch (term.shape()) {
        case RECTANGULAR -> rectangular.add(term);
        case TRIANGULAR -> {
          double half = term.standardUncertainty() * Shape.TRIANGULAR.divisor();
          rectangular.add(ErrorTerm.within(Shape.RECTANGULAR, half / 2));
          rectangular.add(ErrorTerm.within(Shape.RECTANGULAR, half / 2));
        }
        case U_SHAPED, NORMAL, STUDENT_T -> others.add(term);
      }
    }
    double wide = takeWidest(rectangular);
    double narrow = takeWidest(rectangular);
    others.addAll(rectangular);
    return of(wide, narrow, others);
  }

  private static ErrorSum of(double wide, double narrow, List<ErrorTerm> others) {
    double[] contributions = new double[others.size()];
    double[] degreesOfFreedom = new double[others.size()];
    double scale = 0;
    for (int i = 0; i < contributions.length; i++) {
      contributions[i] = others.get(i).standardUncertainty();
      degreesOfFreedom[i] = others.get(i).degreesOfFreedom();
      scale = Math.hypot(scale, contributions[i]);
    }
    return new ErrorSum(
        wide, narrow, scale, WelchSatterthwaite.degreesOfFreedom(contributions, degreesOfFreedom));
  }

  /** Takes the widest error away, and tells half its width; 0 if there is none. */
  private static double takeWidest(List<ErrorTerm> rectangular) {
    int widest = -1;
    double most = 0;
    for (int i = 0; i < rectangular.size(); i++) {
      if (rectangular.get(i).standardUncertainty() > most) {
        most = rectangular.get(i).standardUncertainty();
        widest = i;
      }
    }
    if (widest >= 0) {
      rectangular.remove(widest);
    }
    return most * Shape.RECTANGULAR.divisor();
  }

  /** Whether there is no error at all. */
  boolean isExact() {
    return wide == 0 && scale == 0;
  }

  /**
   * The probability that the sum is at most x.
   *
   * @param x a limit, may be infinite
   * @return a probability from 0 to 1
   */
  double atMost(double x) {
    double end = wide + narrow;
    if (scale <= NOTHING * end || Double.isInfinite(x)) {
      return trapezoid(x);
    }
    if (end <= NOTHING * scale) {
      return kernel().applyAsDouble(x / scale);
    }
    DoubleUnaryOperator kernel = kernel();
    double sum = 0;
    double from = -end;
    for (double bend : BENDS) {
      double to = Math.max(from, Math.min(end, x + bend * scale));
      sum += convolved(kernel, x, from, to);
      from = to;
    }
    return Math.min(1, sum + convolved(kernel, x, from, end));
  }

  /** The integral of density times kernel between two ends, cut where the trapezoid bends. */
  private double convolved(DoubleUnaryOperator kernel, double x, double from, double to) {
    double left = Math.max(from, Math.min(to, narrow - wide));
    double right = Math.max(from, Math.min(to, wide - narrow));
    return part(kernel, x, from, left) + part(kernel, x, left, right) + part(kernel, x, right, to);
  }

  private double part(DoubleUnaryOperator kernel, double x, double from, double to) {
    return from < to
        ? GaussLegendre.integral(e -> density(e) * kernel.applyAsDouble((x - e) / scale), from, to)
        : 0;
  }

  private double density(double error) {
    double inward = wide + narrow - Math.abs(error);
    return Math.min(1, inward / (2 * narrow)) / (2 * wide);
  }

  private double trapezoid(double x) {
    double outside = wide + narrow - Math.abs(x);
    double beyond;
    if (outside <= 0) {
      beyond = 0;
    } else if (outside < 2 * narrow) {
      beyond = outside * outside / (8 * wide * narrow);
    } else {
      beyond = 0.5 - Math.abs(x) / (2 * wide);
    }
    return x > 0 ? 1 - beyond : beyond;
  }

  /** The distribution function of the others, over their scale. */
  private DoubleUnaryOperator kernel() {
    if (Double.isInfinite(degreesOfFreedom)) {
      return Normal::cdf;
    }
    TDistribution student = TDistribution.of(degreesOfFreedom);
    return student::cumulativeProbability;
  }
}
