package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptom.Misreports;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Machines of two parts whose faults make symptoms, and owners who are asked for them. Expected
 * chances are arithmetic on the figures below; tolerances are four standard deviations of a share
 * or a mean unless they say otherwise.
 */
class SimulatedSymptomsTest {

  private static final int JOBS = 600;
  private static final int FEWER = 60;
  private static final int DRAWS = 20_000;
  private static final World AS_TOLD = World.of(ThreeFaults.SETTINGS);
  private static final Misreports WRONG = new Misreports(0.1, 0.2, 0.3);
  private static final Misreports WORTHLESS = new Misreports(0.5, 0.5, 0.5);

  private static List<Symptom> symptoms(Misreports wrong) {
    return List.of(
        new Symptom("dead", "is dead", "?", 0.02, 0.2, wrong, List.of()),
        new Symptom("hums", "hums", "?", 0.05, 0.1, wrong, List.of("dead")),
        new Symptom("smells", "smells", "?", 0.03, 0.05, wrong, List.of()),
        new Symptom("weak", "is weak", "?", 0.04, 0.15, wrong, List.of("dead")),
        new Symptom("made-by-none", "is odd", "?", 0.9, 0.9, wrong, List.of()));
  }

  private static final List<Symptom> SYMPTOMS = symptoms(WRONG);
  private static final Symptom DEAD = SYMPTOMS.get(0);
  private static final Symptom HUMS = SYMPTOMS.get(1);
  private static final Symptom WEAK = SYMPTOMS.get(3);

  private static final List<FaultModel> TELLING =
      List.of(
          new ThreeFaults(
              "part",
              List.of(
                  List.of(
                      new FaultSymptom("hums", s -> 0.1 + 0.8 * s),
                      new FaultSymptom("weak", s -> 0.9 * s)),
                  List.of(new FaultSymptom("smells", s -> 0.7)),
                  List.of(new FaultSymptom("dead", s -> 0.2 + 0.7 * s)))),
          new ThreeFaults(
              "other",
              List.of(
                  List.of(new FaultSymptom("weak", s -> 0.5 * s)),
                  List.of(new FaultSymptom("smells", s -> 1 - Math.exp(-2 * s))),
                  List.of(new FaultSymptom("hums", s -> 0.6)))));

  /** The same faults, which make nothing. */
  private static final List<FaultModel> SILENT =
      List.of(new ThreeFaults(), new ThreeFaults("other", new ThreeFaults().made()));

  private static final List<SimulationReport> BY_NUMBER_ASKED = new ArrayList<>();

  private final UniformRandomProvider random = new XoShiRo256PlusPlus(new long[] {11, 22, 33, 44});

  @BeforeAll
  static void runOnce() {
    for (int asked = 0; asked <= 4; asked++) {
      BY_NUMBER_ASKED.add(
          run(SYMPTOMS, TELLING, new SimulationPlan(JOBS, 0, asked, 1, 2, AS_TOLD)));
    }
  }

  private static SimulationReport run(
      List<Symptom> symptoms, List<FaultModel> truth, SimulationPlan plan) {
    return Simulation.run(
        ThreeFaults.appliance(),
        new Knowledge(TELLING, symptoms, List.of(), List.of()),
        truth,
        ThreeFaults.SETTINGS,
        plan,
        done -> {});
  }

  /** The sum over the bins of the squared distance in standard deviations of a binomial share. */
  private static double chiSquare(CalibrationTable table) {
    return table.bins().stream()
        .filter(bin -> bin.cases() > 0)
        .mapToDouble(bin -> bin.gap() * bin.gap() * bin.cases() / (bin.said() * (1 - bin.said())))
        .sum();
  }

  /** Chi-square with 10 degrees of freedom is above 35.6 once in 10,000 (from memory). */
  @Test
  void answersAloneAreRightAsOftenAsTheySay() {
    SimulationReport.Quality said = BY_NUMBER_ASKED.get(4).unmeasured();

    assertEquals(JOBS, said.states().cases());
    assertTrue(chiSquare(said.states()) < 35.6, said.states().toString());
    assertTrue(chiSquare(said.faults()) < 35.6, said.faults().toString());
    assertTrue(chiSquare(BY_NUMBER_ASKED.get(4).measured().states()) < 35.6);
  }

  @Test
  void symptomsThatComeFromNoFaultShowAsOverconfidence() {
    SimulationReport misled = run(SYMPTOMS, SILENT, new SimulationPlan(JOBS, 0, 4, 1, 2, AS_TOLD));

    assertTrue(chiSquare(misled.unmeasured().faults()) > 100, misled.unmeasured().toString());
  }

  /**
   * The mean over all machines of a difference in log loss whose deviation is below 0.1 nat, as it
   * is while most faults are said to be unlikely either way.
   */
  @Test
  void moreAnswersDoNotRaiseTheLogLoss() {
    double tolerance = 4 * 0.1 / Math.sqrt(JOBS);
    List<Double> loss =
        BY_NUMBER_ASKED.stream().map(report -> report.unmeasured().all().faultLogLoss()).toList();

    for (int asked = 1; asked <= 4; asked++) {
      assertTrue(loss.get(asked) < loss.get(asked - 1) + tolerance, loss.toString());
    }
    assertTrue(loss.get(4) < loss.get(0) - tolerance, loss.toString());
  }

  /**
   * Also machines and readings are the same, so that answers add nothing to the readings either.
   */
  @Test
  void worthlessAnswersChangeNothing() {
    SimulationReport none = run(SYMPTOMS, TELLING, new SimulationPlan(FEWER, 0, 0, 1, 2, AS_TOLD));
    SimulationReport worthless =
        run(symptoms(WORTHLESS), TELLING, new SimulationPlan(FEWER, 0, 4, 1, 2, AS_TOLD));

    assertEquals(4, worthless.asked().size());
    assertAlike(none.unmeasured().all(), worthless.unmeasured().all(), 1e-9);
    // Which pairs are integrated finely is told by their share of the machine, or of their group.
    assertAlike(none.measured().all(), worthless.measured().all(), 1e-3);
  }

  private static void assertAlike(
      SimulationReport.Scores one, SimulationReport.Scores other, double rounding) {
    assertEquals(one.first(), other.first());
    assertEquals(one.amongThree(), other.amongThree());
    assertEquals(one.brier(), other.brier(), rounding);
    assertEquals(one.faultLogLoss(), other.faultLogLoss(), rounding);
  }

  @Test
  void theSameBytesWhateverTheNumberOfThreads() {
    SimulationReport one = run(SYMPTOMS, TELLING, new SimulationPlan(60, 5, 4, 7, 1, AS_TOLD));
    SimulationReport two = run(SYMPTOMS, TELLING, new SimulationPlan(60, 5, 4, 7, 2, AS_TOLD));
    SimulationReport other = run(SYMPTOMS, TELLING, new SimulationPlan(60, 5, 4, 8, 2, AS_TOLD));

    assertEquals(one.toString(), two.toString());
    assertNotEquals(one.toString(), other.toString());
  }

  @Test
  void moreThanEightSymptomsAreRefused() {
    String refused =
        assertThrows(
                IllegalArgumentException.class, () -> new SimulationPlan(1, 0, 9, 1, 1, AS_TOLD))
            .getMessage();

    assertEquals("9 symptoms; 0 to 8 are allowed", refused);
    assertThrows(IllegalArgumentException.class, () -> new SimulationPlan(1, 0, -1, 1, 1, AS_TOLD));
  }

  /** The priors as they are, with any number of faults at once. */
  private static final World INDEPENDENT = new World(0.1, 0.1, 1, 0, 3);

  private static MachineSymptoms symptoms(List<FaultModel> models) {
    return new MachineSymptoms(
        models, List.of(ThreeFaults.PRIORS, ThreeFaults.PRIORS), INDEPENDENT);
  }

  private static SymptomInterview interview(List<Symptom> symptoms, int count) {
    return SymptomInterview.of(symptoms, symptoms(TELLING), symptoms(TELLING), count);
  }

  private void assertYes(double expected, Symptom symptom, Machine machine) {
    SymptomInterview interview = interview(SYMPTOMS, 4);
    int place = interview.asked().indexOf(symptom.id());
    int yes = 0;
    for (int i = 0; i < DRAWS; i++) {
      SymptomReport report = interview.draw(machine, random).get(place);
      yes += report.answer() == Answer.YES ? 1 : 0;
    }
    assertEquals(expected, yes / (double) DRAWS, 4 * Math.sqrt(expected * (1 - expected) / DRAWS));
  }

  private static Machine machine(double[] part, double[] other, boolean partUnexplained) {
    return new Machine(
        List.of(part, other),
        List.of(new double[0], new double[0]),
        List.of(partUnexplained, false));
  }

  /** A yes of one that is there with chance p and hidden with chance m. */
  private static double yes(double p, double m) {
    return m * 0.3 + (1 - m) * (p * 0.8 + (1 - p) * 0.1);
  }

  @Test
  void aSoundMachineHasWhatIsNamedWithoutCause() {
    Machine sound = machine(new double[3], new double[3], false);

    assertYes(yes(0.2, 0), DEAD, sound);
    assertYes(yes(0.1, 0.2), HUMS, sound);
  }

  @Test
  void causesOfBothPartsAndTheLeakCombine() {
    Machine worn = machine(new double[] {0.5, 0, 0}, new double[] {0.8, 0, 1e-9}, false);

    // Worn by half hums with 0.1 + 0.8 * 0.5, the other's stuck with 0.6, the leak is 0.05.
    assertYes(yes(1 - 0.5 * 0.4 * 0.95, 0.02), HUMS, worn);
    // 0.9 * 0.5 and 0.5 * 0.8, the leak is 0.04.
    assertYes(yes(1 - 0.55 * 0.6 * 0.96, 0.02), WEAK, worn);
  }

  @Test
  void whatHidesASymptomIsOftenThere() {
    Machine stuck = machine(new double[] {0, 0, 1}, new double[3], false);
    double dead = 1 - 0.1 * 0.98;

    assertYes(yes(dead, 0), DEAD, stuck);
    assertYes(yes(0.05, dead), HUMS, stuck);
  }

  @Test
  void whatNoFaultExplainsMakesTheMeanOfItsFaults() {
    Machine strange = machine(new double[3], new double[3], true);
    // Of odds 3 : 2 : 1 the last is dead with 0.2 + 0.7 / 2, the first hums with 0.1 + 0.8 / 2.
    double dead = 1 - (1 - 0.55 / 6) * 0.98;

    assertYes(yes(dead, 0), DEAD, strange);
    assertYes(yes(1 - (1 - 0.5 / 2) * 0.95, dead), HUMS, strange);
  }

  @Test
  void theCommonestOfWhatFaultsMakeAreAsked() {
    MachineDraw draw =
        new MachineDraw(
            TELLING, new Priors(ThreeFaults.appliance(), FaultHistory.NONE), INDEPENDENT);
    double[] sum = new double[SYMPTOMS.size()];
    for (int i = 0; i < DRAWS; i++) {
      Machine machine = draw.draw(random);
      for (int k = 0; k < sum.length; k++) {
        sum[k] += symptoms(TELLING).chance(machine, SYMPTOMS.get(k));
      }
    }

    for (int k = 0; k < sum.length; k++) {
      double prior = symptoms(TELLING).prior(SYMPTOMS.get(k));
      assertEquals(prior, sum[k] / DRAWS, 4 * 0.5 / Math.sqrt(DRAWS), SYMPTOMS.get(k).id());
    }
    List<String> asked = interview(SYMPTOMS, 8).asked();
    assertEquals(4, asked.size());
    assertEquals(asked.subList(0, 2), interview(SYMPTOMS, 2).asked());
    assertTrue(!asked.contains("made-by-none"));
    for (int k = 1; k < asked.size(); k++) {
      assertTrue(drawn(sum, asked.get(k)) < drawn(sum, asked.get(k - 1)), asked.toString());
    }
  }

  private static double drawn(double[] sum, String symptom) {
    return sum[SYMPTOMS.stream().map(Symptom::id).toList().indexOf(symptom)];
  }

  @Test
  void ofTwoThatAreEquallyCommonTheFirstByNameIsAsked() {
    FaultModel alike =
        new ThreeFaults(
            "part",
            List.of(
                List.of(new FaultSymptom("weak", s -> s), new FaultSymptom("dead", s -> s)),
                List.of(),
                List.of()));
    MachineSymptoms chances =
        new MachineSymptoms(List.of(alike), List.of(ThreeFaults.PRIORS), INDEPENDENT);
    List<Symptom> twins =
        List.of(
            new Symptom("weak", "", "?", 0.1, 0.1, WRONG, List.of()),
            new Symptom("dead", "", "?", 0.1, 0.1, WRONG, List.of()));

    assertEquals(List.of("dead"), SymptomInterview.of(twins, chances, chances, 1).asked());
  }
}
