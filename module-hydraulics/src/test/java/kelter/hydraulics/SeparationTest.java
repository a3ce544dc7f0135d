package kelter.hydraulics;

import static kelter.hydraulics.Likely.best;
import static kelter.hydraulics.Likely.probability;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/**
 * What readings tell apart, and what they cannot. The directions are those of the general
 * literature on centrifugal pumps: low flow with a full head at no flow is the path, with a low
 * head the pump; high power with low flow is friction or recirculation.
 */
class SeparationTest {

  private static final HydraulicsModule MODULE = new HydraulicsModule();

  private final List<Measurement> read = new ArrayList<>();

  private SeparationTest figure(
      Component of, String observable, double value, String unit, QuantityKind kind) {
    return reading(of, observable, new Reading.Value(Quantity.of(value, unit, kind), 0));
  }

  private SeparationTest grade(Component of, String observable, String word) {
    Observable known =
        new Vocabulary(MODULE.parts().kinds()).observable(of.kind(), observable).orElseThrow();
    return reading(of, observable, new Reading.Grade(word, known.grades().indexOf(word)));
  }

  private SeparationTest reading(Component of, String observable, Reading reading) {
    return reading(of, observable, reading, Conditions.NONE);
  }

  private SeparationTest reading(
      Component of, String observable, Reading reading, Conditions conditions) {
    read.add(
        new Measurement(of.id(), observable, List.of(reading), conditions, Optional.empty(), ""));
    return this;
  }

  private Diagnosis diagnose(Component component) {
    Appliance appliance = SampleMachines.with(component);
    Job job =
        new Job(
            "test",
            "",
            appliance,
            new Complaint("it does not do what it should", ""),
            List.of(),
            read,
            Optional.empty());
    return new DiagnosisEngine(EngineSettings.USUAL)
        .diagnose(job, MODULE.parts().faultModels(appliance));
  }

  /**
   * Full head at no flow and little flow: something is in the way, and no reading so far says
   * where.
   */
  @Test
  void restrictionsStayTogetherUntilSomebodyLooks() {
    Component drain = SampleMachines.drainPump();
    figure(drain, "head", 2.01, "m", QuantityKind.HEAD);
    figure(drain, "flow", 6, "L/min", QuantityKind.FLOW);
    figure(drain, "power", 24, "W", QuantityKind.POWER);
    Diagnosis diagnosis = diagnose(drain);
    double strainer = probability(diagnosis, "strainer-clogged");
    double hose = probability(diagnosis, "hose-clogged");
    assertTrue(strainer / hose > 0.5 && strainer / hose < 2.5, strainer + " and " + hose);
    assertTrue(probability(diagnosis, "impeller-slips") < 0.02);
    Set<String> next =
        diagnosis.next().stream()
            .limit(4)
            .map(m -> m.question().observable().id())
            .collect(Collectors.toSet());
    assertTrue(next.contains("strainer") || next.contains("hose-narrowed"), next.toString());
  }

  /**
   * Without a look only the pressure on one side of the pump tells a restriction before it from one
   * behind it: the pump's head rises in both, but before it the suction takes it all (energy
   * equation). The plan asks for it.
   */
  @Test
  void theHeadBehindThePumpTellsBeforeFromBehind() {
    Component drain = SampleMachines.drainPump();
    figure(drain, "head", 2.01, "m", QuantityKind.HEAD);
    figure(drain, "flow", 9, "L/min", QuantityKind.FLOW);
    figure(drain, "lift", 0.8, "m", QuantityKind.HEAD);
    Diagnosis open = diagnose(drain);
    assertTrue(
        open.next().stream().anyMatch(m -> m.question().observable().id().equals("outlet-head")));
    figure(drain, "outlet-head", 0.88, "m", QuantityKind.HEAD);
    Diagnosis before = diagnose(drain);
    assertTrue(probability(before, "strainer-clogged") > 10 * probability(before, "hose-clogged"));
    read.remove(read.size() - 1);
    figure(drain, "outlet-head", 1.6, "m", QuantityKind.HEAD);
    Diagnosis behind = diagnose(drain);
    assertTrue(probability(behind, "hose-clogged") > 10 * probability(behind, "strainer-clogged"));
  }

  /**
   * Filter and jets of a wash pump: full head at no flow, slow arm, little power. They stay within
   * a factor of three of each other, and one of the readings that tell them apart comes first.
   */
  @Test
  void filterAndJetsStayTogetherUntilAGaugeOrALookTells() {
    Component wash = SampleMachines.washPump();
    figure(wash, "head", 3.4, "m", QuantityKind.HEAD);
    figure(wash, "power", 66, "W", QuantityKind.POWER);
    Diagnosis open = diagnose(wash);
    double filter = probability(open, "inlet-clogged");
    double jets = probability(open, "jets-clogged");
    assertTrue(filter / jets > 1 / 3.0 && filter / jets < 3, filter + " and " + jets);
    Set<String> telling =
        Set.of("noise", "filter", "jets-closed", "jet-pressure", "inlet-pressure", "arm-speed");
    String first = open.next().get(0).question().observable().id();
    assertTrue(telling.contains(first), first);
    figure(wash, "inlet-pressure", -9, "kPa", QuantityKind.GAUGE_PRESSURE);
    assertEquals(Set.of("inlet-clogged"), best(diagnose(wash)));
  }

  @Test
  void oneLookSettlesIt() {
    Component drain = SampleMachines.drainPump();
    figure(drain, "head", 2.01, "m", QuantityKind.HEAD);
    figure(drain, "flow", 6, "L/min", QuantityKind.FLOW);
    figure(drain, "lift", 0.8, "m", QuantityKind.HEAD);
    grade(drain, "strainer", "clogged");
    assertEquals(Set.of("strainer-clogged"), best(diagnose(drain)));
  }

  @Test
  void lowHeadAtNoFlowIsThePump() {
    Component drain = SampleMachines.drainPump();
    figure(drain, "head", 0.9, "m", QuantityKind.HEAD);
    figure(drain, "flow", 1, "L/min", QuantityKind.FLOW);
    figure(drain, "power", 16, "W", QuantityKind.POWER);
    assertEquals(Set.of("impeller-slips"), best(diagnose(drain)));
  }

  @Test
  void sameHeadWithUsualPowerIsALeak() {
    Component drain = SampleMachines.drainPump();
    figure(drain, "head", 0.95, "m", QuantityKind.HEAD);
    figure(drain, "flow", 2.5, "L/min", QuantityKind.FLOW);
    figure(drain, "power", 31.5, "W", QuantityKind.POWER);
    assertEquals(Set.of("internal-leak"), best(diagnose(drain)));
  }

  /**
   * Drag with blocked vanes, read with instruments only while it runs: the flow says blocked, the
   * power says drag, and no single fault of any severity comes near both (three standard deviations
   * in all).
   */
  @Test
  void noSingleFaultLooksLikeDragWithBlockedVanes() {
    FaultModel model =
        MODULE.parts().faultModels(SampleMachines.with(SampleMachines.washPump())).get(0);
    List<Question> questions =
        model.questions().stream()
            .filter(q -> q.observable().type() == Observable.Type.QUANTITY)
            .filter(q -> q.observable().procedure().hazard() == Hazard.RUNNING)
            .toList();
    List<String> ids = model.faults().stream().map(Fault::id).toList();
    double[] pair = new double[ids.size() + 1];
    pair[ids.indexOf("drag")] = 0.5;
    pair[ids.indexOf("passages-blocked")] = 0.7;
    double[] read = forecast(model, questions, pair)[0];
    for (int f = 0; f < ids.size(); f++) {
      for (double severity = 0; severity <= 1; severity += 0.01) {
        double least = Double.POSITIVE_INFINITY;
        for (double strength = -3; strength <= 3; strength += 0.5) {
          double[] single = new double[ids.size() + 1];
          single[f] = severity;
          single[ids.size()] = strength;
          double[][] expected = forecast(model, questions, single);
          double squares = strength * strength;
          for (int i = 0; i < read.length; i++) {
            double u =
                questions.get(i).observable().procedure().typical().standardUncertainty(read[i]);
            squares += Math.pow((read[i] - expected[0][i]) / Math.hypot(expected[1][i], u), 2);
          }
          least = Math.min(least, squares);
        }
        assertTrue(least > 9, ids.get(f) + " at " + severity + ": " + least);
      }
    }
  }

  private static double[][] forecast(FaultModel model, List<Question> questions, double[] s) {
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    model.forecaster(questions).forecast(s, value, spread);
    return new double[][] {value, spread};
  }

  @Test
  void lowWaterShowsItsLevel() {
    Component wash = SampleMachines.washPump();
    figure(wash, "jet-pressure", 13, "kPa", QuantityKind.GAUGE_PRESSURE);
    figure(wash, "power", 58, "W", QuantityKind.POWER);
    figure(wash, "level", 25, "mm", QuantityKind.LENGTH);
    reading(wash, "pressure-swings", new Reading.YesNo(true));
    assertEquals(Set.of("low-water"), best(diagnose(wash)));
  }

  @Test
  void waterAt140DegreesIsRefused() {
    Component drain = SampleMachines.drainPump();
    Conditions hot =
        new Conditions(Map.of("temperature", Quantity.of(140, "Cel", QuantityKind.TEMPERATURE)));
    reading(drain, "flow", new Reading.Value(Quantity.of(6, "L/min", QuantityKind.FLOW), 0), hot);
    InputException refused = assertThrows(InputException.class, () -> diagnose(drain));
    assertTrue(refused.getMessage().contains("140"), refused.getMessage());
  }

  @Test
  void negativeLiftIsRefused() {
    Component low =
        new Component(
            "drain-pump",
            "drain-pump",
            SampleMachines.drainPump().nameplate(),
            Map.of("static-lift", Quantity.of(-0.3, "m", QuantityKind.HEAD)),
            SampleMachines.drainPump().curves(),
            SampleMachines.drainPump().source());
    InputException refused = assertThrows(InputException.class, () -> diagnose(low));
    assertTrue(refused.getMessage().contains("siphons"), refused.getMessage());
  }
}
