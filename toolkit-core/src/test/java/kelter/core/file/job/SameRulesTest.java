package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Prices;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.job.rule.JobRules;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same mistake in a file and in a job that a program made is refused with the same words. */
class SameRulesTest {

  private static final Job SOUND = StatedJob.parse(Samples.FULL, Samples.VOCABULARY).job();

  /** What stands in the file, what takes its place, the same in code, its place there, words. */
  private record Mistake(
      String right, String wrong, UnaryOperator<Job> made, String place, String words) {
    @Override
    public String toString() {
      return place + ": " + wrong;
    }

    String text() {
      assertTrue(Samples.FULL.contains(right), right);
      return Samples.FULL.replace(right, wrong);
    }
  }

  private static Mistake mistake(
      String right, String wrong, UnaryOperator<Job> made, String place, String words) {
    return new Mistake(right, wrong, made, place, words);
  }

  static Stream<Mistake> appliances() {
    String volts = "a voltage is expected, for instance in V, not a value in W";
    return Stream.of(
        mistake("\"4,5 years\"", "\"-4 a\"", age(-4, "a"), "appliance, age", "is negative"),
        mistake("\"4,5 years\"", "\"300 a\"", age(300, "a"), "appliance, age", "up to 100 years"),
        mistake(
            "\"230 V\"",
            "\"230 W\"",
            job -> plate(job, plate -> rated(plate, figure(230, "W", QuantityKind.POWER))),
            "appliance, nameplate, voltage",
            volts),
        mistake(
            "\"1.8 A\"",
            "\"1.8 V\"",
            job -> plate(job, plate -> current(plate, figure(1.8, "V", QuantityKind.VOLTAGE))),
            "appliance, nameplate, current",
            "a current is expected"),
        mistake(
            "\"kind\": \"bilge-pump\"",
            "\"kind\": \"bilge-pumpe\"",
            job -> component(job, pump -> of("bilge-pumpe", pump, pump.figures(), pump.curves())),
            "component 'pump', kind",
            "did you mean 'bilge-pump'?"),
        mistake(
            "\"lift\": \"0.8 m\"",
            "\"lift\": \"2600 V\"",
            job -> figures(job, "lift", figure(2600, "V", QuantityKind.VOLTAGE)),
            "component 'pump', figure 'lift'",
            "a head is expected, for instance in m, not a value in V"),
        mistake(
            "\"lift\": \"0.8 m\"",
            "\"lft\": \"0.8 m\"",
            job -> figures(job, "lft", figure(0.8, "m", QuantityKind.HEAD)),
            "component 'pump', figure 'lft'",
            "did you mean 'lift'?"),
        mistake(
            "\"curves\": { \"head\"",
            "\"curves\": { \"hed\"",
            job -> curve(job, "hed", figure(2.1, "m", QuantityKind.HEAD)),
            "component 'pump', curve 'hed'",
            "did you mean 'head'?"),
        mistake(
            "\"2.1 m\"",
            "\"2.1 V\"",
            job -> curve(job, "head", figure(2.1, "V", QuantityKind.VOLTAGE)),
            "component 'pump', curve 'head', point 2, y",
            "a head is expected"),
        mistake(
            "\"components\": [",
            "\"components\": [ { \"id\": \"pump\", \"kind\": \"bilge-pump\" },",
            job -> components(job, pump -> List.of(pump, pump)),
            "appliance",
            "component 'pump' occurs twice"));
  }

  static Stream<Mistake> measurements() {
    Quantity metre = figure(1.5, "m", QuantityKind.HEAD);
    return Stream.of(
        mistake(
            "\"1.60 m\"",
            "\"19.5 kg\"",
            read(0, new Reading.Value(figure(19.5, "kg", QuantityKind.MASS), 0.1)),
            "measurement 1 'pump.head', reading 2",
            "a head is expected, for instance in m, not a value in kg"),
        mistake(
            "\"1.60 m\"",
            "\"> 19.5 kg\"",
            read(0, new Reading.Above(figure(19.5, "kg", QuantityKind.MASS))),
            "measurement 1 'pump.head', reading 2",
            "a head is expected"),
        mistake(
            "\"1.60 m\"",
            "\"yes\"",
            read(0, new Reading.YesNo(true)),
            "measurement 1 'pump.head', reading 2",
            "'yes' is not a number with a unit"),
        mistake(
            "\"reading\": true",
            "\"reading\": \"1.5 m\"",
            read(1, new Reading.Value(metre, 0.1)),
            "measurement 2 'pump.hums', reading 1",
            "'1.5 m' is neither yes nor no"),
        mistake(
            "\"reading\": \"some\"",
            "\"reading\": \"sme\"",
            read(2, new Reading.Grade("sme", 1)),
            "measurement 3 'pump.dirt', reading 1",
            "not one of none, some, much; did you mean 'some'?"),
        mistake(
            "\"reading\": \"some\"",
            "\"reading\": \"1.5 m\"",
            read(2, new Reading.Value(metre, 0.1)),
            "measurement 3 'pump.dirt', reading 1",
            "'1.5 m' is not one of none, some, much"),
        mistake(
            "\"flow\": \"0 L/min\"",
            "\"flow\": \"2600 V\"",
            at("flow", figure(2600, "V", QuantityKind.VOLTAGE)),
            "measurement 1 'pump.head', condition 'flow'",
            "a flow rate is expected, for instance in L/min, not a value in V"),
        mistake(
            "\"flow\": \"0 L/min\"",
            "\"flow\": \"-3 L/min\"",
            at("flow", figure(-3, "L/min", QuantityKind.FLOW)),
            "measurement 1 'pump.head', condition 'flow'",
            "never negative"),
        mistake(
            "\"flow\": \"0 L/min\"",
            "\"flaw\": \"0 L/min\"",
            at("flaw", figure(0, "L/min", QuantityKind.FLOW)),
            "measurement 1 'pump.head', condition 'flaw'",
            "did you mean 'flow'?"),
        mistake(
            "\"24 °C\"",
            "\"240 °C\"",
            at("temperature", figure(240, "Cel", QuantityKind.TEMPERATURE)),
            "measurement 1 'pump.head', condition 'temperature'",
            "-40 to 200"),
        mistake(
            "\"observable\": \"dirt\"",
            "\"observable\": \"dirrt\"",
            measured(2, m -> like(m, "pump", "dirrt", m.instrument())),
            "measurement 3 'pump.dirrt', observable",
            "observable of a bilge-pump"),
        mistake(
            "\"of\": \"pump\", \"observable\": \"dirt\"",
            "\"of\": \"pmp\", \"observable\": \"dirt\"",
            measured(2, m -> like(m, "pmp", "dirt", m.instrument())),
            "measurement 3 'pmp.dirt', component",
            "did you mean 'pump'?"));
  }

  static Stream<Mistake> others() {
    return Stream.of(
        mistake("\"2026-03-01\"", "\"1.3.26\"", job -> dated(job, "1.3.26"), "date", "yyyy-mm-dd"),
        mistake(
            "\"2026-03-01\"",
            "\"0000-01-01\"",
            job -> dated(job, "0000-01-01"),
            "date",
            "the year of '0000-01-01' is before 1900"),
        mistake(
            "\"instrument\": \"standpipe\"",
            "\"instrument\": \"tape-mesure\"",
            measured(0, m -> like(m, "pump", "head", Optional.of("tape-mesure"))),
            "measurement 1 'pump.head', instrument",
            "did you mean 'tape-measure'?"),
        mistake(
            "\"accuracy\": \"5 mm\"",
            "\"accuracy\": \"5 mm\", \"range\": \"1.61 m\"",
            job -> instruments(job, List.of(endingAt(1.61, job))),
            "measurement 1 'pump.head', reading 1",
            "1.62 m is beyond the range of 'standpipe', which ends at 1.61 m"),
        mistake(
            "\"measures\": \"head\", \"accuracy\": \"5 mm\"",
            "\"measures\": \"frequency\", \"accuracy\": \"1 %\"",
            job -> instruments(job, List.of(counter(job))),
            "measurement 1 'pump.head', instrument",
            "'standpipe' measures frequency, temperature, and the reading is a head"),
        mistake(
            "\"instruments\": [",
            "\"instruments\": [ { \"id\": \"standpipe\" },",
            job -> instruments(job, List.of(job.instruments().get(0), job.instruments().get(0))),
            "instruments",
            "instrument 'standpipe' occurs twice"),
        mistake(
            "\"loud\": \"sometimes\"",
            "\"lod\": \"sometimes\"",
            job -> reported(job, "lod"),
            "symptom 'lod'",
            "'lod' is not a known symptom; did you mean 'loud'?"),
        mistake(
            "\"loud\": \"sometimes\"",
            "\"shaking-walk\": \"sometimes\"",
            job -> reported(job, "shaking-walk"),
            "symptom 'shaking-walk'",
            "did you mean 'vibrates'?"),
        mistake(
            "\"discount-rate\": \"4 %\"",
            "\"discount-rate\": \"0.5 kg\"",
            job -> priced(job, figure(0.5, "kg", QuantityKind.MASS)),
            "prices, discount rate",
            "a percentage is expected"),
        mistake(
            "\"cycles-per-week\": \"14\"",
            "\"cycles-per-week\": \"14 kg\"",
            job -> used(job, figure(14, "kg", QuantityKind.MASS)),
            "use, cycles a week",
            "a ratio is expected"));
  }

  @ParameterizedTest
  @MethodSource({"appliances", "measurements", "others"})
  void isToldWithTheSameWords(Mistake mistake) {
    List<Problem> read =
        assertThrows(
                InputException.class, () -> StatedJob.parse(mistake.text(), Samples.VOCABULARY))
            .problems();
    List<Problem> made = JobRules.problems(mistake.made().apply(SOUND), Samples.VOCABULARY);

    assertEquals(mistake.place(), made.get(0).where());
    assertTrue(made.get(0).display().contains(mistake.words()), made.get(0).display());
    assertEquals(read.get(0).what(), made.get(0).what());
    assertEquals(read.get(0).remedy(), made.get(0).remedy());
    assertEquals(1, made.size(), made.toString());
  }

  @Test
  void severalMistakesAreToldTogetherInTheOrderOfTheJob() {
    Job job = SOUND;
    List<Mistake> mistakes =
        Stream.of(appliances().skip(5).limit(1), measurements().limit(1), others().limit(1))
            .flatMap(each -> each)
            .toList();
    String text = Samples.FULL;
    for (Mistake mistake : mistakes) {
      job = mistake.made().apply(job);
      text = text.replace(mistake.right(), mistake.wrong());
    }
    String wrong = text;
    Job made = job;

    InputException refused =
        assertThrows(InputException.class, () -> JobRules.require(made, Samples.VOCABULARY));
    assertEquals(
        List.of("date", "component 'pump', figure 'lift'", "measurement 1 'pump.head', reading 2"),
        refused.problems().stream().map(Problem::where).toList());
    assertEquals(
        assertThrows(InputException.class, () -> StatedJob.parse(wrong, Samples.VOCABULARY))
            .problems()
            .stream()
            .map(Problem::what)
            .toList(),
        refused.problems().stream().map(Problem::what).toList());
  }

  @Test
  void aJobFromAFileKeepsTheRules() {
    assertEquals(List.of(), JobRules.problems(SOUND, Samples.VOCABULARY));
  }

  private static Quantity figure(double value, String unit, QuantityKind kind) {
    return Quantity.of(value, unit, kind);
  }

  private static Job with(Job job, Appliance appliance, List<Measurement> measurements) {
    return new Job(
        job.id(),
        job.date(),
        appliance,
        job.complaint(),
        job.instruments(),
        measurements,
        job.prices(),
        job.use());
  }

  private static Job with(
      Job job, String date, List<Instrument> instruments, Optional<Prices> prices, Use use) {
    return new Job(
        job.id(),
        date,
        job.appliance(),
        job.complaint(),
        instruments,
        job.measurements(),
        prices,
        use);
  }

  private static Job reported(Job job, String symptom) {
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        job.complaint().with(new SymptomReport(symptom, SymptomReport.Answer.YES)),
        job.instruments(),
        job.measurements(),
        job.prices(),
        job.use());
  }

  private static Job dated(Job job, String date) {
    return with(job, date, job.instruments(), job.prices(), job.use());
  }

  private static Job instruments(Job job, List<Instrument> instruments) {
    return with(job, job.date(), instruments, job.prices(), job.use());
  }

  private static Instrument counter(Job job) {
    Instrument.Function thermometer = job.instruments().get(0).functions().get(1);
    return new Instrument(
        "standpipe",
        "",
        List.of(
            new Instrument.Function(QuantityKind.FREQUENCY, new Accuracy(0.01, 0)), thermometer));
  }

  private static Instrument endingAt(double metres, Job job) {
    List<Instrument.Function> functions = job.instruments().get(0).functions();
    Instrument.Function head = functions.get(0);
    return new Instrument(
        "standpipe",
        "",
        List.of(
            new Instrument.Function(head.kind(), head.error(), head.resolution(), metres),
            functions.get(1)));
  }

  private static Job used(Job job, Quantity cycles) {
    Use use =
        new Use(
            Optional.of(cycles),
            job.use().builtForCycles(),
            job.use().now(),
            job.use().next(),
            job.use().carbon());
    return with(job, job.date(), job.instruments(), job.prices(), use);
  }

  private static Job priced(Job job, Quantity rate) {
    Prices old = job.prices().orElseThrow();
    Prices prices =
        new Prices(
            old.currency(),
            old.labourPerHour(),
            old.callOut(),
            old.replacement(),
            old.installation(),
            old.runningPerYear(),
            old.runningPerYearNew(),
            Optional.of(rate),
            old.parts(),
            old.terms(),
            old.supplies(),
            old.spread());
    return with(job, job.date(), job.instruments(), Optional.of(prices), job.use());
  }

  private static Job machine(
      Job job, Optional<Quantity> age, Nameplate plate, List<Component> components) {
    String kind = job.appliance().kind();
    return with(job, new Appliance(kind, "", "", "", age, plate, components), job.measurements());
  }

  private static UnaryOperator<Job> age(double value, String unit) {
    return job ->
        machine(
            job,
            Optional.of(figure(value, unit, QuantityKind.AGE)),
            job.appliance().nameplate(),
            job.appliance().components());
  }

  private static Job plate(Job job, UnaryOperator<Nameplate> change) {
    Appliance old = job.appliance();
    return machine(job, old.age(), change.apply(old.nameplate()), old.components());
  }

  private static Nameplate rated(Nameplate plate, Quantity voltage) {
    return new Nameplate(
        Optional.of(new RatedRange(voltage, voltage)),
        plate.frequency(),
        plate.power(),
        plate.current(),
        plate.protectionClass());
  }

  private static Nameplate current(Nameplate plate, Quantity current) {
    return new Nameplate(
        plate.voltage(),
        plate.frequency(),
        plate.power(),
        Optional.of(current),
        plate.protectionClass());
  }

  private static Job components(Job job, Function<Component, List<Component>> change) {
    Appliance old = job.appliance();
    return machine(job, old.age(), old.nameplate(), change.apply(old.components().get(0)));
  }

  private static Job component(Job job, UnaryOperator<Component> change) {
    return components(job, pump -> List.of(change.apply(pump)));
  }

  private static Component of(
      String kind, Component like, Map<String, Quantity> figures, Map<String, Curve> curves) {
    return new Component(like.id(), kind, like.nameplate(), figures, curves, like.source());
  }

  private static Job figures(Job job, String name, Quantity figure) {
    return component(job, pump -> of(pump.kind(), pump, Map.of(name, figure), pump.curves()));
  }

  private static Job curve(Job job, String name, Quantity last) {
    return component(
        job,
        pump -> {
          List<Curve.Point> points = new ArrayList<>(pump.curves().get("head").points());
          points.set(1, new Curve.Point(points.get(1).x(), last));
          return of(pump.kind(), pump, pump.figures(), Map.of(name, new Curve(points)));
        });
  }

  private static UnaryOperator<Job> measured(int number, UnaryOperator<Measurement> change) {
    return job -> {
      List<Measurement> measurements = new ArrayList<>(job.measurements());
      measurements.set(number, change.apply(measurements.get(number)));
      return with(job, job.appliance(), measurements);
    };
  }

  private static Measurement like(
      Measurement m, String component, String observable, Optional<String> instrument) {
    return new Measurement(
        component, observable, m.readings(), m.conditions(), instrument, m.note());
  }

  /** The last reading of a measurement is another. */
  private static UnaryOperator<Job> read(int number, Reading last) {
    return measured(
        number,
        m -> {
          List<Reading> readings = new ArrayList<>(m.readings());
          readings.set(readings.size() - 1, last);
          return new Measurement(
              m.component(), m.observable(), readings, m.conditions(), m.instrument(), m.note());
        });
  }

  /** One condition of the first measurement is another. */
  private static UnaryOperator<Job> at(String name, Quantity figure) {
    return measured(
        0,
        m -> {
          Map<String, Quantity> figures = new LinkedHashMap<>(m.conditions().figures());
          figures.remove(name.equals("flaw") ? "flow" : name);
          figures.put(name, figure);
          return new Measurement(
              m.component(),
              m.observable(),
              m.readings(),
              new Conditions(figures),
              m.instrument(),
              m.note());
        });
  }
}
