package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.rule.JobRules;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/** Jobs with many measurements of one thing. */
class RepeatedMeasurementsTest {

  private static final Observable FLOW =
      Observable.named("flow", "flow")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .by(LinearModel.PROCEDURE);

  private static Reading reading(double volts) {
    return new Reading.Value(Quantity.of(volts, "V", QuantityKind.VOLTAGE), 0.1);
  }

  private static Measurement measurement(List<Reading> readings, String component) {
    return new Measurement(component, "flow", readings, Conditions.NONE, Optional.of("meter"), "");
  }

  private static List<Reading> readings(int n) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      readings.add(reading(100 + i % 7));
    }
    return readings;
  }

  private static Job singly(int n) {
    List<Measurement> measurements = new ArrayList<>();
    readings(n).forEach(each -> measurements.add(measurement(List.of(each), "part")));
    return LinearModel.job("slow", measurements);
  }

  private static Measurement at(double kelvins) {
    Conditions conditions =
        new Conditions(Map.of("temperature", Quantity.of(kelvins, "K", QuantityKind.TEMPERATURE)));
    return new Measurement("part", "flow", readings(1), conditions, Optional.of("meter"), "");
  }

  @Test
  void upToTenAreLeftAsTheyAre() {
    Job job = singly(10);

    assertSame(job, job.pooled());
  }

  @Test
  void moreAreOneMeasurementWithAllTheReadings() {
    Job job = singly(3000);

    assertEquals(List.of(measurement(readings(3000), "part")), job.pooled().measurements());
  }

  @Test
  void whatDiffersInItsConditionsStaysByItself() {
    List<Measurement> measurements = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      measurements.add(at(290 + i));
    }
    Job job = LinearModel.job("slow", measurements);

    assertSame(job, job.pooled());
  }

  @Test
  void theDiagnosisIsThatOfOneMeasurementWithAllTheReadings() {
    LinearModel model =
        new LinearModel(
            List.of(FLOW),
            new double[] {103},
            new double[][] {{-20}},
            new double[] {2},
            List.of(LinearModel.fault("low", 0.1)));
    DiagnosisEngine engine = new DiagnosisEngine(EngineSettings.USUAL);

    assertEquals(
        engine.diagnose(
            LinearModel.job("slow", List.of(measurement(readings(3000), "part"))), List.of(model)),
        engine.diagnose(singly(3000), List.of(model)));
  }

  @Test
  void moreThanCanBeWeighedTogetherIsRefused() {
    List<Measurement> measurements = new ArrayList<>();
    for (int i = 0; i < 201; i++) {
      measurements.add(at(200 + i));
    }
    List<Problem> problems =
        JobRules.problems(LinearModel.job("slow", measurements), new Vocabulary(List.of()));

    assertTrue(
        problems.stream()
            .map(Problem::what)
            .anyMatch(
                what ->
                    what.equals(
                        "201 measurements of component 'part'; up to 100 are weighed together")));
    assertTrue(
        problems.stream()
            .map(Problem::what)
            .anyMatch(
                what -> what.equals("201 measurements of a job; up to 200 are weighed together")));
  }

  @Test
  void aMachineHasUpToTwoHundredComponents() {
    Job one = singly(1);
    List<Component> components = new ArrayList<>();
    for (int i = 0; i < 201; i++) {
      components.add(
          new Component(
              "part-" + i,
              "part",
              Nameplate.UNREADABLE,
              Map.of(),
              Map.of(),
              Source.fromMemory("a test")));
    }
    Appliance machine =
        new Appliance("machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, components);
    Job job = new Job("test", "", machine, one.complaint(), List.of(), List.of(), Optional.empty());

    assertTrue(
        JobRules.problems(job, new Vocabulary(List.of())).stream()
            .map(Problem::what)
            .anyMatch(what -> what.startsWith("201 components; a job takes up to 200")));
  }

  @Test
  void aPersonIsToldTheFirstFiveReadings() {
    assertEquals(
        "100 V, 101 V, 102 V, 103 V, 104 V and 2995 more",
        measurement(readings(3000), "part").shown());
    assertEquals("100 V, 101 V", measurement(readings(2), "part").shown());
  }
}
