package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;
import kelter.core.diagnosis.symptom.cases.TooManySymptoms;
import kelter.core.diagnosis.symptom.cases.Tracking;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What must hold whatever the figures are; none of it is computed by the code under test. */
class SymptomPropertiesTest {

  private static final int MACHINES = 100;
  private static final double ROUNDING = 2e-13;
  private static final WrongReports WRONG = new WrongReports(.03, .1, .05);

  private static Reports unasked(Reports reports) {
    Reports rest = reports;
    for (int i = 0; i < reports.count(); i++) {
      rest = rest.without(i);
    }
    return rest;
  }

  private static void assertSame(
      MachineChances machine, SymptomPosterior expected, SymptomPosterior found, String where) {
    for (int g = 0; g < machine.groups().size(); g++) {
      for (int x = 0; x < machine.groups().get(g).states().size(); x++) {
        assertEquals(expected.marginal(g, x), found.marginal(g, x), ROUNDING, where);
      }
    }
    assertEquals(expected.sound(), found.sound(), ROUNDING, where);
  }

  @Test
  @DisplayName("Nothing asked: the product of the groups, but for the sound machine")
  void nothingAsked() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      List<GroupChances> groups = random.machine.groups();
      double all = 1;
      double sound = 1;
      double prior = 1;
      for (GroupChances group : groups) {
        all *= weight(group);
        sound *= Math.exp(group.states().get(0).logWeight());
        prior *= Math.exp(group.logPriorHealthy());
      }
      double s = random.machine.priorSound();
      double factor = s * (1 - prior) / ((1 - s) * prior);
      double total = all + (factor - 1) * sound;
      SymptomPosterior found = SymptomPosterior.of(random.machine, unasked(random.reports));
      assertEquals(factor * sound / total, found.sound(), ROUNDING, "seed " + seed);
      for (int g = 0; g < groups.size(); g++) {
        double others = all / weight(groups.get(g));
        double own = Math.exp(groups.get(g).states().get(1).logWeight());
        assertEquals(own * others / total, found.marginal(g, 1), ROUNDING, "seed " + seed);
      }
      assertEquals(0, found.logLikelihood(), ROUNDING, "seed " + seed);
    }
  }

  private static double weight(GroupChances group) {
    return group.states().stream().mapToDouble(x -> Math.exp(x.logWeight())).sum();
  }

  @Test
  @DisplayName("The probabilities of all answers sum to one")
  void allAnswers() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      int count = random.reports.count();
      double sum = 0;
      for (int answers = 0; answers < 1 << count; answers++) {
        Reports reports = random.reports;
        for (int i = 0; i < count; i++) {
          boolean yes = (answers >> i & 1) == 1;
          reports = reports.with(i, yes ? Report.yes(WRONG) : Report.no(WRONG));
        }
        sum += Math.exp(SymptomPosterior.of(random.machine, reports).logLikelihood());
      }
      assertEquals(1, sum, ROUNDING, "seed " + seed);
    }
  }

  @Test
  void orderOfGroupsDoesNotMatter() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      List<GroupChances> turned = new ArrayList<>(random.machine.groups());
      Collections.reverse(turned);
      SymptomPosterior one = SymptomPosterior.of(random.machine, random.reports);
      SymptomPosterior other =
          SymptomPosterior.of(
              new MachineChances(turned, random.machine.priorSound()), random.reports);
      for (int g = 0; g < turned.size(); g++) {
        assertEquals(
            one.marginal(g, 1), other.marginal(turned.size() - 1 - g, 1), ROUNDING, "seed " + seed);
      }
      assertEquals(one.logLikelihood(), other.logLikelihood(), 1e-11, "seed " + seed);
    }
  }

  @Test
  @DisplayName("Where no state makes a symptom the ratios of faulty states stay")
  void silentStates() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      List<GroupChances> groups = new ArrayList<>();
      for (GroupChances group : random.machine.groups()) {
        List<StateChances> states = new ArrayList<>();
        for (StateChances state : group.states()) {
          states.add(StateChances.Nodes.silent(state.logWeight(), random.reports.count()));
        }
        groups.add(new GroupChances(group.logPriorHealthy(), states));
      }
      MachineChances machine = new MachineChances(groups, random.machine.priorSound());
      SymptomPosterior found = SymptomPosterior.of(machine, random.reports);
      List<StateChances> first = groups.get(0).states();
      for (int x = 2; x < first.size(); x++) {
        assertEquals(
            first.get(x).logWeight() - first.get(1).logWeight(),
            Math.log(found.marginal(0, x) / found.marginal(0, 1)),
            1e-12,
            "seed " + seed);
      }
    }
  }

  @Test
  @DisplayName("A report that is a throw of a coin tells nothing")
  void worthlessReport() {
    Report coin = Report.yes(new WrongReports(.5, .5, .5));
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      assertSame(
          random.machine,
          SymptomPosterior.of(random.machine, random.reports.without(0)),
          SymptomPosterior.of(random.machine, random.reports.with(0, coin)),
          "seed " + seed);
    }
  }

  @Test
  @DisplayName("Where the masker is surely there a report of what it masks tells nothing")
  void surelyMasked() {
    for (int seed = 0; seed < MACHINES; seed++) {
      RandomMachine random = new RandomMachine(seed);
      if (random.reports.count() < 2) {
        continue;
      }
      List<Background> symptoms = new ArrayList<>(random.reports.symptoms());
      symptoms.set(1, new Background(1, 1));
      symptoms.set(0, new Background(.02, .2, 1));
      Reports reports = new Reports(symptoms, random.reports.reports()).without(1);
      assertSame(
          random.machine,
          SymptomPosterior.of(random.machine, reports.without(0)),
          SymptomPosterior.of(random.machine, reports.with(0, Report.yes(WRONG))),
          "seed " + seed);
    }
  }

  /** Groups of one fault each that makes the only symptom. */
  private static MachineChances singles(double sound, double[] weight, double[] chance) {
    List<GroupChances> groups = new ArrayList<>();
    for (int g = 0; g < weight.length; g++) {
      groups.add(
          new GroupChances(
              Math.log(1 - weight[g]),
              List.of(
                  StateChances.Nodes.silent(Math.log(1 - weight[g]), 1),
                  new StateChances.Nodes(
                      Math.log(weight[g]), new double[] {1}, new double[] {chance[g]}))));
    }
    return new MachineChances(groups, sound);
  }

  @Test
  @DisplayName("Under one yes a greater chance of the symptom never lowers the state")
  void greaterChance() {
    Random random = new Random(1);
    Reports yes = new Reports(List.of(new Background(.02, .2)), List.of(Report.yes(WRONG)));
    for (int trial = 0; trial < MACHINES; trial++) {
      double[] weight = {.3 * random.nextDouble(), .3 * random.nextDouble()};
      double[] chance = random.doubles(2).toArray();
      double before = SymptomPosterior.of(singles(.1, weight, chance), yes).marginal(0, 1);
      chance[0] += (1 - chance[0]) * random.nextDouble();
      double after = SymptomPosterior.of(singles(.1, weight, chance), yes).marginal(0, 1);
      assertTrue(after >= before * (1 - 1e-14), "trial " + trial);
    }
  }

  @Test
  @DisplayName("Under one yes a fault that becomes likelier explains the others away")
  void explainingAway() {
    Random random = new Random(2);
    // The sound machine has the weight that the priors give it, and the leak of the others.
    Reports yes = new Reports(List.of(new Background(.02, .02)), List.of(Report.yes(WRONG)));
    for (int trial = 0; trial < MACHINES; trial++) {
      double[] weight = random.doubles(3).map(x -> .3 * x).toArray();
      double[] chance = random.doubles(3).toArray();
      double before = SymptomPosterior.of(asGiven(weight, chance), yes).marginal(0, 1);
      weight[1] += (1 - weight[1]) * random.nextDouble();
      double after = SymptomPosterior.of(asGiven(weight, chance), yes).marginal(0, 1);
      assertTrue(after <= before * (1 + 1e-13), "trial " + trial);
    }
  }

  private static MachineChances asGiven(double[] weight, double[] chance) {
    double sound = 1;
    for (double each : weight) {
      sound *= 1 - each;
    }
    return singles(sound, weight, chance);
  }

  /** A machine of several groups whose states make all symptoms with some chance. */
  private static MachineChances noisy(long seed, int groups, int symptoms, double most) {
    Random random = new Random(seed);
    List<GroupChances> all = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      List<StateChances> states = new ArrayList<>();
      states.add(StateChances.Nodes.silent(Math.log(.95), symptoms));
      for (int x = 1; x < 5; x++) {
        double[][] chance = new double[symptoms][];
        for (int i = 0; i < symptoms; i++) {
          chance[i] = random.doubles(2).map(p -> most * p).toArray();
        }
        states.add(new StateChances.Nodes(Math.log(.0125), new double[] {.5, .5}, chance));
      }
      all.add(new GroupChances(Math.log(.95), states));
    }
    return new MachineChances(all, .1);
  }

  private static Reports reports(int yes, int no, double leak, WrongReports wrong) {
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < yes + no; i++) {
      symptoms.add(new Background(leak, leak));
      reports.add(i < yes ? Report.yes(wrong) : Report.no(wrong));
    }
    return new Reports(symptoms, reports);
  }

  @Test
  @DisplayName("Eight yes that hardly anything makes: every marginal is above 0, all sum to 1")
  void unlikelyReports() {
    Reports reports = reports(8, 0, 1e-9, new WrongReports(0, 0, 0));
    SymptomPosterior found = SymptomPosterior.of(noisy(3, 6, 8, .01), reports);
    for (int g = 0; g < 6; g++) {
      double sum = 0;
      for (int x = 0; x < 5; x++) {
        assertTrue(found.marginal(g, x) > 0, g + "." + x);
        sum += found.marginal(g, x);
      }
      assertEquals(1, sum, 1e-14);
    }
    assertTrue(found.sound() > 0);
  }

  @Test
  @DisplayName("Fifteen asked, five yes: seven no are folded, close to all tracked")
  void fifteenAsked() {
    MachineChances machine = noisy(4, 4, 12, .6);
    Reports reports = reports(5, 7, .02, WRONG);
    SymptomPosterior exact = SymptomPosterior.of(machine, Tracking.of(reports, 12));
    SymptomPosterior folded = SymptomPosterior.of(machine, reports);
    assertEquals(8, Tracking.of(reports, Tracking.USUAL).weighed().size());
    for (int g = 0; g < 4; g++) {
      for (int x = 0; x < 5; x++) {
        assertEquals(exact.marginal(g, x), folded.marginal(g, x), .005, g + "." + x);
      }
    }
  }

  @Test
  @DisplayName("A no that is never wrong is folded without loss")
  void exactlyFolded() {
    WrongReports sure = new WrongReports(.03, 0, .05);
    MachineChances machine = noisy(5, 3, 4, .6);
    Reports reports = reports(2, 2, .02, sure);
    assertEquals(2, Tracking.of(reports, Tracking.USUAL).weighed().size());
    BruteForce expected = new BruteForce(noisy(5, 3, 4, .6), reports);
    SymptomPosterior found = SymptomPosterior.of(machine, reports);
    assertEquals(expected.marginal(1, 2), found.marginal(1, 2), ROUNDING);
  }

  @Test
  @DisplayName("A no that is masked is folded in two cases: its masker is there or not")
  void foldedByCases() {
    WrongReports sure = new WrongReports(.03, 0, .3);
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      symptoms.add(i == 0 ? new Background(.02, .1) : new Background(.03, .1, 0));
      reports.add(i == 0 ? Report.UNASKED : i < 3 ? Report.yes(sure) : Report.no(sure));
    }
    Reports asked = new Reports(symptoms, reports);
    MachineChances machine = noisy(8, 3, 7, .6);
    Tracking folded = Tracking.of(asked, 3);
    assertEquals(List.of(0, 1, 2), folded.weighed());
    assertEquals(List.of(0, 1, 2, 3, 4, 5, 6), Tracking.of(asked, 7).weighed());
    assertSame(
        machine,
        SymptomPosterior.of(machine, Tracking.of(asked, 7)),
        SymptomPosterior.of(machine, folded),
        "masked");
  }

  @Test
  void tooManyToTrack() {
    Reports reports = reports(13, 0, .02, WRONG);
    TooManySymptoms told =
        assertThrows(
            TooManySymptoms.class, () -> SymptomPosterior.of(noisy(6, 2, 13, .5), reports));
    assertTrue(
        told.getMessage().startsWith("13 symptoms are reported as there"), told.getMessage());
  }

  @Test
  void reportsThatNothingExplains() {
    Reports impossible = reports(1, 0, 0, new WrongReports(0, 0, 0));
    MachineChances silent = noisy(7, 2, 1, 0);
    assertThrows(IllegalArgumentException.class, () -> SymptomPosterior.of(silent, impossible));
  }

  @Test
  @DisplayName("States whose weights differ by more than a double can hold")
  void farApart() {
    List<GroupChances> groups = new ArrayList<>();
    for (int g = 0; g < 12; g++) {
      groups.add(
          new GroupChances(
              Math.log(.9),
              List.of(
                  StateChances.Nodes.silent(-900, 1),
                  new StateChances.Nodes(-800, new double[] {1}, new double[] {.5}))));
    }
    SymptomPosterior found =
        SymptomPosterior.of(
            new MachineChances(groups, .1), reports(1, 0, .01, new WrongReports(0, 0, 0)));
    assertEquals(1, found.marginal(3, 1), 1e-12);
    // Each state is far likelier than nothing wrong: exp(100) each. One half each, with the leak.
    assertEquals(1 - .99 * Math.pow(.5, 12), Math.exp(found.logLikelihood()), 1e-12);
  }
}
