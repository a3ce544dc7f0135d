package kelter.cli.text;

import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Observable;

/** Figures as a person reads them. */
public final class Figures {

  /** Keeps a figure and its unit on one line. */
  private static final String NEXT_TO = "\u00a0";

  private Figures() {}

  /**
   * A probability in per cent, never rounded to certainty.
   *
   * @param probability from 0 to 1, or NaN if it is not known
   * @return for instance {@code 72 %}
   */
  public static String percent(double probability) {
    if (Double.isNaN(probability)) {
      return "unknown";
    }
    if (probability > 0.99) {
      return ">\u00a099\u00a0%";
    }
    return probability < 0.01 ? "<\u00a01\u00a0%" : Math.round(100 * probability) + "\u00a0%";
  }

  /**
   * What was measured.
   *
   * @param finding a finding
   * @return the value with its uncertainty; the reading as it stands where it has no value
   */
  public static String measured(Finding finding) {
    Optional<Estimate> measured = finding.judgement().measured();
    return measured.isPresent()
        ? estimate(measured.get(), finding.kind(), finding.unit())
        : finding.shown();
  }

  /**
   * A value with its uncertainty.
   *
   * @param estimate the value in the coherent SI unit
   * @param kind what it measures
   * @param unit the unit in which it is told
   * @return for instance {@code 0.62 m ± 0.02 m}
   */
  public static String estimate(Estimate estimate, QuantityKind kind, Unit unit) {
    String figure =
        QuantityFormat.withUncertainty(
            kind.fromSi(estimate.value(), unit), estimate.standardUncertainty() / unit.factor());
    return unit.symbol().isEmpty() ? figure : figure + NEXT_TO + unit.symbol();
  }

  /**
   * What a reading may be.
   *
   * @param finding a finding
   * @return for instance {@code at most 0.3 ohm}
   */
  public static String limits(Finding finding) {
    return limits(finding.limits(), finding.kind(), TellingUnit.of(finding));
  }

  static String limits(Limits limits, QuantityKind kind, Unit unit) {
    String symbol = unit.symbol().isEmpty() ? "" : NEXT_TO + unit.symbol();
    String low = QuantityFormat.plain(kind.fromSi(limits.low(), unit));
    String high = QuantityFormat.plain(kind.fromSi(limits.high(), unit));
    if (Double.isInfinite(limits.low()) && Double.isInfinite(limits.high())) {
      return "no reading";
    }
    if (Double.isInfinite(limits.low()) && limits.high() == 0) {
      return "none";
    }
    if (Double.isInfinite(limits.high())) {
      return "at least " + low + symbol;
    }
    return Double.isInfinite(limits.low())
        ? "at most " + high + symbol
        : low + " to " + high + symbol;
  }

  /**
   * By how much a reading changed.
   *
   * @param difference left less found, in the coherent SI unit
   * @param observable what was read
   * @param told a finding of it, in whose unit it is told
   * @return for instance {@code +0.40 ± 0.03 L/min}
   */
  public static String difference(
      Estimate difference, Observable observable, Optional<Finding> told) {
    Unit unit = told.map(Finding::unit).orElse(observable.kind().unit());
    String figure =
        QuantityFormat.withUncertainty(
            difference.value() / unit.factor(), difference.standardUncertainty() / unit.factor());
    String symbol = observable.kind().scale() == Scale.TEMPERATURE ? "K" : unit.symbol();
    return (difference.value() > 0 ? "+" : "")
        + figure
        + (symbol.isEmpty() ? "" : NEXT_TO + symbol);
  }
}
