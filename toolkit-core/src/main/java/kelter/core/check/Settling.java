package kelter.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Component;
import kelter.core.job.Evaluation;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.QuantityFormat;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Statement;
import kelter.core.vocabulary.Vocabulary;

/**
 * How an undecided finding of a job could be settled: how well the reading must be taken, and which
 * finer range, which other instrument of the job or of the library, or how many repeated readings
 * come up to that. All are computed for a reading of the same value.
 *
 * @param job the job
 * @param vocabulary what can be observed
 * @param instruments instruments that are in the library beside those of any trade
 * @param rule the rule by which the verdicts were given
 * @param readable whether what a finding is about may be read now
 */
public record Settling(
    Job job,
    Vocabulary vocabulary,
    List<Instrument> instruments,
    DecisionRule rule,
    Predicate<Finding> readable) {

  private static final Optional<Statement> LOCKED =
      ToSettle.LOCKED_OUT.told(
          "It cannot be settled now: the machine is locked out from this reading.");

  /**
   * Where everything may be read.
   *
   * @param job the job
   * @param vocabulary what can be observed
   * @param instruments instruments that are in the library beside those of any trade
   * @param rule the rule by which the verdicts were given
   */
  public Settling(Job job, Vocabulary vocabulary, List<Instrument> instruments, DecisionRule rule) {
    this(job, vocabulary, instruments, rule, finding -> true);
  }

  /**
   * The same on a machine from which some readings are locked out.
   *
   * @param allowed whether what a finding is about may be read now
   * @return what tells how to settle the others
   */
  public Settling where(Predicate<Finding> allowed) {
    return new Settling(job, vocabulary, instruments, rule, allowed);
  }

  /** Nobody reads more often than this. */
  private static final double MOST_READINGS = 100;

  private static final String EVERY_DIGIT =
      "Write down every digit that the instrument shows in its finest range. ";

  /**
   * What would settle a finding.
   *
   * @param finding a finding of the job
   * @return sentences; empty if there is a verdict
   */
  public List<Statement> of(Finding finding) {
    Optional<Statement> how = finding.toSettle(rule);
    if (how.isEmpty()) {
      return List.of();
    }
    if (!readable.test(finding)) {
      return LOCKED.stream().toList();
    }
    List<Statement> sentences = new ArrayList<>(how.stream().toList());
    Optional<Estimate> measured = finding.judgement().measured();
    if (measured.isPresent() && !Double.isNaN(finding.judgement().probabilityOfConformity())) {
      double enough = rule.settlingUncertainty(measured.get().value(), finding.limits());
      if (enough > 0) {
        ways(finding, enough).flatMap(ToSettle.INSTRUMENTS::told).ifPresent(sentences::add);
      }
    }
    return sentences;
  }

  private static void add(List<String> sentences, String start, Optional<String> sentence) {
    if (sentence.isPresent()) {
      sentences.add(start + sentence.get());
    }
  }

  /** The ways for a finding whose value was read as it stands, and not computed from others. */
  private Optional<String> ways(Finding finding, double enough) {
    Optional<Component> part = job.appliance().component(finding.component());
    if (part.isEmpty()) {
      return Optional.empty();
    }
    Optional<Observable> observable =
        vocabulary.observable(part.get().kind(), finding.observable());
    if (observable.isEmpty()) {
      return Optional.empty();
    }
    for (Measurement measurement : job.measurements(finding.component(), finding.observable())) {
      Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable.get());
      if (evaluation.isPresent() && isReadOff(finding, evaluation.get())) {
        return Optional.of(ways(finding, observable.get(), measurement, evaluation.get(), enough));
      }
    }
    return Optional.empty();
  }

  private static boolean isReadOff(Finding finding, Evaluation evaluation) {
    Estimate measured = finding.judgement().measured().orElseThrow();
    Estimate read = evaluation.estimate();
    return measured.value() == read.value()
        && measured.standardUncertainty() == read.standardUncertainty();
  }

  private String ways(
      Finding finding,
      Observable observable,
      Measurement measurement,
      Evaluation evaluation,
      double enough) {
    List<String> ways = new ArrayList<>();
    add(ways, "", repeats(evaluation, finding.limits()));
    double value = evaluation.estimate().value();
    for (Instrument instrument : job.instruments()) {
      String words = "'" + instrument.id() + "' of this job";
      add(ways, words, way(instrument, finding, observable, value, enough));
    }
    Optional<Instrument> coarsest = coarsestOfLibrary(observable, value, enough);
    if (coarsest.isPresent()) {
      String words = QuantityFormat.withArticle(coarsest.get().id()) + " as in the library";
      add(ways, words, way(coarsest.get(), finding, observable, value, enough));
    }
    String none = "No instrument of this job or of the library is good enough for that.";
    String settles = ways.isEmpty() ? none : "That does: " + String.join("; ", ways) + ".";
    return isCoarse(observable, measurement, evaluation) ? EVERY_DIGIT + settles : settles;
  }

  /** The coarsest instrument of the library, and not of the job, that is good enough. */
  private Optional<Instrument> coarsestOfLibrary(
      Observable observable, double value, double enough) {
    Optional<Instrument> coarsest = Optional.empty();
    double most = Double.NEGATIVE_INFINITY;
    List<Instrument> library = new ArrayList<>(InstrumentLibrary.instruments());
    library.addAll(instruments);
    for (Instrument instrument : library) {
      double worth = worth(instrument, observable, value);
      if (worth <= enough && worth > most && job.instrument(instrument.id()).isEmpty()) {
        coarsest = Optional.of(instrument);
        most = worth;
      }
    }
    return coarsest;
  }

  /** How often to read, where it is the scatter that is in the way and not the instrument. */
  private Optional<String> repeats(Evaluation evaluation, Limits limits) {
    double ofOne = evaluation.scatter() * Math.sqrt(evaluation.readings());
    for (int n = evaluation.readings() + 1; ofOne > 0 && n <= MOST_READINGS; n++) {
      List<ErrorTerm> errors = new ArrayList<>();
      for (ErrorTerm error : evaluation.quantity().terms()) {
        errors.add(error.scatter() ? ErrorTerm.scatter(ofOne / Math.sqrt(n), n) : error);
      }
      InputQuantity mean = new InputQuantity(evaluation.quantity().value(), errors);
      if (rule.verdict(mean, limits) != Verdict.UNDECIDED) {
        return Optional.of("the mean of " + n + " readings");
      }
    }
    return Optional.empty();
  }

  private Optional<String> way(
      Instrument instrument, Finding finding, Observable observable, double value, double enough) {
    double u = worth(instrument, observable, value);
    if (!(u <= enough)) {
      return Optional.empty();
    }
    double told = QuantityFormat.COVERAGE_FACTOR * u / finding.unit().factor();
    return Optional.of(
        " (± " + (QuantityFormat.plain(told) + " " + finding.unit().symbol()).strip() + ")");
  }

  /** What a reading of the value by an instrument would be worth; infinite if it cannot read it. */
  private static double worth(Instrument instrument, Observable observable, double value) {
    Optional<Instrument.Function> range = instrument.range(observable.kind(), value);
    return range.isPresent() && range.get().reaches(value)
        ? range.get().standardUncertainty(value)
        : Double.POSITIVE_INFINITY;
  }

  /** Whether a reading is written with fewer digits than its range shows. */
  private boolean isCoarse(Observable observable, Measurement measurement, Evaluation evaluation) {
    if (measurement.instrument().isEmpty()) {
      return false;
    }
    Optional<Instrument> meter = job.instrument(measurement.instrument().get());
    if (meter.isEmpty()) {
      return false;
    }
    Optional<Instrument.Function> range =
        meter.get().range(observable.kind(), evaluation.estimate().value());
    double count = range.isPresent() ? range.get().resolution() : 0;
    return count > 0 && evaluation.rounding() > 2 * count / Math.sqrt(12);
  }
}
