package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.CauseShare;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Causes of which no model speaks, beside the faults of models. */
class CausesWithoutModelTest {

  private static final double EXACT = 1e-12;
  private static final int GROUP = 2;
  private static final Source SOURCE = Source.fromMemory("a test");

  /** A machine whose third group has three faults, of which nothing is seen. */
  private static SmallMachine machine(Random random, Set<List<Integer>> apart) {
    SmallMachine machine;
    do {
      machine = SmallMachine.random(random);
    } while (machine.keys(GROUP).size() < 3);
    return machine.apart(GROUP, apart);
  }

  private static SmallMachine told(Random random, SmallMachine machine) {
    SmallMachine told = machine.told(random);
    Map<String, Boolean> readings = new HashMap<>(told.readings());
    told.parts().get(GROUP).seen().forEach(each -> readings.remove(each.id()));
    return new SmallMachine(told.parts(), told.symptoms(), told.brings(), told.reports(), readings);
  }

  /** The same machine, the faults of the third group given as causes without a model. */
  private static Knowledge knowledge(SmallMachine machine) {
    List<CauseShare> causes = new ArrayList<>();
    for (Fault fault : machine.parts().get(GROUP).faults()) {
      Map<String, Double> symptoms = new HashMap<>();
      for (FaultSymptom each : fault.symptoms()) {
        symptoms.put(each.symptom(), each.at(FaultSymptom.MIDDLE));
      }
      causes.add(
          new CauseShare(
              fault.component(), fault.id(), fault.title(), fault.prior(), symptoms, SOURCE));
    }
    List<FaultModel> models = List.copyOf(machine.parts().subList(0, GROUP));
    return new Knowledge(models, machine.symptoms(), machine.brings(), causes);
  }

  private static void agrees(SmallMachine machine) {
    Map<Set<String>, Double> exact = machine.posterior();

    Diagnosis found =
        new DiagnosisEngine(SmallMachine.SETTINGS).diagnose(machine.job(), knowledge(machine));

    assertEquals(0, found.basis().leftOut());
    assertEquals(exact.get(Set.of()), found.healthy(), EXACT);
    assertEquals(exact.values().stream().max(Double::compare).get(), first(found), EXACT);
    int without = 0;
    for (Diagnosis.FaultProbability each : found.faults()) {
      double expected = 0;
      for (Map.Entry<Set<String>, Double> state : exact.entrySet()) {
        expected += state.getKey().contains(each.fault().key()) ? state.getValue() : 0;
      }
      assertEquals(expected, each.probability(), EXACT);
      without += each.fault().modelled() ? 0 : 1;
      assertEquals(machine.keys(GROUP).contains(each.fault().key()), !each.fault().modelled());
    }
    assertEquals(3, without);
  }

  private static double first(Diagnosis found) {
    return found.ranking().get(0).probability();
  }

  /** No two of them are there together. */
  @RepeatedTest(25)
  void agreeWithTheSumOverAllJointStates(RepetitionInfo number) {
    Random random = new Random(number.getCurrentRepetition());
    Set<List<Integer>> apart = Set.of(List.of(1, 0), List.of(2, 0), List.of(2, 1));
    agrees(told(random, machine(random, apart)));
  }

  /** One of them brings another and a fault of a model. */
  @RepeatedTest(25)
  void bringOthers(RepetitionInfo number) {
    Random random = new Random(number.getCurrentRepetition());
    SmallMachine machine = machine(random, Set.of(List.of(2, 0), List.of(2, 1)));
    String cause = machine.keys(GROUP).get(0);
    List<Brings> brings =
        List.of(
            new Brings(cause, machine.keys(GROUP).get(1), 0.6),
            new Brings(cause, machine.keys(1).get(0), 0.7));
    agrees(told(random, machine.withBrings(brings)));
  }

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 0, 100)
          .by(LinearModel.PROCEDURE);

  private static Fault modelled(String id, String symptom) {
    return new Fault(
        id,
        "part",
        id,
        0.1,
        SOURCE,
        List.of(LinearModel.REMEDY),
        Optional.empty(),
        List.of(new FaultSymptom(symptom, severity -> 0.8)));
  }

  private static final LinearModel MODEL =
      new LinearModel(
          List.of(RESISTANCE),
          new double[] {50},
          new double[][] {{30}, {-30}},
          new double[] {1},
          List.of(modelled("burnt", "stays-cold"), modelled("shorted", "trips-breaker")));

  private static final CauseShare DUCT = cause("duct", "crushed", "does-not-dry", 0.9);
  private static final CauseShare BELT = cause("belt", "torn", "loud", 0.4);
  private static final CauseShare KNOWN = cause("part", "burnt", "loud", 0.9);

  private static CauseShare cause(String component, String fault, String symptom, double chance) {
    return new CauseShare(component, fault, fault, 0.08, Map.of(symptom, chance), SOURCE);
  }

  private static Diagnosis diagnose(SymptomReport... reports) {
    Job job = LinearModel.job("it fails", List.of());
    Job told =
        new Job(
            "test",
            "",
            job.appliance(),
            new Complaint(Complaint.Reason.FAULT, "it fails", "", List.of(reports)),
            List.of(),
            List.of(),
            Optional.empty());
    Knowledge knowledge =
        new Knowledge(List.of(MODEL), Symptoms.ALL, List.of(), List.of(DUCT, BELT, KNOWN));
    return new DiagnosisEngine(EngineSettings.USUAL).diagnose(told, knowledge);
  }

  @Test
  void aSymptomThatOnlyOneOfThemMakesTellsIt() {
    Diagnosis found = diagnose(new SymptomReport("does-not-dry", SymptomReport.Answer.YES));

    Diagnosis.FaultProbability likeliest = found.faults().get(0);
    assertEquals("duct.crushed", likeliest.fault().key());
    assertTrue(likeliest.probability() > 0.5, "probability " + likeliest.probability());
    assertEquals(List.of("duct.crushed"), found.plan().get(0).cures());
    assertEquals("duct.crushed", found.plan().get(0).remedy().key());
  }

  @Test
  void theOwnerIsAskedForTheirSymptomsAndNoReadingOfThemIsProposed() {
    Diagnosis found = diagnose();

    List<String> asked = found.ask().stream().map(q -> q.symptom().id()).toList();
    assertTrue(asked.contains("does-not-dry"), asked.toString());
    assertFalse(found.next().isEmpty());
    for (Diagnosis.NextMeasurement next : found.next()) {
      assertEquals("part.resistance", next.question().key());
    }
    List<String> after =
        diagnose(new SymptomReport("does-not-dry", SymptomReport.Answer.YES)).ask().stream()
            .map(q -> q.symptom().id())
            .toList();
    assertFalse(after.contains("does-not-dry"), after.toString());
  }

  /** The model takes the cause over, with its own prior and symptoms. */
  @Test
  void aCauseThatAModelKnowsIsLeftToIt() {
    List<Fault> known =
        diagnose().faults().stream()
            .map(Diagnosis.FaultProbability::fault)
            .filter(fault -> fault.key().equals("part.burnt"))
            .toList();

    assertEquals(List.of(MODEL.faults().get(0)), known);
    assertTrue(known.get(0).modelled());
    Knowledge all = new Knowledge(List.of(MODEL), Symptoms.ALL, List.of(), List.of(KNOWN));
    assertEquals(List.of(MODEL), all.allModels());
  }

  @Test
  void aMachineOfWhichNoModelSpeaksIsDiagnosedByThemAlone() {
    Knowledge knowledge = new Knowledge(List.of(), Symptoms.ALL, List.of(), List.of(DUCT, BELT));

    Diagnosis found =
        new DiagnosisEngine(EngineSettings.USUAL)
            .diagnose(LinearModel.job("it fails", List.of()), knowledge);

    double unexplained = 0.1 * 0.03 / 0.97 / (1 + 0.1 * 0.03 / 0.97);
    double odds = 0.1 * DUCT.share() / (1 - DUCT.share());
    double ofBelt = 0.1 * BELT.share() / (1 - BELT.share());
    double duct = (1 - unexplained) * odds / (1 + odds + ofBelt);
    double belt = (1 - unexplained) * ofBelt / (1 + odds + ofBelt);
    double faulty = duct + belt + unexplained;
    assertEquals(0.9 * duct / faulty, found.faults().get(0).probability(), EXACT);
    assertEquals(0.9 * belt / faulty, found.faults().get(1).probability(), EXACT);
    assertEquals(0.1, found.healthy(), EXACT);
    assertEquals(List.of(), found.next());
  }

  @Test
  void mistakesAreNamed() {
    assertRefused("duct.crushed", () -> knows(DUCT, DUCT));
    assertRefused("duct.crushed: a share of 1.0", () -> share(1, Map.of()));
    assertRefused("loud with a chance of 1.5", () -> share(0.1, Map.of("loud", 1.5)));
    assertRefused("'Too Loud' is not an id", () -> share(0.1, Map.of("Too Loud", 0.5)));
  }

  private static void knows(CauseShare... causes) {
    new Knowledge(List.of(), Symptoms.ALL, List.of(), List.of(causes));
  }

  private static void share(double share, Map<String, Double> symptoms) {
    new CauseShare("duct", "crushed", "crushed", share, symptoms, SOURCE);
  }

  private static void assertRefused(String words, Runnable making) {
    IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, making::run);
    assertTrue(refused.getMessage().contains(words), refused.getMessage());
  }
}
