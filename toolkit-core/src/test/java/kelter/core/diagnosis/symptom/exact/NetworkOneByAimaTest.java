package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import aima.core.probability.proposition.AssignmentProposition;
import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.oracle.AimaNetwork;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The network of four groups asked of the independent library aima-core 3.0.0 (variable
 * elimination).
 *
 * <p>Its root tells whether the machine is sound. The state of each group hangs on that and on
 * whether something is wrong in a group before it; a machine that is not sound has something wrong
 * in one of those that are left. Symptoms hang on the root, for their leak, and on the groups that
 * can make them, reports on the symptom and its masker. Readings are nodes of their own.
 */
class NetworkOneByAimaTest {

  private static final int SOUND = 1;

  private final AimaNetwork aima = new AimaNetwork();
  private final List<AssignmentProposition> evidence = new ArrayList<>();
  private final int[] state = new int[NetworkOne.GROUPS.length];
  private NetworkOne network;

  @ParameterizedTest
  @ValueSource(strings = {"Q1", "Q3", "Q4", "Q6"})
  void sameProbabilities(String query) {
    network = NetworkOne.of(query);
    int root = aima.add(2, new double[] {1 - NetworkOne.SOUND, NetworkOne.SOUND});
    addGroups(root);
    int[] symptom = new int[NetworkOne.LEAK.length];
    for (int i = 0; i < symptom.length; i++) {
      symptom[i] = addSymptom(root, i);
    }
    for (int i = 0; i < symptom.length; i++) {
      addReport(i, symptom);
    }
    SymptomPosterior posterior = SymptomPosterior.of(network.machine(), network.reports);

    assertEquals(ask(root)[SOUND], posterior.sound(), 1e-13);
    for (int g = 0; g < state.length; g++) {
      double[] found = new double[network.groups.get(g).size()];
      for (int x = 0; x < found.length; x++) {
        found[x] = posterior.marginal(g, x);
      }
      assertArrayEquals(ask(state[g]), found, 1e-13);
    }
  }

  private double[] ask(int node) {
    return aima.ask(node, evidence.toArray(new AssignmentProposition[0]));
  }

  private void addGroups(int root) {
    int wrongBefore = -1;
    for (int g = 0; g < state.length; g++) {
      List<NetworkOne.State> states = network.groups.get(g);
      state[g] =
          wrongBefore < 0
              ? aima.add(states.size(), stateTable(g, false), root)
              : aima.add(states.size(), stateTable(g, true), root, wrongBefore);
      wrongBefore = addWrong(g, wrongBefore);
      addReading(g);
    }
  }

  /** By whether the machine is sound, then by whether something is wrong in a group before. */
  private double[] stateTable(int g, boolean hasBefore) {
    List<Double> table = new ArrayList<>();
    for (int sound = 0; sound < 2; sound++) {
      for (int before = 0; before < (hasBefore ? 2 : 1); before++) {
        List<NetworkOne.State> states = network.groups.get(g);
        for (int x = 0; x < states.size(); x++) {
          table.add(chance(g, x, states.get(x).prior(), sound == SOUND, before == 1));
        }
      }
    }
    return table.stream().mapToDouble(p -> p).toArray();
  }

  private double chance(int g, int x, double prior, boolean sound, boolean before) {
    if (sound) {
      return x == 0 ? 1 : 0;
    }
    if (before) {
      return prior;
    }
    double behind = 1;
    for (int j = g + 1; j < state.length; j++) {
      behind *= network.groups.get(j).get(0).prior();
    }
    double wrong = 1 - behind * network.groups.get(g).get(0).prior();
    return (x == 0 ? prior * (1 - behind) : prior) / wrong;
  }

  /** Whether something is wrong in this group or one before. */
  private int addWrong(int g, int before) {
    List<Double> table = new ArrayList<>();
    for (int earlier = 0; earlier < (before < 0 ? 1 : 2); earlier++) {
      for (int x = 0; x < network.groups.get(g).size(); x++) {
        boolean wrong = earlier == 1 || x > 0;
        table.add(wrong ? 0.0 : 1.0);
        table.add(wrong ? 1.0 : 0.0);
      }
    }
    double[] chances = table.stream().mapToDouble(p -> p).toArray();
    return before < 0 ? aima.add(2, chances, state[g]) : aima.add(2, chances, before, state[g]);
  }

  private void addReading(int g) {
    List<NetworkOne.State> states = network.groups.get(g);
    double[] table = new double[2 * states.size()];
    for (int x = 0; x < states.size(); x++) {
      table[2 * x] = 1 - states.get(x).reading();
      table[2 * x + 1] = states.get(x).reading();
    }
    evidence.add(aima.finding(aima.add(2, table, state[g]), 1));
  }

  private int addSymptom(int root, int symptom) {
    List<Integer> parents = new ArrayList<>(List.of(root));
    List<List<NetworkOne.State>> makers = new ArrayList<>();
    for (int g = 0; g < state.length; g++) {
      if (network.groups.get(g).stream().anyMatch(x -> x.makes()[symptom] > 0)) {
        parents.add(state[g]);
        makers.add(network.groups.get(g));
      }
    }
    List<Double> table = new ArrayList<>();
    fill(table, symptom, makers, 0, 1 - NetworkOne.LEAK[symptom]);
    fill(table, symptom, makers, 0, 1 - NetworkOne.LEAK_WHEN_SOUND[symptom]);
    return aima.add(
        2,
        table.stream().mapToDouble(p -> p).toArray(),
        parents.stream().mapToInt(p -> p).toArray());
  }

  private static void fill(
      List<Double> table,
      int symptom,
      List<List<NetworkOne.State>> makers,
      int from,
      double absent) {
    if (from == makers.size()) {
      table.add(absent);
      table.add(1 - absent);
      return;
    }
    for (NetworkOne.State each : makers.get(from)) {
      fill(table, symptom, makers, from + 1, absent * (1 - each.makes()[symptom]));
    }
  }

  /** Outcome 1 is a yes; symptom 1 masks symptom 2. */
  private void addReport(int i, int[] symptom) {
    Report report = network.reports.report(i);
    if (report.equals(Report.UNASKED)) {
      return;
    }
    double yesIfAbsent = NetworkOne.FALSE_YES[i];
    double yesIfThere = 1 - NetworkOne.FALSE_NO[i];
    double masked = NetworkOne.YES_WHEN_MASKED;
    int node =
        i == 1
            ? aima.add(2, table(yesIfAbsent, yesIfThere, masked, masked), symptom[0], symptom[1])
            : aima.add(2, table(yesIfAbsent, yesIfThere), symptom[i]);
    evidence.add(aima.finding(node, report.saysYes() ? 1 : 0));
  }

  private static double[] table(double... yes) {
    double[] table = new double[2 * yes.length];
    for (int i = 0; i < yes.length; i++) {
      table[2 * i] = 1 - yes[i];
      table[2 * i + 1] = yes[i];
    }
    return table;
  }
}
