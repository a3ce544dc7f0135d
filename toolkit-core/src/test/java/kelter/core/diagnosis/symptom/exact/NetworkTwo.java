package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;
import kelter.core.numeric.GaussLegendre;

/**
 * A machine of three groups with severities, one of them read with a spread. Its figures are
 * invented; what follows from them was worked out outside the project.
 *
 * <p>Group P: f (severity s), h (severity t), both, unexplained; it shows 10 - 6 s + 3 t^2, and 6.1
 * was read. Group G: g with a severity. Group R: r1, r2, both, without severity.
 */
final class NetworkTwo {

  private static final double READ = 6.1;
  private static final double DEVIATION = .8;
  private static final double BLUNDER = .01 / 20;
  private static final double UNEXPLAINED = .003;
  private static final int PIECES = 24;

  /**
   * A rule over severities from 0 to 1.
   *
   * @param severity the nodes
   * @param weight their weights, 1 in all
   */
  record Rule(double[] severity, double[] weight) {

    /** Twelve midpoints. */
    static Rule grid() {
      double[] severity = new double[12];
      double[] weight = new double[12];
      for (int i = 0; i < 12; i++) {
        severity[i] = (i + .5) / 12;
        weight[i] = 1 / 12.0;
      }
      return new Rule(severity, weight);
    }

    /** Gauss and Legendre in pieces, which stands for the limit. */
    static Rule fine() {
      int points = GaussLegendre.POINTS;
      double[] severity = new double[PIECES * points];
      double[] weight = new double[severity.length];
      for (int i = 0; i < severity.length; i++) {
        severity[i] = (i / points + (1 + GaussLegendre.abscissa(i % points)) / 2) / PIECES;
        weight[i] = GaussLegendre.weight(i % points) / 2 / PIECES;
      }
      return new Rule(severity, weight);
    }
  }

  private final Rule rule;
  private final List<double[]> pairSeverities = new ArrayList<>();

  /** The probability density of the reading, whatever is reported. */
  final double density;

  final MachineChances machine;

  NetworkTwo(Rule rule) {
    this.rule = rule;
    List<GroupChances> groups = List.of(p(), g(), r());
    this.machine = new MachineChances(groups, NetworkOne.SOUND);
    this.density = density(groups);
  }

  /** The total of the joint weights over the total of the joint priors, (1 - H) / (1 - s). */
  private static double density(List<GroupChances> groups) {
    double all = 1;
    double sound = 1;
    double prior = 1;
    for (GroupChances group : groups) {
      all *= group.states().stream().mapToDouble(x -> Math.exp(x.logWeight())).sum();
      sound *= Math.exp(group.states().get(0).logWeight());
      prior *= Math.exp(group.logPriorHealthy());
    }
    double s = NetworkOne.SOUND;
    double factor = s * (1 - prior) / ((1 - s) * prior);
    return (all + (factor - 1) * sound) * (1 - s) / (1 - prior);
  }

  /** Reports of the three symptoms: y, n or a point where nobody asked. */
  static Reports reports(String answers) {
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < answers.length(); i++) {
      int[] maskers = i == 1 ? new int[] {0} : new int[0];
      symptoms.add(new Background(NetworkOne.LEAK[i], NetworkOne.LEAK_WHEN_SOUND[i], maskers));
      WrongReports wrong =
          new WrongReports(
              NetworkOne.FALSE_YES[i], NetworkOne.FALSE_NO[i], NetworkOne.YES_WHEN_MASKED);
      char answer = answers.charAt(i);
      reports.add(
          answer == 'y' ? Report.yes(wrong) : answer == 'n' ? Report.no(wrong) : Report.UNASKED);
    }
    return new Reports(symptoms, reports);
  }

  private static double reading(double s, double t) {
    double z = (READ - (10 - 6 * s + 3 * t * t)) / DEVIATION;
    return .99 * Math.exp(-z * z / 2) / (DEVIATION * Math.sqrt(2 * Math.PI)) + BLUNDER;
  }

  private static double[] byF(double s) {
    return new double[] {.9 / (1 + Math.exp(-25 * (s - .7))), .8 * s, 0};
  }

  private static double[] byH(double t) {
    return new double[] {0, .5 * t * t, .6 * t};
  }

  private static double[] both(double[] one, double[] other) {
    double[] both = new double[one.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = 1 - (1 - one[i]) * (1 - other[i]);
    }
    return both;
  }

  private GroupChances p() {
    double f = .05 / .95;
    double h = .04 / .96;
    double explained = (1 - UNEXPLAINED) / (1 + f + h + f * h);
    List<double[]> ofF = new ArrayList<>();
    List<double[]> ofH = new ArrayList<>();
    List<double[]> ofBoth = new ArrayList<>();
    int count = rule.severity.length;
    double[] weightF = new double[count];
    double[] weightH = new double[count];
    double[] weightBoth = new double[count * count];
    for (int i = 0; i < count; i++) {
      double s = rule.severity[i];
      ofF.add(byF(s));
      ofH.add(byH(s));
      weightF[i] = rule.weight[i] * reading(s, 0);
      weightH[i] = rule.weight[i] * reading(0, s);
      for (int j = 0; j < count; j++) {
        double t = rule.severity[j];
        weightBoth[ofBoth.size()] = rule.weight[i] * rule.weight[j] * reading(s, t);
        ofBoth.add(both(byF(s), byH(t)));
        pairSeverities.add(new double[] {s, t});
      }
    }
    return new GroupChances(
        Math.log(explained),
        List.of(
            StateChances.Nodes.silent(Math.log(explained * reading(0, 0)), 3),
            state(explained * f, weightF, ofF),
            state(explained * h, weightH, ofH),
            state(explained * f * h, weightBoth, ofBoth),
            state(UNEXPLAINED, new double[] {1 / 20.0}, List.of(new double[] {.2, .3, .2}))));
  }

  private GroupChances g() {
    List<double[]> makes = new ArrayList<>();
    for (double each : rule.severity) {
      makes.add(new double[] {0, .7 * each, 1 - Math.exp(-2 * each)});
    }
    return new GroupChances(
        Math.log(.94),
        List.of(StateChances.Nodes.silent(Math.log(.94), 3), state(.06, rule.weight, makes)));
  }

  private static GroupChances r() {
    double[] one = {1};
    double[] r1 = {.6, 0, 0};
    double[] r2 = {0, .1, .3};
    double none = .97 * .98;
    return new GroupChances(
        Math.log(none),
        List.of(
            StateChances.Nodes.silent(Math.log(none), 3),
            state(.03 * .98, one, List.of(r1)),
            state(.02 * .97, one, List.of(r2)),
            state(.03 * .02, one, List.of(both(r1, r2)))));
  }

  /** A state by the weights of its nodes and what it makes at each. */
  private static StateChances state(double prior, double[] weights, List<double[]> makes) {
    double sum = 0;
    for (double each : weights) {
      sum += each;
    }
    double[] share = new double[weights.length];
    double[][] chance = new double[3][weights.length];
    for (int n = 0; n < share.length; n++) {
      share[n] = weights[n] / sum;
      for (int i = 0; i < 3; i++) {
        chance[i][n] = makes.get(n)[i];
      }
    }
    return new StateChances.Nodes(Math.log(prior * sum), share, chance);
  }

  /** The mean severity of f, if f is there. */
  double meanOfF(SymptomPosterior posterior) {
    double alone = posterior.marginal(0, 1);
    double paired = posterior.marginal(0, 3);
    double[] ofAlone = posterior.nodeShares(0, 1);
    double[] ofPair = posterior.nodeShares(0, 3);
    double mean = 0;
    for (int n = 0; n < ofAlone.length; n++) {
      mean += alone * ofAlone[n] * rule.severity[n];
    }
    for (int n = 0; n < ofPair.length; n++) {
      mean += paired * ofPair[n] * pairSeverities.get(n)[0];
    }
    return mean / (alone + paired);
  }

  /** The mean severity of g, if g is there. */
  double meanOfG(SymptomPosterior posterior) {
    double[] shares = posterior.nodeShares(1, 1);
    double mean = 0;
    for (int n = 0; n < shares.length; n++) {
      mean += shares[n] * rule.severity[n];
    }
    return mean;
  }
}
