package kelter.core.job.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.problem.InputException;
import kelter.core.problem.Place;
import kelter.core.problem.Problem;
import kelter.core.problem.Required;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Possible;
import kelter.core.vocabulary.Vocabulary;

/**
 * The rules that a job keeps before anything is checked or diagnosed, wherever it comes from: its
 * words are known to the modules, its quantities are of the kinds that those words ask for and can
 * be at all, and its parts fit each other.
 *
 * <p>What a record can tell by itself, such as the form of an id or a curve whose points do not
 * rise, it refuses when it is made.
 */
public final class JobRules {

  private final Job job;
  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();

  private JobRules(Job job, Vocabulary vocabulary) {
    this.job = Required.value(job, "job");
    this.vocabulary = Required.value(vocabulary, "vocabulary");
  }

  /**
   * All that is wrong with a job.
   *
   * @param job the job
   * @param vocabulary the words of all modules
   * @return the mistakes in the order of the job, each with its place in words, for instance {@code
   *     component 'heater', figure 'airflow'}; empty if there are none
   */
  public static List<Problem> problems(Job job, Vocabulary vocabulary) {
    JobRules rules = new JobRules(job, vocabulary);
    rules.date();
    rules.appliance();
    SymptomRules.hold(job, vocabulary, rules.problems);
    rules.instruments();
    rules.measurements();
    new OwnerRules(rules.problems).hold(job);
    new SizeRules(rules.problems).hold(job);
    return List.copyOf(rules.problems);
  }

  /**
   * Refuses a job that does not keep the rules.
   *
   * @param job the job
   * @param vocabulary the words of all modules
   * @return the job
   * @throws InputException with all that is wrong with it
   */
  public static Job require(Job job, Vocabulary vocabulary) {
    List<Problem> problems = problems(job, vocabulary);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return job;
  }

  private void date() {
    try {
      if (!job.date().isEmpty()) {
        CalendarDate.require(job.date());
      }
    } catch (IllegalArgumentException refused) {
      Spot.of("date", problems).refuse(refused);
    }
  }

  private void appliance() {
    Appliance appliance = job.appliance();
    Spot at = Spot.of("appliance", problems);
    if (appliance.age().isPresent()) {
      Quantity age = appliance.age().get();
      EntryRules.age(age, age.format(), at.in("age"));
    }
    nameplate(appliance.nameplate(), at);
    Set<String> ids = new HashSet<>();
    for (Component component : appliance.components()) {
      component(component, at("component", component.id()));
      EntryRules.once(ids, "component", component.id(), at);
    }
  }

  private Spot at(String part, String name) {
    return new Spot(null, part, name, problems);
  }

  private static void nameplate(Nameplate nameplate, Spot owner) {
    Spot at = owner.in("nameplate");
    range(nameplate.voltage(), QuantityKind.VOLTAGE, at.in("voltage"));
    range(nameplate.frequency(), QuantityKind.FREQUENCY, at.in("frequency"));
    range(nameplate.power(), QuantityKind.POWER, at.in("power"));
    if (nameplate.current().isPresent()) {
      kind(nameplate.current().get(), QuantityKind.CURRENT, at.in("current"));
    }
  }

  /** Both limits of a range are of one kind. */
  private static void range(Optional<RatedRange> range, QuantityKind kind, Place at) {
    if (range.isPresent()) {
      kind(range.get().low(), kind, at);
    }
  }

  static void kind(Quantity quantity, QuantityKind kind, Place at) {
    try {
      Expected.of(kind).require(Possible.requireKind(quantity, kind));
    } catch (IllegalArgumentException refused) {
      at.refuse(refused);
    }
  }

  private void component(Component component, Spot at) {
    Optional<ComponentKind> kind = EntryRules.kind(component.kind(), vocabulary, at.in("kind"));
    nameplate(component.nameplate(), at);
    if (kind.isPresent()) {
      figures(component.figures(), kind.get().figures(), "figure", at);
      curves(component.curves(), kind.get(), at);
    }
  }

  private static void figures(
      Map<String, Quantity> figures, List<Characteristic> words, String what, Spot at) {
    Map<String, Characteristic> known = new LinkedHashMap<>();
    for (Characteristic word : words) {
      known.put(word.id(), word);
    }
    for (Map.Entry<String, Quantity> figure : figures.entrySet()) {
      Spot here = at.in(what, figure.getKey());
      if (isWord(figure.getKey(), known.keySet(), here)) {
        EntryRules.figure(figure.getValue(), known.get(figure.getKey()), here);
      }
    }
  }

  /** Whether a name is a word of the modules; one that is nobody's is noted. */
  private static boolean isWord(String name, Set<String> known, Place at) {
    if (!Place.mayBeNamed(name, known)) {
      at.unknownName(name, known);
    }
    return known.contains(name);
  }

  private static void curves(Map<String, Curve> curves, ComponentKind kind, Spot at) {
    Map<String, CurveKind> known = new LinkedHashMap<>();
    for (CurveKind word : kind.curves()) {
      known.put(word.id(), word);
    }
    for (Map.Entry<String, Curve> curve : curves.entrySet()) {
      Spot here = at.in("curve", curve.getKey());
      if (isWord(curve.getKey(), known.keySet(), here)) {
        curve(curve.getValue(), known.get(curve.getKey()), here);
      }
    }
  }

  private static void curve(Curve curve, CurveKind kind, Spot at) {
    int number = 0;
    for (Curve.Point point : curve.points()) {
      number++;
      Spot here = at.in("point", number);
      kind(point.x(), kind.x(), here.in("x"));
      kind(point.y(), kind.y(), here.in("y"));
    }
  }

  private void instruments() {
    Set<String> ids = new HashSet<>();
    for (Instrument instrument : job.instruments()) {
      EntryRules.once(ids, "instrument", instrument.id(), Spot.of("instruments", problems));
    }
  }

  private void measurements() {
    int number = 0;
    for (Measurement measurement : job.measurements()) {
      number++;
      String what = measurement.component() + "." + measurement.observable();
      measurement(measurement, at("measurement " + number, what));
    }
  }

  private void measurement(Measurement measurement, Spot at) {
    Optional<Component> component =
        EntryRules.component(measurement.component(), job.appliance(), at.in("component"));
    Optional<ComponentKind> kind =
        component.isPresent() ? vocabulary.kind(component.get().kind()) : Optional.empty();
    Optional<Observable> observable =
        kind.isPresent()
            ? EntryRules.observable(measurement.observable(), kind.get(), at.in("observable"))
            : Optional.empty();
    Optional<Instrument> instrument = instrument(measurement, at.in("instrument"));
    if (observable.isEmpty()) {
      return;
    }
    if (instrument.isPresent()) {
      EntryRules.function(instrument.get(), observable.get(), at.in("instrument"));
    }
    readings(measurement.readings(), observable.get(), instrument, at);
    figures(measurement.conditions().figures(), observable.get().conditions(), "condition", at);
  }

  /** What a measurement was taken with, which a job in memory must carry. */
  private Optional<Instrument> instrument(Measurement measurement, Place at) {
    Optional<String> id = measurement.instrument();
    Optional<Instrument> carried = id.isPresent() ? job.instrument(id.get()) : Optional.empty();
    if (id.isPresent()
        && carried.isEmpty()
        && EntryRules.instrument(id.get(), job.instruments(), at).isPresent()) {
      at.problem(
          "'" + id.get() + "' is of the library, and the job does not carry it",
          "add it to the instruments of the job");
    }
    return carried;
  }

  private static void readings(
      List<Reading> readings, Observable observable, Optional<Instrument> instrument, Spot at) {
    int number = 0;
    for (Reading reading : readings) {
      number++;
      try {
        ReadingParser.require(reading, observable);
        if (instrument.isPresent()) {
          EntryRules.range(instrument.get(), reading, observable, at.in("reading", number));
        }
      } catch (IllegalArgumentException refused) {
        at.in("reading", number).refuse(refused);
      }
    }
  }
}
