package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;

/**
 * A machine of four groups and four symptoms without severities. Its figures are invented; what
 * follows from them was worked out outside the project by adding up all joint states and all sets
 * of symptoms, and by aima-core 3.0.0, with the same digits.
 */
final class NetworkOne {

  static final double SOUND = .1;
  static final String[] GROUPS = {"a", "b", "c", "d"};
  static final double[] LEAK = {.01, .02, .005, .01};
  static final double[] LEAK_WHEN_SOUND = {.05, .20, .03, .06};
  static final double[] FALSE_YES = {.02, .03, .01, .02};
  static final double[] FALSE_NO = {.01, .10, .05, .15};
  static final double YES_WHEN_MASKED = .05;

  private static final double UNEXPLAINED = .003;

  private static final double[][] PRIOR = {
    {.05, .03, .02}, {.06, .04, .03, .01}, {.04, .03, .02, .02, .01}, {.05, .03, .02}
  };

  /** The chances of symptoms 1 to 4 by each fault. */
  private static final double[][][] MAKES = {
    {{.95, 0, 0, 0}, {.60, 0, 0, 0}, {0, .30, .70, 0}},
    {{0, .90, 0, 0}, {0, .70, .40, 0}, {0, .20, 0, 0}, {0, 0, .80, 0}},
    {{.80, 0, 0, 0}, {.30, .50, 0, 0}, {0, .60, 0, 0}, {0, 0, 0, .30}, {.10, .10, .10, .10}},
    {{0, 0, 0, .90}, {0, 0, .30, .60}, {0, .10, .50, 0}}
  };

  private static final double[][] UNEXPLAINED_MAKES = {null, {0, .5, .3, 0}, {.3, .3, 0, .1}, null};

  /** The chance that a fault of B or C makes the reading a yes. */
  private static final double[][] READING = {null, {.9, .2, .5, .05}, {.7, .1, .4, .02, .3}, null};

  private static final double[] READING_BASE = {0, .03, .05, 0};

  /**
   * A state of a group.
   *
   * @param name its faults, {@code -} where there are none, {@code u} if unexplained
   * @param prior its prior
   * @param reading how likely the reading of the group is
   * @param makes the chances of the symptoms
   */
  record State(String name, double prior, double reading, double[] makes) {

    boolean has(String fault) {
      return Arrays.asList(name.split(" ")).contains(fault);
    }
  }

  /** The states of each group. */
  final List<List<State>> groups = new ArrayList<>();

  final Reports reports;

  private NetworkOne(boolean withReadings, Reports reports) {
    for (int g = 0; g < GROUPS.length; g++) {
      groups.add(states(g, withReadings));
    }
    this.reports = reports;
  }

  /**
   * The machine with the reports of a query.
   *
   * @param query Q1, Q3, Q4 or Q6
   */
  static NetworkOne of(String query) {
    Map<String, String> reported = new TreeMap<>();
    reported.put("Q1", ".y..");
    reported.put("Q3", ".yny");
    reported.put("Q4", "yny.");
    reported.put("Q6", "yyyy");
    return new NetworkOne(!query.equals("Q1"), reports(reported.get(query)));
  }

  private static Reports reports(String answers) {
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < answers.length(); i++) {
      int[] maskers = i == 1 ? new int[] {0} : new int[0];
      symptoms.add(new Background(LEAK[i], LEAK_WHEN_SOUND[i], maskers));
      WrongReports wrong = new WrongReports(FALSE_YES[i], FALSE_NO[i], YES_WHEN_MASKED);
      char answer = answers.charAt(i);
      reports.add(
          answer == 'y' ? Report.yes(wrong) : answer == 'n' ? Report.no(wrong) : Report.UNASKED);
    }
    return new Reports(symptoms, reports);
  }

  private static List<State> states(int g, boolean withReadings) {
    int faults = PRIOR[g].length;
    List<State> states = new ArrayList<>();
    double[] odds = new double[faults];
    for (int i = 0; i < faults; i++) {
      odds[i] = PRIOR[g][i] / (1 - PRIOR[g][i]);
    }
    states.add(state(g, "-", 1, withReadings));
    for (int i = 0; i < faults; i++) {
      states.add(state(g, name(g, i), odds[i], withReadings, i));
    }
    for (int i = 0; i < faults; i++) {
      for (int j = i + 1; j < faults; j++) {
        boolean meet = !(g == 0 && i == 0 && j == 1);
        if (meet) {
          String name = name(g, i) + " " + name(g, j);
          states.add(state(g, name, odds[i] * odds[j], withReadings, i, j));
        }
      }
    }
    boolean unexplained = withReadings && UNEXPLAINED_MAKES[g] != null;
    double share = unexplained ? UNEXPLAINED : 0;
    double sum = states.stream().mapToDouble(State::prior).sum();
    states.replaceAll(s -> new State(s.name, s.prior / sum * (1 - share), s.reading, s.makes));
    if (unexplained) {
      states.add(new State("u", UNEXPLAINED, .5, UNEXPLAINED_MAKES[g]));
    }
    return states;
  }

  private static String name(int g, int fault) {
    return GROUPS[g] + (fault + 1);
  }

  private static State state(int g, String name, double odds, boolean read, int... faults) {
    double[] makes = new double[LEAK.length];
    double noReading = 1 - READING_BASE[g];
    for (int fault : faults) {
      for (int i = 0; i < makes.length; i++) {
        makes[i] = 1 - (1 - makes[i]) * (1 - MAKES[g][fault][i]);
      }
      noReading *= READING[g] == null ? 1 : 1 - READING[g][fault];
    }
    double reading = !read || READING[g] == null ? 1 : g == 1 ? 1 - noReading : noReading;
    return new State(name, odds, reading, makes);
  }

  MachineChances machine() {
    List<GroupChances> chances = new ArrayList<>();
    for (List<State> group : groups) {
      List<StateChances> states = new ArrayList<>();
      for (State state : group) {
        double[][] makes = new double[LEAK.length][];
        for (int i = 0; i < makes.length; i++) {
          makes[i] = state.makes[i] == 0 ? null : new double[] {state.makes[i]};
        }
        states.add(
            new StateChances.Nodes(Math.log(state.prior * state.reading), new double[] {1}, makes));
      }
      chances.add(new GroupChances(Math.log(group.get(0).prior), states));
    }
    return new MachineChances(chances, SOUND);
  }

  /** The probability that a fault is there, or that its group is unexplained ({@code U_B}). */
  double fault(SymptomPosterior posterior, String fault) {
    boolean unexplained = fault.startsWith("U_");
    String letter = fault.substring(unexplained ? 2 : 0).substring(0, 1).toLowerCase();
    int g = Arrays.asList(GROUPS).indexOf(letter);
    double sum = 0;
    for (int state = 0; state < groups.get(g).size(); state++) {
      boolean in = groups.get(g).get(state).has(unexplained ? "u" : fault);
      sum += in ? posterior.marginal(g, state) : 0;
    }
    return sum;
  }

  String name(JointState joint) {
    StringBuilder name = new StringBuilder();
    for (int g = 0; g < GROUPS.length; g++) {
      int state = joint.states()[g];
      name.append(state == 0 ? "" : " " + groups.get(g).get(state).name);
    }
    return name.toString().trim();
  }
}
