package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptom.Misreports;
import org.junit.jupiter.api.Test;

/** What holds of reports in a whole diagnosis, whatever the machine. */
class ReportsTest {

  private static final double EXACT = 1e-12;
  private static final int MACHINES = 60;
  private static final Misreports WRONG = new Misreports(0.05, 0.1, 0.2);
  private static final DiagnosisEngine ENGINE = new DiagnosisEngine(SmallMachine.SETTINGS);

  /** One that no fault makes, as frequent in a machine with a fault as in one without. */
  private static final Symptom ODD = new Symptom("odd", "odd", "odd", 0.3, 0.3, WRONG, List.of());

  /** Machines of which something was said and seen, with a cause that brings an effect. */
  private static List<SmallMachine> machines() {
    List<SmallMachine> machines = new ArrayList<>();
    for (int seed = 0; seed < MACHINES; seed++) {
      Random random = new Random(seed);
      SmallMachine machine = SmallMachine.random(random);
      List<Brings> brings =
          List.of(new Brings(machine.keys(0).get(0), machine.keys(2).get(1), 0.5));
      machines.add((seed % 2 == 0 ? machine : machine.withBrings(brings)).told(random));
    }
    return machines;
  }

  private static Knowledge knowledge(SmallMachine machine) {
    return new Knowledge(
        List.copyOf(machine.parts()), machine.symptoms(), machine.brings(), List.of());
  }

  private static Diagnosis diagnosis(SmallMachine machine) {
    return ENGINE.diagnose(machine.job(), knowledge(machine));
  }

  private static SmallMachine saying(SmallMachine machine, List<SymptomReport> reports) {
    return new SmallMachine(
        machine.parts(), machine.symptoms(), machine.brings(), reports, machine.readings());
  }

  private static SmallMachine and(SmallMachine machine, String symptom, Answer answer) {
    List<SymptomReport> reports = new ArrayList<>(machine.reports());
    reports.add(new SymptomReport(symptom, answer));
    return saying(machine, reports);
  }

  private static SmallMachine with(SmallMachine machine, List<SmallMachine.Part> parts) {
    return new SmallMachine(
        parts, machine.symptoms(), machine.brings(), machine.reports(), machine.readings());
  }

  private static SmallMachine knowing(SmallMachine machine, Symptom more) {
    List<Symptom> symptoms = new ArrayList<>(machine.symptoms());
    symptoms.add(more);
    return new SmallMachine(
        machine.parts(), symptoms, machine.brings(), machine.reports(), machine.readings());
  }

  private static Set<String> said(SmallMachine machine) {
    Map<String, Answer> said = new TreeMap<>();
    machine.reports().forEach(each -> said.put(each.symptom(), each.answer()));
    return said.keySet();
  }

  /** Everything that a diagnosis gives a probability. */
  private static Map<String, Double> probabilities(Diagnosis found) {
    Map<String, Double> all = new TreeMap<>();
    all.put("healthy", found.healthy());
    all.put("unexplained", found.unexplained().probability());
    found.faults().forEach(each -> all.put(each.fault().key(), each.probability()));
    return all;
  }

  /** What is asked for, with its bits. */
  private static Map<String, Double> ask(Diagnosis found) {
    Map<String, Double> all = new TreeMap<>();
    found.ask().forEach(each -> all.put(each.symptom().id(), each.bits()));
    return all;
  }

  private static void same(Map<String, Double> expected, Map<String, Double> found) {
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((key, value) -> assertEquals(value, found.get(key), EXACT, key));
  }

  /** The same but for what to ask. */
  private static void sameState(Diagnosis expected, Diagnosis found) {
    same(probabilities(expected), probabilities(found));
    same(next(expected), next(found));
    same(cures(expected), cures(found));
    assertEquals(expected.ranking().size(), found.ranking().size());
    for (int place = 0; place < expected.ranking().size(); place++) {
      assertEquals(
          expected.ranking().get(place).probability(),
          found.ranking().get(place).probability(),
          EXACT);
    }
  }

  private static Map<String, Double> next(Diagnosis found) {
    Map<String, Double> all = new TreeMap<>();
    for (Diagnosis.NextMeasurement each : found.next()) {
      all.put(each.question().key(), each.bits());
      all.put(each.question().key() + " saves", each.worth());
    }
    return all;
  }

  private static Map<String, Double> cures(Diagnosis found) {
    Map<String, Double> all = new TreeMap<>();
    found.plan().forEach(each -> all.put(each.remedy().key(), each.probabilityOfCure()));
    return all;
  }

  @Test
  void whereNothingWasSaidThatFaultsMakeSymptomsDoesNotCount() {
    int asked = 0;
    for (SmallMachine told : machines()) {
      SmallMachine unasked = saying(told, List.of());
      List<SmallMachine.Part> silent =
          unasked.parts().stream().map(part -> with(part, ReportsTest::silent)).toList();

      Diagnosis found = diagnosis(unasked);
      Diagnosis withoutSymptoms = diagnosis(with(unasked, silent));

      sameState(withoutSymptoms, found);
      assertEquals(List.of(), withoutSymptoms.ask());
      asked += found.ask().size();
    }
    assertTrue(asked > MACHINES, "symptoms were asked for");
  }

  private static Fault silent(Fault fault) {
    return LinearModel.fault(fault.id(), fault.prior());
  }

  private static SmallMachine.Part with(SmallMachine.Part part, UnaryOperator<Fault> change) {
    List<Fault> faults = part.faults().stream().map(change).toList();
    return new SmallMachine.Part(part.name(), faults, part.apart(), part.seen(), part.chance());
  }

  @Test
  void theOrderOfModelsDoesNotMatter() {
    for (SmallMachine machine : machines()) {
      Diagnosis found = diagnosis(machine);
      for (int turn = 0; turn < 3; turn++) {
        List<SmallMachine.Part> parts = new ArrayList<>(machine.parts());
        Collections.rotate(parts, turn);
        if (turn == 0) {
          Collections.reverse(parts);
        }

        Diagnosis inOtherOrder = diagnosis(with(machine, parts));

        sameState(found, inOtherOrder);
        same(ask(found), ask(inOtherOrder));
      }
    }
  }

  @Test
  void nothingIsAskedTwice() {
    int asked = 0;
    for (SmallMachine machine : machines()) {
      for (Diagnosis.NextQuestion each : diagnosis(machine).ask()) {
        assertFalse(said(machine).contains(each.symptom().id()));
        for (Answer answer : Answer.values()) {
          Diagnosis answered = diagnosis(and(machine, each.symptom().id(), answer));
          assertFalse(ask(answered).containsKey(each.symptom().id()));
          asked++;
        }
      }
    }
    assertTrue(asked > MACHINES, "something was asked");
  }

  /** Once something was said, so that there may be what nobody knows the cause of. */
  @Test
  void whatNoFaultMakesIsNeverAskedAndTellsNothing() {
    for (SmallMachine each : machines()) {
      SmallMachine machine = knowing(each, ODD);
      Diagnosis found = diagnosis(machine);
      assertFalse(ask(found).containsKey(ODD.id()));
      if (machine.reports().isEmpty()) {
        continue;
      }
      for (Answer answer : Answer.values()) {
        Diagnosis answered = diagnosis(and(machine, ODD.id(), answer));
        sameState(found, answered);
        same(ask(found), ask(answered));
      }
    }
  }

  @Test
  void anAnswerThatIsAsLikelyEitherWayTellsNothing() {
    Misreports worthless = new Misreports(0.5, 0.5, 0.5);
    Symptom vague = new Symptom("vague", "vague", "vague", 0.1, 0.4, worthless, List.of());
    FaultSymptom made = new FaultSymptom(vague.id(), severity -> 0.9);
    for (SmallMachine each : machines()) {
      if (each.reports().isEmpty()) {
        continue;
      }
      List<SmallMachine.Part> parts =
          each.parts().stream().map(part -> with(part, fault -> making(fault, made))).toList();
      SmallMachine machine = knowing(with(each, parts), vague);
      Diagnosis found = diagnosis(machine);
      assertFalse(ask(found).containsKey(vague.id()));
      for (Answer answer : List.of(Answer.YES, Answer.NO)) {
        Diagnosis answered = diagnosis(and(machine, vague.id(), answer));
        sameState(found, answered);
      }
    }
  }

  private static Fault making(Fault fault, FaultSymptom more) {
    List<FaultSymptom> makes = new ArrayList<>(fault.symptoms());
    makes.add(more);
    return fault(fault.id(), fault.prior(), makes);
  }

  private static Fault fault(String id, double prior, List<FaultSymptom> makes) {
    return new Fault(
        id,
        "part",
        id,
        prior,
        Source.fromMemory("a test"),
        List.of(LinearModel.REMEDY),
        Optional.empty(),
        makes);
  }

  /**
   * Before an answer everything is as probable as the answers leave it on average, each weighed by
   * its own chance, which is one number for all that has a probability.
   */
  @Test
  void answersAverageToWhatWasHeldBefore() {
    int moved = 0;
    for (SmallMachine machine : machines()) {
      if (machine.reports().isEmpty()) {
        continue;
      }
      Map<String, Double> before = probabilities(diagnosis(machine));
      for (Symptom symptom : machine.symptoms()) {
        if (!said(machine).contains(symptom.id())) {
          Map<String, Double> yes =
              probabilities(diagnosis(and(machine, symptom.id(), Answer.YES)));
          Map<String, Double> no = probabilities(diagnosis(and(machine, symptom.id(), Answer.NO)));
          moved += areAverage(before, yes, no) ? 1 : 0;
        }
      }
    }
    assertTrue(moved > MACHINES / 4, "answers told something");
  }

  /** Whether the answers differ by enough to tell their chances; fails if they do not average. */
  private static boolean areAverage(
      Map<String, Double> before, Map<String, Double> yes, Map<String, Double> no) {
    String most = null;
    for (String key : before.keySet()) {
      boolean more = most == null || gap(yes, no, key) > gap(yes, no, most);
      most = more ? key : most;
    }
    if (gap(yes, no, most) < 1e-3) {
      return false;
    }
    double chance = (before.get(most) - no.get(most)) / (yes.get(most) - no.get(most));
    assertTrue(chance > 0 && chance < 1, "a yes with a chance of " + chance);
    for (String key : before.keySet()) {
      double average = chance * yes.get(key) + (1 - chance) * no.get(key);
      assertEquals(before.get(key), average, EXACT / gap(yes, no, most), key);
    }
    return true;
  }

  private static double gap(Map<String, Double> yes, Map<String, Double> no, String key) {
    return Math.abs(yes.get(key) - no.get(key));
  }

  /** Groups of one fault each, as independent as if nobody had complained, which make a noise. */
  private record Noisy(double leak, double[] prior, double[] chance) {

    /**
     * How likely what is seen of the first fault is where it is there, and a no where it is not.
     */
    private static final double SURE = 0.95;

    static Noisy random(Random random) {
      int groups = 2 + random.nextInt(3);
      double[] prior = random.doubles(groups, 0.02, 0.3).toArray();
      double[] chance = random.doubles(groups, 0.2, 0.95).toArray();
      return new Noisy(0.01 + 0.1 * random.nextDouble(), prior, chance);
    }

    /** With a prior of the sound machine that is the product of those of the groups. */
    EngineSettings settings() {
      double sound = 1;
      for (double each : prior) {
        sound *= 1 - each;
      }
      return new EngineSettings(1e-14, 1e-14, sound, sound, 1, Hazard.RUNNING, 2);
    }

    /** Somebody says that there is a noise. */
    SmallMachine machine(Map<String, Boolean> readings) {
      List<SmallMachine.Part> parts = new ArrayList<>();
      for (int g = 0; g < prior.length; g++) {
        double makes = chance[g];
        Fault fault = fault("f" + g, prior[g], List.of(new FaultSymptom("noise", s -> makes)));
        Observable seen = Observable.named("seen-" + g, "seen").by(LinearModel.PROCEDURE);
        double[][] table = {{1 - SURE}, {SURE}};
        parts.add(
            new SmallMachine.Part("group-" + g, List.of(fault), Set.of(), List.of(seen), table));
      }
      Symptom noise = new Symptom("noise", "noise", "noise", leak, leak, WRONG, List.of());
      List<SymptomReport> yes = List.of(new SymptomReport("noise", Answer.YES));
      return new SmallMachine(parts, List.of(noise), List.of(), yes, readings);
    }

    /** What the report says for the second fault. */
    double bits(Map<String, Boolean> readings) {
      SmallMachine machine = machine(readings);
      return new DiagnosisEngine(settings())
          .explain(machine.job(), knowledge(machine), "part.f1")
          .orElseThrow()
          .reports()
          .get(0)
          .bits();
    }

    /**
     * The same by hand: how much likelier a yes is beside the fault than without it, the others
     * being there with their chances.
     *
     * @param first the chance of the first fault
     */
    double bits(double first) {
      double silent = (1 - leak) * (1 - first * chance[0]);
      for (int g = 2; g < prior.length; g++) {
        silent *= 1 - prior[g] * chance[g];
      }
      return Math.log(yes(1 - silent * (1 - chance[1])) / yes(1 - silent)) / Math.log(2);
    }

    private static double yes(double there) {
      return there * (1 - WRONG.falseNo()) + (1 - there) * WRONG.falseYes();
    }

    /** The chance of the first fault, given what is seen, by Bayes' theorem. */
    double first(double ifThere, double ifNot) {
      return prior[0] * ifThere / (prior[0] * ifThere + (1 - prior[0]) * ifNot);
    }
  }

  @Test
  void aSymptomThatIsExplainedSaysLessOfAnotherGroup() {
    Random random = new Random(1);
    for (int n = 0; n < 2 * MACHINES; n++) {
      Noisy machine = Noisy.random(random);

      double before = machine.bits(Map.of());
      double proved = machine.bits(Map.of("seen-0", true));
      double ruledOut = machine.bits(Map.of("seen-0", false));

      assertTrue(0 < proved && proved < before && before < ruledOut);
      double sure = Noisy.SURE;
      assertEquals(machine.bits(machine.prior[0]), before, 1e-10);
      assertEquals(machine.bits(machine.first(sure, 1 - sure)), proved, 1e-10);
      assertEquals(machine.bits(machine.first(1 - sure, sure)), ruledOut, 1e-10);
    }
  }

  /** A fault that is all but proved is still held against the likeliest state without it. */
  @Test
  void theRivalOfAFaultIsAStateWithoutIt() {
    Noisy noisy = new Noisy(0.01, new double[] {0.1, 0.3}, new double[] {0.5, 0.9});
    SmallMachine machine = noisy.machine(Map.of("seen-1", true));
    Explanation why =
        new DiagnosisEngine(noisy.settings())
            .explain(machine.job(), knowledge(machine), "part.f1")
            .orElseThrow();
    assertTrue(why.fault().probability() > 0.8, why.fault().toString());
    assertEquals("nothing wrong", why.rival());
  }
}
