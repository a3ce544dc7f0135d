package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.cases.Tracking;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Machines by chance, against the definition. */
class RandomMachinesTest {

  private static final int MACHINES = 400;
  private static final double ROUNDING = 2e-13;

  @Test
  @DisplayName("400 machines as they are tracked usually")
  void usual() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      check(
          "seed " + seed,
          new BruteForce(random.machine, random.reports),
          SymptomPosterior.of(random.machine, random.reports));
    }
  }

  @Test
  @DisplayName("All reports folded that can be: each cause is overlooked by itself")
  void folded() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      Tracking tracking = Tracking.of(random.reports, 0);
      check(
          "seed " + seed,
          overlookedByCause(random, tracking),
          SymptomPosterior.of(random.machine, tracking));
    }
  }

  /** The machine in which what is overlooked of folded reports was never made. */
  private static BruteForce overlookedByCause(RandomMachine random, Tracking tracking) {
    double[] noticed = new double[random.reports.count()];
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < noticed.length; i++) {
      Background symptom = random.reports.symptom(i);
      Report report = random.reports.report(i);
      boolean folded = tracking.isFolded(i);
      noticed[i] = folded ? 1 - report.ifThere() / report.ifAbsent() : 1;
      symptoms.add(
          new Background(
              noticed[i] * symptom.leak(),
              noticed[i] * symptom.leakWhenSound(),
              symptom.maskers()));
      reports.add(folded ? new Report(0, report.ifAbsent(), report.ifMasked()) : report);
    }
    List<GroupChances> groups = new ArrayList<>();
    for (GroupChances group : random.machine.groups()) {
      List<StateChances> states = new ArrayList<>();
      for (StateChances state : group.states()) {
        states.add(state instanceof StateChances.Nodes nodes ? noticed(nodes, noticed) : state);
      }
      groups.add(new GroupChances(group.logPriorHealthy(), states));
    }
    return new BruteForce(
        new MachineChances(groups, random.machine.priorSound()), new Reports(symptoms, reports));
  }

  private static StateChances noticed(StateChances.Nodes nodes, double[] noticed) {
    double[][] chance = new double[noticed.length][];
    for (int i = 0; i < noticed.length; i++) {
      if (nodes.makes(i)) {
        chance[i] = nodes.chance()[i].clone();
        for (int n = 0; n < chance[i].length; n++) {
          chance[i][n] *= noticed[i];
        }
      }
    }
    return new StateChances.Nodes(nodes.logWeight(), nodes.share(), chance);
  }

  private static void check(String where, BruteForce expected, SymptomPosterior found) {
    for (int g = 0; g < expected.nodes.size(); g++) {
      double sum = 0;
      for (int state = 0; state < expected.nodes.get(g).size(); state++) {
        double marginal = found.marginal(g, state);
        sum += marginal;
        assertEquals(expected.marginal(g, state), marginal, ROUNDING, where);
        checkNodes(where, expected, found, g, state);
      }
      assertEquals(1, sum, ROUNDING, where);
    }
    checkJoint(where, expected, found);
  }

  private static void checkNodes(
      String where, BruteForce expected, SymptomPosterior found, int group, int state) {
    double[] shares = shares(expected.nodes.get(group).get(state));
    double[] seconds = expected.seconds.get(group).get(state);
    if (seconds == null) {
      assertArrayEquals(shares, found.nodeShares(group, state), ROUNDING, where);
    } else {
      assertArrayEquals(shares, found.nodeShares(group, state, 0), ROUNDING, where);
      assertArrayEquals(shares(seconds), found.nodeShares(group, state, 1), ROUNDING, where);
    }
  }

  private static double[] shares(double[] weights) {
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(weight -> weight / sum).toArray();
  }

  private static void checkJoint(String where, BruteForce expected, SymptomPosterior found) {
    List<JointState> all = new ArrayList<>();
    for (Map.Entry<List<Integer>, Double> each : expected.joint.entrySet()) {
      int[] states = each.getKey().stream().mapToInt(i -> i).toArray();
      all.add(new JointState(states, each.getValue() / expected.total));
      assertEquals(each.getValue() / expected.total, found.joint(states), ROUNDING, where);
    }
    assertEquals(found.sound(), all.get(0).probability(), ROUNDING, where);
    Collections.sort(all);
    List<JointState> likeliest = found.likeliest(20);
    assertEquals(Math.min(20, all.size()), likeliest.size(), where);
    for (int rank = 0; rank < likeliest.size(); rank++) {
      assertArrayEquals(all.get(rank).states(), likeliest.get(rank).states(), where);
      assertEquals(all.get(rank).probability(), likeliest.get(rank).probability(), ROUNDING, where);
    }
  }

  @Test
  @DisplayName("What is there, what no group makes, and which reports are wrong")
  void symptoms() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      BruteForce expected = new BruteForce(random.machine, random.reports);
      SymptomPosterior found = SymptomPosterior.of(random.machine, random.reports);
      for (int i = 0; i < random.reports.count(); i++) {
        double there = expected.there[i] / expected.total;
        assertEquals(there, found.there(i), ROUNDING, "seed " + seed);
        assertEquals(1 - there, found.absent(i), ROUNDING, "seed " + seed);
        assertEquals(
            expected.madeByNoGroup[i] / expected.total,
            found.madeByNoGroup(i),
            ROUNDING,
            "seed " + seed);
        boolean yes = random.reports.report(i).saysYes();
        assertEquals(yes ? 1 - there : there, found.wrong(i), ROUNDING, "seed " + seed);
      }
      double prior = new BruteForce(random.machine, unasked(random.reports)).total;
      assertEquals(Math.log(expected.total / prior), found.logLikelihood(), 1e-11, "seed " + seed);
    }
  }

  private static Reports unasked(Reports reports) {
    Reports rest = reports;
    for (int i = 0; i < reports.count(); i++) {
      rest = rest.without(i);
    }
    return rest;
  }

  @Test
  @DisplayName("Bits of a report: odds with it against odds without it")
  void evidence() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      BruteForce all = new BruteForce(random.machine, random.reports);
      SymptomPosterior posterior = SymptomPosterior.of(random.machine, random.reports);
      for (int i = 0; i < random.reports.count(); i++) {
        BruteForce rest = new BruteForce(random.machine, random.reports.without(i));
        double bits = log2Odds(all.marginal(0, 1)) - log2Odds(rest.marginal(0, 1));
        boolean[] in = new boolean[random.machine.groups().get(0).states().size()];
        in[1] = true;
        ReportEvidence evidence = new ReportEvidence(posterior, i);
        assertEquals(bits, evidence.bits(0, in), 1e-9, "seed " + seed);
        int[] states = new int[random.machine.groups().size()];
        states[0] = 1;
        List<Integer> key = Arrays.stream(states).boxed().toList();
        assertEquals(
            log2Odds(all.joint.get(key) / all.total) - log2Odds(rest.joint.get(key) / rest.total),
            evidence.bitsOfJoint(states),
            1e-9,
            "seed " + seed);
      }
    }
  }

  private static double log2Odds(double probability) {
    return Math.log(probability / (1 - probability)) / Math.log(2);
  }

  @Test
  @DisplayName("Joint states counted by factors, as the plan of repairs asks for them")
  void counted() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      BruteForce all = new BruteForce(random.machine, random.reports);
      double[][] factor = factors(random, seed);
      CountedStates found = SymptomPosterior.of(random.machine, random.reports).counts().of(factor);
      double mass = 0;
      double ofState = 0;
      for (Map.Entry<List<Integer>, Double> each : all.joint.entrySet()) {
        double own = product(factor, each.getKey()) * each.getValue() / all.total;
        mass += own;
        ofState += each.getKey().get(0) == 1 ? own : 0;
      }
      assertEquals(mass, found.mass(), ROUNDING, "seed " + seed);
      assertEquals(ofState, found.weight(0, 1), ROUNDING, "seed " + seed);
    }
  }

  @Test
  @DisplayName(
      "The same of states whose groups make every symptom that is there, or that are sound")
  void countedMadeByGroups() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      BruteForce all = new BruteForce(random.machine, random.reports);
      List<Background> tight = new ArrayList<>();
      double absent = 1;
      for (Background symptom : random.reports.symptoms()) {
        tight.add(new Background(0, 0, symptom.maskers()));
        absent *= 1 - symptom.leak();
      }
      BruteForce groups =
          new BruteForce(random.machine, new Reports(tight, random.reports.reports()));
      double[][] factor = factors(random, seed);
      double mass = 0;
      for (Map.Entry<List<Integer>, Double> each : groups.joint.entrySet()) {
        boolean sound = each.getKey().stream().allMatch(state -> state == 0);
        double weight = sound ? all.joint.get(each.getKey()) : absent * each.getValue();
        mass += weight * product(factor, each.getKey()) / all.total;
      }
      // Symptoms that nobody asked for are summed over, and their leak with them.
      Tracking tracking = allTracked(random.reports);
      SymptomPosterior found = SymptomPosterior.of(random.machine, tracking);
      assertEquals(mass, found.countsMadeByGroups().of(factor).mass(), ROUNDING, "seed " + seed);
    }
  }

  private static Tracking allTracked(Reports reports) {
    Tracking tracking = Tracking.of(reports, Tracking.USUAL);
    for (int i = 0; i < reports.count(); i++) {
      tracking = tracking.and(i);
    }
    return tracking;
  }

  private static double[][] factors(RandomMachine random, int seed) {
    double[][] factor = new double[random.machine.groups().size()][];
    Random draw = new Random(seed);
    for (int g = 1; g < factor.length; g++) {
      factor[g] = draw.doubles(random.machine.groups().get(g).states().size()).toArray();
    }
    return factor;
  }

  private static double product(double[][] factor, List<Integer> states) {
    double product = 1;
    for (int g = 1; g < factor.length; g++) {
      product *= factor[g][states.get(g)];
    }
    return product;
  }
}
