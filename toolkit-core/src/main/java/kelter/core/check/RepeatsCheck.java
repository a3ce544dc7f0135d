package kelter.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;
import kelter.core.source.Source;
import kelter.core.uncertainty.CoverageFactor;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether repeated readings of one measurement agree as well as the instrument claims. It finds
 * something only where they do not:
 *
 * <ul>
 *   <li>their standard deviation is so much larger than the standard uncertainty that the
 *       instrument and the rounding claim, that chance would do it in 1 of 100 cases (chi-squared
 *       test, three readings or more);
 *   <li>they drift in their order: the slope is so far from zero that chance would do it in 1 of
 *       100 cases (t test, four readings or more), and from first to last they go farther than the
 *       claim expanded by 2.
 * </ul>
 */
final class RepeatsCheck implements Check {

  /** How sure it must be that it is not chance. */
  private static final double LEVEL = 0.99;

  private static final int LEAST_FOR_SPREAD = 3;
  private static final int LEAST_FOR_DRIFT = 4;

  private static final Source SPREAD =
      Source.fromMemory(
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.8, chi-square test, at 99 %,"
              + " against the claim of the instrument");
  private static final Source DRIFT =
      Source.fromMemory(
          "JCGM 100:2008, H.3, slope of a straight line, t test at 99 %; against the claim of the"
              + " instrument");

  private final Vocabulary vocabulary;

  /**
   * The check.
   *
   * @param vocabulary what can be observed
   */
  public RepeatsCheck(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public String id() {
    return "repeated-readings";
  }

  @Override
  public String title() {
    return "Do repeated readings agree as well as the instrument claims?";
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    int place = 0;
    for (Measurement measurement : job.measurements()) {
      place++;
      if (measurement.readings().size() < LEAST_FOR_SPREAD) {
        continue;
      }
      String name = "." + measurement.component() + "-" + place;
      Optional<Observable> observable =
          job.appliance()
              .component(measurement.component())
              .map(Component::kind)
              .flatMap(kind -> vocabulary.observable(kind, measurement.observable()));
      if (observable.isEmpty() || observable.get().type() != Observable.Type.QUANTITY) {
        continue;
      }
      Evaluation.of(job, measurement, observable.get())
          .map(evaluation -> new Repeats(name, measurement, observable.get(), evaluation))
          .ifPresent(
              repeats -> {
                repeats.spread().ifPresent(findings::add);
                repeats.drift(rule).ifPresent(findings::add);
              });
    }
    return findings;
  }

  /** The readings of one measurement. */
  private record Repeats(
      String name, Measurement measurement, Observable observable, Evaluation evaluation) {

    /** What the instrument and the rounding claim for a single reading. */
    private double claim() {
      return Math.hypot(evaluation.error(), evaluation.rounding());
    }

    Optional<Finding> spread() {
      int n = evaluation.readings();
      double deviation = evaluation.scatter() * Math.sqrt(n);
      double chiSquared = ChiSquaredDistribution.of(n - 1.0).inverseSurvivalProbability(1 - LEVEL);
      double most = claim() * Math.sqrt(chiSquared / (n - 1));
      if (!(deviation > most)) {
        return Optional.empty();
      }
      return Optional.of(
          finding(
              "spread",
              "spread of " + n + " readings against the claim of the instrument",
              new Judgement(
                  Optional.of(InputQuantity.exact(deviation)),
                  0,
                  Verdict.DOES_NOT_CONFORM,
                  evaluation.assumed()),
              new Limits(0, most),
              SPREAD,
              "The readings differ by more than the instrument allows: what is measured changes, a"
                  + " contact is poor, or the instrument is not in order."));
    }

    Optional<Finding> drift(DecisionRule rule) {
      int n = evaluation.readings();
      if (n < LEAST_FOR_DRIFT) {
        return Optional.empty();
      }
      double[] order = new double[n];
      double[] values = new double[n];
      for (int i = 0; i < n; i++) {
        order[i] = i;
        values[i] = measurement.readings().get(i).least();
      }
      LeastSquaresLine line = LeastSquaresLine.through(order, values);
      double t = CoverageFactor.of(LEVEL, line.degreesOfFreedom());
      boolean drifts = Math.abs(line.slope()) > t * line.slopeUncertainty();
      double most = QuantityFormat.COVERAGE_FACTOR * claim();
      Limits limits = new Limits(-most, most);
      Estimate drift = new Estimate(line.slope() * (n - 1), line.slopeUncertainty() * (n - 1));
      Judgement judgement = Judgement.of(drift, limits, rule, evaluation.assumed());
      if (!drifts || judgement.verdict() != Verdict.DOES_NOT_CONFORM) {
        return Optional.empty();
      }
      return Optional.of(
          finding(
              "drift",
              "drift over " + n + " readings against the claim of the instrument",
              judgement,
              limits,
              DRIFT,
              "The readings go one way: it warms, cools, fills or drains while it is read, so that"
                  + " their mean is the value of no moment."));
    }

    private Finding finding(
        String what,
        String title,
        Judgement judgement,
        Limits limits,
        Source source,
        String remark) {
      boolean temperature = observable.kind().scale() == Scale.TEMPERATURE;
      QuantityKind kind = temperature ? QuantityKind.TEMPERATURE_DIFFERENCE : observable.kind();
      Unit unit =
          temperature
              ? kind.unit()
              : ((Reading.Value) measurement.readings().get(0)).quantity().unit();
      return new Finding(
          "repeated-readings-" + what + name,
          measurement.component(),
          observable.id(),
          observable.title() + ": " + title,
          "",
          kind,
          unit,
          judgement,
          limits,
          source,
          observable.procedure().cautions(),
          remark);
    }
  }
}
