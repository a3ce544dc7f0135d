package kelter.core.job.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.core.check.Check;
import kelter.core.check.Checker;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What only a job made in code can have wrong, and that nothing is checked on such a job. */
class JobRulesTest {

  private static final Source SOURCE = Source.commonPractice("a test");
  private static final Procedure READ =
      new Procedure("Read it.", 1, Hazard.DEAD, new Accuracy(0.01, 0), List.of());
  private static final Quantity OHMS = Quantity.of(19.5, "Ohm", QuantityKind.RESISTANCE);

  private static final Vocabulary VOCABULARY =
      new Vocabulary(
          List.of(
              new ComponentKind(
                  "heater",
                  "heater",
                  List.of(
                      quantity("resistance", QuantityKind.RESISTANCE, new Span(0, 1e6)),
                      quantity("insulation", QuantityKind.INSULATION_RESISTANCE, new Span(0, 1e12)),
                      quantity("temperature", QuantityKind.TEMPERATURE, new Span(250, 600)),
                      quantity("pressure", QuantityKind.GAUGE_PRESSURE, new Span(-1e5, 1e6)),
                      Observable.named("scale", "scale").graded("none", "some", "much").by(READ)),
                  List.of(
                      new Characteristic("airflow", "airflow", QuantityKind.FLOW),
                      new Characteristic("share", "share", QuantityKind.PERCENT)),
                  List.of())));

  private static Observable quantity(String id, QuantityKind kind, Span span) {
    return Observable.named(id, id).quantity(kind, span.low(), span.high()).by(READ);
  }

  private static Appliance machine(Map<String, Quantity> figures) {
    Component heater =
        new Component("heater", "heater", Nameplate.UNREADABLE, figures, Map.of(), SOURCE);
    return new Appliance(
        "dryer", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(heater));
  }

  private static Measurement measurement(String observable, Optional<String> with, Reading read) {
    return new Measurement("heater", observable, List.of(read), Conditions.NONE, with, "");
  }

  private static Job job(Map<String, Quantity> figures, Measurement... measurements) {
    return new Job(
        "made",
        "",
        machine(figures),
        Complaint.NONE,
        List.of(),
        List.of(measurements),
        Optional.empty());
  }

  private static String told(Job job) {
    List<Problem> problems = JobRules.problems(job, VOCABULARY);
    assertEquals(1, problems.size(), problems.toString());
    return problems.get(0).display();
  }

  private static String read(String observable, Reading reading) {
    return told(job(Map.of(), measurement(observable, Optional.empty(), reading)));
  }

  private static Reading value(double value, String unit, QuantityKind kind) {
    return new Reading.Value(Quantity.of(value, unit, kind), 0);
  }

  /** A check that would find fault with every job, and must not be asked about a wrong one. */
  private record Unasked() implements Check {
    @Override
    public String id() {
      return "unasked";
    }

    @Override
    public String title() {
      return "Is it asked?";
    }

    @Override
    public List<Finding> apply(Job job, DecisionRule rule) {
      throw new AssertionError("a check was asked about a job that breaks the rules");
    }
  }

  @Test
  void noCheckRunsOnAMassForAResistanceAndAVoltageForAnAirflow() {
    Job job =
        job(
            Map.of("airflow", Quantity.of(2600, "V", QuantityKind.VOLTAGE)),
            measurement("resistance", Optional.empty(), value(19.5, "kg", QuantityKind.MASS)));
    Checker checker =
        new Checker(List.of(new Unasked()), VOCABULARY, List.of(), DecisionRule.USUAL);

    InputException refused = assertThrows(InputException.class, () -> checker.findings(job));

    assertEquals(
        List.of(
            "component 'heater', figure 'airflow': a flow rate is expected, for instance in"
                + " L/min, not a value in V",
            "measurement 1 'heater.resistance', reading 1: a resistance is expected, for instance"
                + " in Ohm, not a value in kg"),
        refused.problems().stream().map(Problem::display).toList());
    assertThrows(
        AssertionError.class,
        () -> checker.findings(job(Map.of())),
        "a job that keeps the rules is checked");
  }

  private static Job reporting(List<SymptomReport> reports) {
    return new Job(
        "made",
        "",
        machine(Map.of()),
        new Complaint(Complaint.Reason.FAULT, "", "", reports),
        List.of(),
        List.of(measurement("resistence", Optional.empty(), new Reading.OverRange())),
        Optional.empty());
  }

  private static SymptomReport yes(String symptom) {
    return new SymptomReport(symptom, SymptomReport.Answer.YES);
  }

  @Test
  void mistakesInReportsAreToldWithAllOthers() {
    List<Problem> problems =
        JobRules.problems(
            reporting(
                List.of(
                    yes("leaks"),
                    yes("leeks"),
                    yes("loud"),
                    new SymptomReport("leaks", SymptomReport.Answer.NO))),
            VOCABULARY);

    assertEquals(
        List.of(
            "symptom 'leeks': 'leeks' is not a known symptom; did you mean 'leaks'?",
            "symptoms: symptom 'leaks' is reported twice; keep one report of each",
            "measurement 1 'heater.resistence', observable: 'resistence' is not a known observable"
                + " of a heater; did you mean 'resistance'?"),
        problems.stream().map(Problem::display).toList());
  }

  @Test
  void fortyReportsAreWeighedTogetherAndNoMore() {
    List<SymptomReport> reports =
        VOCABULARY.symptoms().stream().map(symptom -> yes(symptom.id())).toList();
    Job enough = reporting(reports.subList(0, 40));
    Job more = reporting(reports.subList(0, 41));

    assertEquals(1, JobRules.problems(enough, VOCABULARY).size(), "the resistance only");
    assertEquals(
        "symptoms: 41 reports of symptoms; up to 40 are weighed together;"
            + " leave out those that tell least",
        JobRules.problems(more, VOCABULARY).get(0).display());
  }

  @Test
  void kindsOfOneDimensionDoNotStandForEachOther() {
    assertTrue(
        read("temperature", value(300, "K", QuantityKind.TEMPERATURE_DIFFERENCE))
            .contains("a temperature is expected, not a temperature difference"));
    assertTrue(
        read("pressure", value(100, "kPa", QuantityKind.ABSOLUTE_PRESSURE))
            .contains("a gauge pressure is expected, not an absolute pressure"));
    assertTrue(
        read("insulation", new Reading.Above(OHMS))
            .contains("an insulation resistance is expected, not a resistance"));
  }

  @Test
  void aRatioIsAPercentage() {
    Quantity half = Quantity.of(0.5, "1", QuantityKind.RATIO);
    assertEquals(List.of(), JobRules.problems(job(Map.of("share", half)), VOCABULARY));
  }

  @Test
  void namesOfOnesOwnAreLeftAlone() {
    assertEquals(List.of(), JobRules.problems(job(Map.of("x-shelf", OHMS)), VOCABULARY));
  }

  @Test
  void theRankOfAGradeIsItsPlaceOnTheScale() {
    assertTrue(read("scale", new Reading.Grade("some", 2)).contains("has rank 1"));
    assertTrue(read("scale", new Reading.OverRange()).contains("not one of none, some, much"));
  }

  @Test
  void anInstrumentOfTheLibraryIsCarriedByTheJob() {
    Measurement reading =
        measurement("resistance", Optional.of("milliohmmeter"), new Reading.Value(OHMS, 0.1));
    assertTrue(told(job(Map.of(), reading)).contains("add it to the instruments of the job"));
  }

  static Stream<Arguments> nulls() {
    Nameplate none = Nameplate.UNREADABLE;
    Map<String, Quantity> figures = new HashMap<>();
    figures.put("airflow", null);
    List<Reading> readings = new ArrayList<>(Arrays.asList(new Reading.OverRange(), null));
    return Stream.of(
        made(
            "age of an appliance", () -> new Appliance("dryer", "", "", "", null, none, List.of())),
        made("nameplate of an appliance", () -> appliance(null, List.of())),
        made("components of an appliance", () -> appliance(none, null)),
        made("id of a component", () -> component(null, Map.of())),
        made("figures of a component", () -> component("heater", null)),
        made("figures of a component: 'airflow'", () -> component("heater", figures)),
        made("conditions of a reading: 'airflow'", () -> new Conditions(figures)),
        made("readings of a measurement: number 2", () -> measurement(readings)),
        made("instrument of a measurement", () -> measurement("resistance", null, OL)),
        made("value of a reading", () -> new Reading.Value(null, 0)),
        made("limit of a reading", () -> new Reading.Above(null)),
        made("y of a point of a curve", () -> new Curve.Point(OHMS, null)),
        made("lower limit of a rated range", () -> new RatedRange(null, OHMS)),
        made("current of a nameplate", () -> current(null)),
        made("what the owner says", () -> new Complaint(null, "")),
        made("appliance of a job", () -> job((Appliance) null)),
        made("vocabulary", () -> JobRules.problems(job(Map.of()), null)));
  }

  private static final Reading OL = new Reading.OverRange();

  private static Arguments made(String field, Executable maker) {
    return Arguments.of(field, maker);
  }

  private static Appliance appliance(Nameplate plate, List<Component> components) {
    return new Appliance("dryer", "", "", "", Optional.empty(), plate, components);
  }

  private static Component component(String id, Map<String, Quantity> figures) {
    return new Component(id, "heater", Nameplate.UNREADABLE, figures, Map.of(), SOURCE);
  }

  private static Measurement measurement(List<Reading> readings) {
    return new Measurement("heater", "resistance", readings, Conditions.NONE, Optional.empty(), "");
  }

  private static Nameplate current(Optional<Quantity> current) {
    return new Nameplate(
        Optional.empty(), Optional.empty(), Optional.empty(), current, Optional.empty());
  }

  private static Job job(Appliance appliance) {
    return new Job("made", "", appliance, Complaint.NONE, List.of(), List.of(), Optional.empty());
  }

  @ParameterizedTest
  @MethodSource("nulls")
  void nullIsRefusedWithTheNameOfTheField(String field, Executable maker) {
    String told = assertThrows(NullPointerException.class, maker).getMessage();
    assertTrue(told.startsWith(field), told);
    assertTrue(told.contains(" is null"), told);
  }

  @Test
  void aResolutionIsFiniteAndNotNegative() {
    for (double resolution : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new Reading.Value(OHMS, resolution));
    }
  }
}
