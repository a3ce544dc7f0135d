package kelter.hydraulics;

import static kelter.hydraulics.Likely.probability;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whoever has seen the drain pump of a washing machine full of debris knows what is in its way. The
 * pump lifts 2 m at no flow when it is in order.
 */
class DebrisSeenTest {

  private static final Component PUMP = SampleMachines.drainPump();
  private static final HydraulicsModule MODULE = new HydraulicsModule();

  private static Measurement head(double metres) {
    return reading("head", new Reading.Value(Quantity.of(metres, "m", QuantityKind.HEAD), 0.01));
  }

  private static Measurement flow(double litresPerMinute) {
    return reading(
        "flow", new Reading.Value(Quantity.of(litresPerMinute, "L/min", QuantityKind.FLOW), 0));
  }

  private static Measurement grade(String observable, String word) {
    List<String> grades =
        new Vocabulary(MODULE.parts().kinds())
            .observable(PUMP.kind(), observable)
            .orElseThrow()
            .grades();
    return reading(observable, new Reading.Grade(word, grades.indexOf(word)));
  }

  private static Measurement reading(String observable, Reading reading) {
    return new Measurement(
        PUMP.id(), observable, List.of(reading), Conditions.NONE, Optional.empty(), "");
  }

  private static Diagnosis diagnose(Measurement... read) {
    Appliance machine = SampleMachines.with(PUMP);
    Job job =
        new Job(
            "test",
            "",
            machine,
            new Complaint("water stays in the drum", ""),
            List.of(),
            List.of(read),
            Optional.empty());
    return new DiagnosisEngine(EngineSettings.USUAL)
        .diagnose(job, MODULE.parts().faultModels(machine));
  }

  private static int place(Diagnosis diagnosis, String remedy) {
    List<String> ids = new ArrayList<>();
    diagnosis.plan().forEach(step -> ids.add(step.remedy().id()));
    assertTrue(ids.contains(remedy), ids.toString());
    return ids.indexOf(remedy);
  }

  private static String likeliest(Diagnosis diagnosis) {
    return diagnosis.faults().get(0).fault().id();
  }

  /** Of the head in order 30 % to 90 % are left. */
  @ParameterizedTest
  @ValueSource(doubles = {0.6, 0.8, 1.0, 1.2, 1.4, 1.6, 1.8})
  void aPumpFullOfDebrisWithALowHeadIsBlocked(double metres) {
    Diagnosis seen = diagnose(head(metres), grade("debris", "full"));
    assertEquals("passages-blocked", likeliest(seen));
    assertTrue(probability(seen, "passages-blocked") > 0.8, seen.faults().toString());
    assertTrue(seen.unexplained().probability() < 0.2, seen.unexplained().toString());
  }

  /** Of the head in order a tenth is left: a little flow beside it leaves no doubt. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.4, 0.8, 1.6})
  void aLowFlowBearsOutWhatIsSeen(double metres) {
    Diagnosis seen = diagnose(head(metres), flow(2), grade("debris", "full"));
    assertEquals("passages-blocked", likeliest(seen));
    assertTrue(probability(seen, "passages-blocked") > 0.8, seen.faults().toString());
  }

  /** A worn or slipping impeller shows the low head as well: it is the look that tells. */
  @Test
  void withoutDebrisTheSameHeadIsNotTakenForABlockage() {
    Diagnosis seen = diagnose(head(0.8), flow(2), grade("debris", "none"));
    assertTrue(probability(seen, "passages-blocked") < 0.1, seen.faults().toString());
  }

  /** Half of the rated 20 L/min do not come through vanes that are blocked by what fills them. */
  @Test
  void aGoodFlowContradictsTheBlockage() {
    Diagnosis seen = diagnose(head(0.6), flow(10), grade("debris", "full"));
    assertTrue(probability(seen, "passages-blocked") < 0.5, seen.faults().toString());
  }

  /** Clearing the vanes needs no part and takes 25 min, a new pump 40 min and its price. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.6, 1.0, 1.4, 1.8})
  void thePumpIsCleanedBeforeItIsRenewed(double metres) {
    Diagnosis seen = diagnose(head(metres), grade("debris", "full"));
    Diagnosis.PlanStep first = seen.plan().get(0);
    assertEquals("clean-pump", first.remedy().id());
    assertFalse(first.remedy().needsPart());
    assertTrue(place(seen, "clean-pump") < place(seen, "renew-pump"));
  }
}
