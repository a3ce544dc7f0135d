package kelter.electrical.compressor;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;

/** What the windings of a compressor may measure. */
final class CompressorChecks {

  /** How far the sum may lie off, as a ratio, and what two more contacts add, Ohm. */
  private static final double WITHIN = 0.05;

  private static final double CONTACTS = 0.4;

  private CompressorChecks() {}

  /** From end to end one measures the run and the start winding in series. */
  static Optional<Allowed> sum(Measured measured) {
    double run = value(measured, CompressorWinding.RUN_RESISTANCE);
    double start = value(measured, CompressorWinding.START_RESISTANCE);
    double sum = run + start;
    String title = "end to end against run and start winding together";
    Source source =
        Source.commonPractice("within 5 % of the sum, by the law of resistances in series");
    return Optional.of(
        sum > 0
            ? Allowed.of(
                title,
                source,
                new Limits(sum * (1 - WITHIN) - CONTACTS, sum * (1 + WITHIN) + CONTACTS))
            : Allowed.without(
                title, source, "measure run and start winding to the common terminal too"));
  }

  /** The last value read; NaN if there is none, as of an open winding. */
  private static double value(Measured measured, Observable observable) {
    List<Measurement> all = measured.job().measurements(measured.component().id(), observable.id());
    if (all.isEmpty()) {
      return Double.NaN;
    }
    Reading reading = all.get(all.size() - 1).readings().get(0);
    return reading instanceof Reading.Value value ? value.quantity().si() : Double.NaN;
  }
}
