package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.likelihood.Brought;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.diagnosis.symptom.exact.JointState;
import kelter.core.job.SymptomReport;
import kelter.core.vocabulary.Symptom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Causes that bring effects, within a group and across, against the definition summed up. */
class BringsTest {

  private static final double EXACT = 1e-12;

  /** Of the faults of {@link SmallMachine}. */
  private static final double GREATEST_PRIOR = 0.3;

  /** What brings what, by group and place of cause and effect; chances are drawn. */
  private enum Shape {
    WITHIN("00>01", "11>10"),
    ACROSS("00>10", "21>11"),
    BOTH("00>01", "00>10", "10>11", "20>00"),
    SEVERAL_EFFECTS_WITHIN("00>01", "00>02"),
    SEVERAL_EFFECTS("00>10", "00>11", "00>20", "00>01"),
    TWO_CAUSES_WITHIN("00>02", "01>02"),
    TWO_CAUSES("00>10", "20>10", "11>10"),
    CHAIN_WITHIN("00>01", "01>02"),
    CHAIN("00>10", "10>20", "20>21");

    private final List<String> arrows;

    Shape(String... arrows) {
      this.arrows = List.of(arrows);
    }

    /** A machine with it; those that ask for three faults in the first group get one. */
    SmallMachine machine(Random random) {
      SmallMachine machine;
      do {
        machine = SmallMachine.random(random);
      } while (machine.keys(0).size() < 3);
      List<Brings> brings = new ArrayList<>();
      for (String arrow : arrows) {
        double chance = (0.25 + 0.55 * random.nextDouble()) / most();
        brings.add(new Brings(key(machine, arrow, 0), key(machine, arrow, 3), chance));
      }
      return machine.withBrings(brings);
    }

    /** How many effects one cause has at most. */
    private long most() {
      return arrows.stream()
          .mapToLong(a -> arrows.stream().filter(b -> b.startsWith(a.substring(0, 2))).count())
          .max()
          .orElseThrow();
    }

    private static String key(SmallMachine machine, String arrow, int at) {
      return machine.keys(arrow.charAt(at) - '0').get(arrow.charAt(at + 1) - '0');
    }
  }

  static Stream<Arguments> machines() {
    List<Arguments> machines = new ArrayList<>();
    for (Shape shape : Shape.values()) {
      for (int seed = 0; seed < 25; seed++) {
        machines.add(Arguments.of(shape, seed));
      }
    }
    return machines.stream();
  }

  private static Knowledge knowledge(SmallMachine machine) {
    return new Knowledge(
        List.copyOf(machine.parts()), machine.symptoms(), machine.brings(), List.of());
  }

  private static List<Map.Entry<Set<String>, Double>> sorted(Map<Set<String>, Double> joint) {
    return joint.entrySet().stream()
        .sorted(Map.Entry.<Set<String>, Double>comparingByValue(Comparator.reverseOrder()))
        .toList();
  }

  private static double sum(Map<Set<String>, Double> joint, String... faults) {
    double sum = 0;
    for (Map.Entry<Set<String>, Double> state : joint.entrySet()) {
      sum += state.getKey().containsAll(Set.of(faults)) ? state.getValue() : 0;
    }
    return sum;
  }

  private static double bits(double probability) {
    return Math.log(probability / (1 - probability)) / Math.log(2);
  }

  @ParameterizedTest
  @MethodSource("machines")
  void agreesWithTheSumOverAllJointStates(Shape shape, int seed) {
    Random random = new Random(seed);
    SmallMachine machine = shape.machine(random).told(random);
    Map<Set<String>, Double> exact = machine.posterior();

    Diagnosis found =
        new DiagnosisEngine(SmallMachine.SETTINGS).diagnose(machine.job(), knowledge(machine));

    assertEquals(0, found.basis().leftOut());
    for (Diagnosis.FaultProbability each : found.faults()) {
      assertEquals(sum(exact, each.fault().key()), each.probability(), EXACT);
    }
    assertEquals(exact.get(Set.of()), found.healthy(), EXACT);
    List<Map.Entry<Set<String>, Double>> likeliest = sorted(exact);
    for (int place = 0; place < found.ranking().size(); place++) {
      Diagnosis.RankedState state = found.ranking().get(place);
      assertEquals(likeliest.get(place).getValue(), state.probability(), EXACT);
      if (!state.unexplained()) {
        Set<String> faults = new TreeSet<>();
        state.faults().forEach(f -> faults.add(f.fault().key()));
        assertEquals(exact.get(faults), state.probability(), EXACT);
      }
    }
  }

  /** What a report says is by how many bits the odds of a state are higher than without it. */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void tellsWhatEachReportSays(Shape shape) {
    Random random = new Random(7);
    SmallMachine machine = shape.machine(random).told(random);
    Map<Set<String>, Double> exact = machine.posterior();

    Diagnosis.RankedState first =
        new DiagnosisEngine(SmallMachine.SETTINGS)
            .diagnose(machine.job(), knowledge(machine))
            .ranking()
            .get(0);

    Set<String> faults = new TreeSet<>();
    first.faults().forEach(f -> faults.add(f.fault().key()));
    assertEquals(machine.reports().size(), first.reports().size());
    for (int i = 0; i < first.reports().size(); i++) {
      double without = machine.without(machine.reports().get(i)).posterior().get(faults);
      assertEquals(bits(exact.get(faults)) - bits(without), first.reports().get(i).bits(), 1e-9);
    }
  }

  private static List<Group> groups(SmallMachine machine) {
    Priors priors = new Priors(machine.job().appliance(), FaultHistory.NONE);
    List<Group> groups = new ArrayList<>();
    for (SmallMachine.Part part : machine.parts()) {
      List<Brought> within = Brought.within(part, machine.brings());
      groups.add(Group.of(part, List.of(), priors, within, SmallMachine.SETTINGS).withPairs());
    }
    return groups;
  }

  private static JointPosterior joint(SmallMachine machine, List<Group> groups) {
    return JointPosterior.of(
        groups,
        Asked.of(machine.symptoms(), machine.reports()),
        BroughtAcross.among(groups, machine.brings()),
        SmallMachine.SETTINGS.nothingFound());
  }

  /** However many are asked for, they are the first of all joint states in their order. */
  @ParameterizedTest
  @MethodSource("machines")
  void listsTheLikeliestOfAllTerms(Shape shape, int seed) {
    Random random = new Random(seed);
    SmallMachine told = shape.machine(random).told(random);
    SmallMachine machine =
        new SmallMachine(told.parts(), told.symptoms(), told.brings(), told.reports(), Map.of());
    List<Map.Entry<Set<String>, Double>> likeliest = sorted(machine.posterior());
    List<Group> groups = groups(machine);
    JointPosterior posterior = joint(machine, groups);

    for (int count : new int[] {1, 2, 3, 8, 40, 1000}) {
      List<JointState> found = posterior.likeliest(count);
      assertEquals(Math.min(count, likeliest.size()), found.size());
      for (int place = 0; place < found.size(); place++) {
        assertEquals(likeliest.get(place).getValue(), found.get(place).probability(), EXACT);
      }
    }
  }

  /**
   * A cause with two effects, each with its symptom reported. Beside the cause and one effect the
   * other by coincidence has odds of 0.8, so that in the term of either effect the state with both
   * comes second; over both terms it comes first.
   */
  @Test
  void theLikeliestStateNeedNotBeThatOfAnyTerm() {
    List<Symptom> symptoms = List.of(plain("s0"), plain("s1"));
    List<SmallMachine.Part> parts =
        List.of(
            single("cause", 0.2, List.of()),
            single("one", 0.0266, List.of(new FaultSymptom("s0", severity -> 0.9))),
            single("other", 0.0266, List.of(new FaultSymptom("s1", severity -> 0.9))));
    List<Brings> brings =
        List.of(
            new Brings("part.cause", "part.one", 0.45),
            new Brings("part.cause", "part.other", 0.45));
    List<SymptomReport> reports =
        List.of(
            new SymptomReport("s0", SymptomReport.Answer.YES),
            new SymptomReport("s1", SymptomReport.Answer.YES));
    SmallMachine machine = new SmallMachine(parts, symptoms, brings, reports, Map.of());
    Map.Entry<Set<String>, Double> first = sorted(machine.posterior()).get(0);

    List<JointState> found = joint(machine, groups(machine)).likeliest(1);

    assertEquals(Set.of("part.cause", "part.one", "part.other"), first.getKey());
    assertEquals(1, found.size());
    assertEquals(first.getValue(), found.get(0).probability(), EXACT);
  }

  private static Symptom plain(String id) {
    Symptom.Misreports wrong = new Symptom.Misreports(0.02, 0.05, 0.05);
    return new Symptom(id, id, id, 0.01, 0.1, wrong, List.of());
  }

  private static SmallMachine.Part single(String id, double prior, List<FaultSymptom> makes) {
    List<Fault> faults = List.of(SmallMachine.fault(id, prior, makes));
    return new SmallMachine.Part(id, faults, Set.of(), List.of(), new double[2][0]);
  }

  /** The probability that two faults are there, over the joint states of a posterior. */
  private static double both(List<Group> groups, JointPosterior posterior, Brings brings) {
    Map<String, Integer> group = new HashMap<>();
    double[][] holding = new double[groups.size()][];
    for (int g = 0; g < holding.length; g++) {
      for (int fault = 0; fault < groups.get(g).faults().size(); fault++) {
        String key = groups.get(g).faults().get(fault).key();
        if (key.equals(brings.cause()) || key.equals(brings.effect())) {
          holding[g] = holding[g] == null ? ones(groups.get(g).states()) : holding[g];
          for (int state = 0; state < holding[g].length; state++) {
            holding[g][state] *= groups.get(g).hasFault(state, fault) ? 1 : 0;
          }
          group.put(key, g);
        }
      }
    }
    assertEquals(2, group.size());
    return posterior.expectation(holding);
  }

  private static double[] ones(int count) {
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static double probability(List<Group> groups, JointPosterior posterior, String key) {
    for (int g = 0; g < groups.size(); g++) {
      for (int fault = 0; fault < groups.get(g).faults().size(); fault++) {
        if (groups.get(g).faults().get(fault).key().equals(key)) {
          return posterior.fault(g, fault);
        }
      }
    }
    throw new IllegalArgumentException(key);
  }

  /**
   * Where nothing was said or measured, each effect is there beside its cause with the chance that
   * was given, and the cause is as frequent among machines with something wrong as before.
   */
  @ParameterizedTest
  @EnumSource(
      value = Shape.class,
      names = {"WITHIN", "SEVERAL_EFFECTS_WITHIN"})
  void effectsComeWithTheirChanceAndCausesStay(Shape shape) {
    for (int seed = 0; seed < 20; seed++) {
      keepsItsWord(shape.machine(new Random(seed)), EXACT);
    }
  }

  /** One cause with effects in its own group and in both others. */
  @Test
  void soDoEffectsWithinAndAcross() {
    for (int seed = 0; seed < 20; seed++) {
      Random random = new Random(seed);
      SmallMachine machine = Shape.WITHIN.machine(random);
      String cause = machine.keys(0).get(0);
      keepsItsWord(
          machine.withBrings(
              List.of(
                  new Brings(cause, machine.keys(0).get(1), 0.4 + 0.2 * random.nextDouble()),
                  new Brings(cause, machine.keys(1).get(0), 0.4 + 0.1 * random.nextDouble()),
                  new Brings(cause, machine.keys(2).get(1), 0.4 + 0.09 * random.nextDouble()))),
          EXACT);
    }
  }

  /** Two causes of one effect: exactly where they never meet, nearly where they may. */
  @Test
  void soDoTwoCausesOfOneEffect() {
    for (int seed = 0; seed < 20; seed++) {
      SmallMachine machine = Shape.TWO_CAUSES_WITHIN.machine(new Random(seed));
      keepsItsWord(machine.apart(0, Set.of(List.of(1, 0))), EXACT);
      keepsItsWord(machine, GREATEST_PRIOR / (1 - GREATEST_PRIOR));
    }
  }

  private static void keepsItsWord(SmallMachine machine, double within) {
    List<Group> groups = groups(machine);
    JointPosterior posterior = joint(machine, groups);
    SmallMachine loose = machine.withBrings(List.of());
    List<Group> usual = groups(loose);
    JointPosterior before = joint(loose, usual);
    for (Brings each : machine.brings()) {
      double cause = probability(groups, posterior, each.cause());
      assertEquals(each.chance(), both(groups, posterior, each) / cause, within);
      double alone = probability(usual, before, each.cause());
      assertEquals(alone / (1 - before.sound()), cause / (1 - posterior.sound()), within);
    }
    assertTrue(machine.brings().size() > 0);
  }

  /**
   * By coincidence the pair has odds of 1e-10 and is not weighed. Brought, it adds 3 % of the cause
   * to an effect that by itself is there as often as 1 % of the cause.
   */
  @Test
  void aPairThatIsBroughtIsNotPassedOverAsRare() {
    SmallMachine machine = Shape.WITHIN.machine(new Random(1));
    List<Fault> rare = List.of(LinearModel.fault("one", 1e-4), LinearModel.fault("two", 1e-6));
    SmallMachine.Part part =
        new SmallMachine.Part("rare", rare, Set.of(), List.of(), new double[4][0]);
    Brings brings = new Brings("part.one", "part.two", 0.03);
    Knowledge knowledge =
        new Knowledge(List.of(part), machine.symptoms(), List.of(brings), List.of());

    Diagnosis found =
        new DiagnosisEngine(SmallMachine.SETTINGS)
            .diagnose(machine.withBrings(List.of()).job(), knowledge);

    double one = found.faults().get(0).probability();
    double two = found.faults().get(1).probability();
    assertEquals(0.03 + 0.01, two / one, 1e-3);
  }

  @Test
  void whatCannotBeTrueIsRefusedByName() {
    SmallMachine machine = SmallMachine.random(new Random(1)).apart(0, Set.of(List.of(1, 0)));
    String one = machine.keys(0).get(0);
    String other = machine.keys(0).get(1);
    String far = machine.keys(1).get(0);
    String farther = machine.keys(2).get(0);

    refuses(machine, one + " brings " + other, new Brings(one, other, 0.5));
    refuses(
        machine,
        one + " brings effects with chances of 1.1",
        new Brings(one, far, 0.5),
        new Brings(one, farther, 0.6));
    refuses(
        machine,
        far + " brings effects with chances of 1.0",
        new Brings(far, machine.keys(1).get(1), 0.5),
        new Brings(far, third(machine), 0.5));
    refuses(machine, far + " and " + one, new Brings(one, far, 0.5), new Brings(far, one, 0.1));
    refuses(machine, one + " and " + far, new Brings(one, far, 0.5), new Brings(one, far, 0.1));
  }

  private static String third(SmallMachine machine) {
    return machine.keys(1).get(machine.keys(1).size() - 1);
  }

  private static void refuses(SmallMachine machine, String words, Brings... brings) {
    SmallMachine wrong = machine.withBrings(List.of(brings));
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new DiagnosisEngine(SmallMachine.SETTINGS).diagnose(wrong.job(), knowledge(wrong)));
    assertTrue(refused.getMessage().contains(words), refused.getMessage());
  }
}
