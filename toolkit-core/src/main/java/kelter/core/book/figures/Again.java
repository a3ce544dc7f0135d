package kelter.core.book.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.book.figures.ModelRecord.Life;
import kelter.core.book.figures.ModelRecord.Running;
import kelter.core.diagnosis.learning.KaplanMeier;
import kelter.core.diagnosis.learning.Lives;
import kelter.core.diagnosis.learning.WeibullFit;
import kelter.core.source.Source;

/**
 * When machines failed again after a job, years since then. The interval of the share S that still
 * runs is that of ln(-ln S): S^exp(-+ 1.96 s / (S ln S)) with Greenwood's standard deviation s.
 */
final class Again {

  /** Where the interval comes from. */
  static final Source SOURCE =
      Source.fromMemory(
          "Kalbfleisch and Prentice, The Statistical Analysis of Failure Time Data (2002), 1.4");

  /** A share of fewer machines is not told; own choice. */
  private static final int LEAST_AT_RISK = 5;

  private static final int QUARTERS = 4;
  private static final int MOST_QUARTERS = 80;

  private final Lives lives;

  Again(Map<Double, Double> failed, Map<Double, Double> lasted) {
    this.lives = new Lives(failed, lasted);
  }

  int failures() {
    return (int) lives.failures();
  }

  int lasted() {
    return (int) (lives.all() - lives.failures());
  }

  List<Running> running() {
    List<Running> running = new ArrayList<>();
    if (lives.failures() == 0) {
      return running;
    }
    List<KaplanMeier.Step> steps = KaplanMeier.of(lives).steps();
    for (int quarter = 1; quarter <= MOST_QUARTERS; quarter++) {
      double years = quarter / (double) QUARTERS;
      if (seenFor(years) < LEAST_AT_RISK) {
        break;
      }
      running.add(running(years, steps));
    }
    return running;
  }

  private double seenFor(double years) {
    return longer(lives.failed(), years) + longer(lives.lasted(), years);
  }

  private static double longer(Map<Double, Double> numbers, double years) {
    double sum = 0;
    for (Map.Entry<Double, Double> each : numbers.entrySet()) {
      sum += each.getKey() >= years ? each.getValue() : 0;
    }
    return sum;
  }

  private static Running running(double years, List<KaplanMeier.Step> steps) {
    double share = 1;
    double sd = 0;
    for (KaplanMeier.Step step : steps) {
      if (step.time() <= years) {
        share = step.survival();
        sd = step.sd();
      }
    }
    return new Running(years, share, interval(share, sd));
  }

  /** At the ends, where nothing or all failed, the interval has no width of its own. */
  static Interval interval(double share, double sd) {
    if (!(share > 0 && share < 1)) {
      return new Interval(share, share);
    }
    double spread = Interval.TWO_SIDED_95 * sd / (share * -Math.log(share));
    return new Interval(Math.pow(share, Math.exp(spread)), Math.pow(share, Math.exp(-spread)));
  }

  Optional<Life> life() {
    if (lives.failures() < WeibullFit.LEAST_FAILURES) {
      return Optional.empty();
    }
    try {
      WeibullFit fit = WeibullFit.of(lives);
      return Optional.of(
          new Life(fit.shape(), of(fit.shapeInterval()), fit.scale(), of(fit.scaleInterval())));
    } catch (IllegalArgumentException noShape) {
      return Optional.empty();
    }
  }

  private static Interval of(WeibullFit.Interval interval) {
    return new Interval(interval.low(), interval.high());
  }
}
