package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;
import kelter.core.diagnosis.symptom.cases.TooManySymptoms;
import kelter.core.diagnosis.symptom.cases.Tracking;

/**
 * The states of all groups of a machine, weighed by their readings and by what was reported of the
 * whole machine.
 *
 * <p>Groups share no reading, but the reports tie them together: a symptom that one of them
 * explains says little of the others. Exact sums over all joint states, by a recursion over the
 * groups from either end (derived here). With t and t0 of {@link ReportWeights}, F and h of {@link
 * CausesBefore}, the sound factor kappa, A_g the weights with which the faulty states of g make
 * each set of symptoms and w_g the weight of nothing wrong:
 *
 * <ul>
 *   <li>something wrong before g: {@code V_{G+1} = t, V_g(C) = sum over B of (A_g + w_g [none])(B)
 *       V_{g+1}(C u B)};
 *   <li>nothing wrong before g: {@code N_{G+1} = kappa t0, N_g = w_g N_{g+1} + sum over B of A_g(B)
 *       V_{g+1}(B)}; the total is N_1;
 *   <li>all but g: {@code c_g(S) = h_g V_{g+1}(S) + sum over W of F_g(W) V_{g+1}(S u W)}.
 * </ul>
 *
 * <p>The probability of a faulty state x of g is then {@code sum over S of a_gx(S) c_g(S) / total}.
 * The relative error of every probability is about 1e-15 times the number of groups, however
 * unlikely the reports; what is folded is told in {@link Tracking}. One thread at a time may ask.
 */
public final class SymptomPosterior {

  /** Of so many groups the states are chosen first where only they differ. */
  private static final int FEW = 2;

  private final Tracking tracking;
  private final MachineChances machine;
  private final List<GroupTables> groups;
  private final ReportsEnd reports;
  private final CausesBefore[] before;
  private final CausesBehind[] behind;
  private final double total;
  private final Optional<Multiplied> multiplied;
  private MostMade mostOfAny;
  private LikeliestStates likeliest;

  /** Of which posterior another comes, and in which groups it differs. */
  private record Multiplied(SymptomPosterior usual, List<Integer> groups) {}

  private SymptomPosterior(
      MachineChances machine,
      Tracking tracking,
      List<GroupTables> groups,
      ReportsEnd reports,
      CausesBefore start,
      CausesBehind end,
      Optional<Multiplied> multiplied) {
    this.machine = machine;
    this.multiplied = multiplied;
    this.tracking = tracking;
    this.groups = groups;
    this.reports = reports;
    int count = groups.size();
    this.before = new CausesBefore[count + 1];
    before[0] = start;
    this.behind = new CausesBehind[count + 1];
    behind[count] = end;
    for (int g = count - 1; g >= 0; g--) {
      behind[g] = behind[g + 1].and(groups.get(g));
    }
    this.total = behind[0].soundValue();
  }

  /**
   * Weighs readings and reports.
   *
   * @param machine the states of the groups, weighed by their readings
   * @param reports what was reported; each state has its chances in the order of these symptoms
   * @throws TooManySymptoms if more symptoms have to be tracked than can be
   * @throws IllegalArgumentException if no state explains the reports
   */
  public static SymptomPosterior of(MachineChances machine, Reports reports) {
    return of(machine, Tracking.of(reports, Tracking.USUAL));
  }

  static SymptomPosterior of(MachineChances machine, Tracking tracking) {
    List<GroupTables> groups = new ArrayList<>();
    for (GroupChances group : machine.groups()) {
      groups.add(new GroupTables(group, tracking));
    }
    return of(machine, tracking, groups, CausesBefore.none(tracking.space()));
  }

  /**
   * The same with further states in its groups. States that both have are not worked out again.
   *
   * @param more the states of the groups, in which the states of this posterior may stand at other
   *     places
   */
  public SymptomPosterior with(MachineChances more) {
    List<GroupTables> all = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      all.add(new GroupTables(more.groups().get(g), tracking, groups.get(g).known()));
    }
    return of(more, tracking, all, CausesBefore.none(tracking.space()));
  }

  private static SymptomPosterior of(
      MachineChances machine, Tracking tracking, List<GroupTables> groups, CausesBefore start) {
    ReportsEnd end = new ReportsEnd(tracking, machine.soundFactor());
    return new SymptomPosterior(machine, tracking, groups, end, start, end.all(), Optional.empty())
        .requireExplained();
  }

  private SymptomPosterior requireExplained() {
    if (!(total > 0)) {
      throw new IllegalArgumentException(
          "no state of the machine explains readings and reports: their probability is " + total);
    }
    return this;
  }

  /** The first groups, put together when they are first asked for. */
  private CausesBefore before(int group) {
    if (before[group] == null) {
      before[group] = before(group - 1).and(groups.get(group - 1));
    }
    return before[group];
  }

  /** The same with one report taken back; symptoms stay tracked or folded as they are. */
  public SymptomPosterior without(int symptom) {
    Tracking rest = tracking.without(symptom);
    if (!tracking.isFolded(symptom)) {
      return of(machine, rest, groups, before[0]);
    }
    List<GroupTables> without = new ArrayList<>();
    for (GroupTables group : groups) {
      without.add(group.without(rest, symptom));
    }
    return of(machine, rest, without, CausesBefore.none(rest.space()));
  }

  private SymptomPosterior tracking(int symptom) {
    return tracking.isTracked(symptom) ? this : of(machine, tracking.and(symptom));
  }

  /** The natural logarithm of the probability of the reports, given the readings. */
  public double logLikelihood() {
    return Math.log(total / ofAll());
  }

  /** The weight of all joint states, whatever they make. */
  private double ofAll() {
    double someWrong = 0;
    for (int g = 0; g < groups.size(); g++) {
      someWrong = someWrong * groups.get(g).sum() + before(g).sound() * groups.get(g).faultySum();
    }
    return someWrong + reports.soundFactor() * before(groups.size()).sound();
  }

  /** The probability that a group is in a state, whatever the others do. */
  public double marginal(int group, int state) {
    return groups.get(group).around(state, before(group), behind[group + 1]) / total;
  }

  /** c_g: what all other groups and the reports make of each set that a faulty state makes. */
  double[] others(int group) {
    return before(group).around(behind[group + 1]);
  }

  /** The natural logarithm of the weight of all there is, in the unit of a group. */
  public double logTotal(int group) {
    return machine.groups().get(group).logTop() + Math.log(total);
  }

  /** How much all other groups and the reports speak for the states of a group. */
  public Lift lift(int group) {
    double[] ofEach = reports.sets().overCases(others(group));
    return new Lift(
        reports.sets().made(machine.groups().get(group)),
        logTotal(group),
        WeighedSets.most(ofEach),
        WeighedSets.least(ofEach));
  }

  /** How much all other groups and the reports speak for the states of one group. */
  public static final class Lift {
    private final int[] made;
    private final double logTotal;
    private final double[] most;
    private final double[] least;

    /** The most and the least that is made of any subset of each set. */
    private Lift(int[] made, double logTotal, double[] most, double[] least) {
      this.made = made;
      this.logTotal = logTotal;
      this.most = most;
      this.least = least;
    }

    /** The natural logarithm of the weight of all there is. */
    public double logTotal() {
      return logTotal;
    }

    /** The most that they can speak for a state that makes what two others make. */
    public double logMost(int one, int other) {
      return Math.log(most[made[one] | made[other]]);
    }

    /** The least. */
    public double logLeast(int one, int other) {
      return Math.log(least[made[one] | made[other]]);
    }
  }

  /**
   * A bound of the probability of states of a group that were left out.
   *
   * @param group the group
   * @param logBound a bound of their prior times likelihood, as a natural logarithm
   */
  public double leftOut(int group, double logBound) {
    double[] most = WeighedSets.most(reports.sets().overCases(others(group)));
    double logTop = machine.groups().get(group).logTop();
    return Math.exp(logBound - logTop) * most[most.length - 1] / total;
  }

  /** The probability that nothing at all is wrong. */
  public double sound() {
    return before(groups.size()).sound() * behind[groups.size()].soundValue() / total;
  }

  /** The probability that a symptom is there. */
  public double there(int symptom) {
    SymptomPosterior all = tracking(symptom);
    return all.share(ReportWeights.whereThere(all.tracking, symptom));
  }

  /** The probability that a symptom is absent. */
  public double absent(int symptom) {
    SymptomPosterior all = tracking(symptom);
    return all.share(ReportWeights.whereAbsent(all.tracking, symptom));
  }

  /** The probability that the report of a symptom is wrong: a yes and it is absent, or a no. */
  public double wrong(int symptom) {
    return tracking.reports().report(symptom).saysYes() ? absent(symptom) : there(symptom);
  }

  /** The probability that no group makes a symptom, be it there or not. */
  public double madeByNoGroup(int symptom) {
    SymptomPosterior all = tracking(symptom);
    double[] notMade = all.reports.weights().notMade(all.tracking, symptom);
    return all.share(new ReportWeights(notMade, all.reports.weights().ofSound()));
  }

  private double share(ReportWeights part) {
    CausesBefore all = before(groups.size());
    double wrong = SubsetSpace.dot(all.wrong(), part.ofMade());
    return (wrong + all.sound() * reports.soundFactor() * part.ofSound()) / total;
  }

  /**
   * The shares of the nodes of a state with nodes, once the reports are known.
   *
   * @return for each node its share, 1 in all
   */
  public double[] nodeShares(int group, int state) {
    return groups.get(group).nodeShares(state, others(group));
  }

  /**
   * The same for the nodes of one fault of a state that is a pair of two.
   *
   * @param member 0 for the first fault of the pair, 1 for the second
   */
  public double[] nodeShares(int group, int state, int member) {
    return groups.get(group).nodeShares(state, member, others(group));
  }

  /**
   * The same where the prior of every state is multiplied by a factor.
   *
   * @param factor for each group a factor, 0 or more, for each of its states, which nobody changes
   *     afterwards; null where it is 1
   * @return the posterior, or empty if no state is left that explains the reports
   */
  public Optional<SymptomPosterior> times(double[]... factor) {
    if (!isAnyLeft(factor)) {
      return Optional.empty();
    }
    SymptomPosterior times = multiplied(reports.all(), factor);
    return times.total > 0 ? Optional.of(times) : Optional.empty();
  }

  /** Whether factors leave a state of every group. */
  boolean isAnyLeft(double[]... factor) {
    for (int g = 0; g < factor.length; g++) {
      if (factor[g] != null && !groups.get(g).times(factor[g]).isAnyLeft()) {
        return false;
      }
    }
    return true;
  }

  /** The same with another end. */
  SymptomPosterior multiplied(CausesBehind end, double[]... factor) {
    List<GroupTables> all = new ArrayList<>();
    List<Integer> others = new ArrayList<>();
    for (int g = 0; g < factor.length; g++) {
      GroupTables group = groups.get(g);
      all.add(factor[g] == null ? group : group.times(factor[g]));
      if (factor[g] != null) {
        others.add(g);
      }
    }
    return new SymptomPosterior(
        machine, tracking, all, reports, before[0], end, Optional.of(new Multiplied(this, others)));
  }

  /** The weight of all states, prior times likelihood of readings and reports, in its own unit. */
  public double total() {
    return total;
  }

  /** The joint states, to be counted by factors. */
  public StateCounts counts() {
    return new StateCounts(this, reports.all());
  }

  /**
   * The same of what is there where groups make all symptoms and nothing else does, or where
   * nothing at all is wrong: what a repair of the groups puts right. A symptom that something else
   * makes beside a fault is cured by none.
   */
  public StateCounts countsMadeByGroups() {
    return new StateCounts(this, reports.madeByGroups());
  }

  GroupTables group(int group) {
    return groups.get(group);
  }

  int groups() {
    return groups.size();
  }

  /** A function of what is made that is 0 everywhere. */
  double[] zero() {
    return tracking.space().zero();
  }

  /** The probability of a joint state, one state number for each group. */
  public double joint(int... states) {
    return joint(explained(states), states);
  }

  /**
   * The same where it is known how the reports are explained.
   *
   * @param explained what {@link #explained} tells of the state, here or where only priors differ
   * @param states one state number for each group
   */
  public double joint(double explained, int... states) {
    double weight = 1;
    for (int g = 0; g < states.length; g++) {
      weight *= groups.get(g).weight(states[g]);
    }
    return weight * explained / total;
  }

  /**
   * How likely the reports are in a joint state, in a unit of its own. Whatever multiplies priors
   * ({@link #times}) leaves it as it is.
   *
   * @param states one state number for each group
   */
  public double explained(int... states) {
    double[] made = null;
    for (int g = 0; g < states.length; g++) {
      if (states[g] != GroupChances.HEALTHY) {
        StateTable table = groups.get(g).table(states[g]);
        if (made == null) {
          made = tracking.space().zero();
          table.addTo(made, 1);
        } else {
          made = table.sums().union(made);
        }
      }
    }
    return made == null
        ? reports.soundFactor() * reports.weights().ofSound()
        : SubsetSpace.dot(made, reports.weights().ofMade());
  }

  /**
   * The likeliest states, one state number for each group.
   *
   * @param count how many, 1 or more
   * @return states with their probability, the likeliest first; ties in the order of the states
   */
  public List<JointState> likeliest(int count) {
    if (likeliest == null) {
      List<Integer> first =
          multiplied.map(Multiplied::groups).filter(own -> own.size() <= FEW).orElse(List.of());
      MostMade bounds =
          first.isEmpty()
              ? MostMade.of(groups, tracking.space(), reports.weights().ofMade())
              : multiplied.get().usual.mostOfAny();
      likeliest =
          new LikeliestStates(
              groups, tracking.space(), reports.weights().ofMade(), total, first, bounds);
    }
    return likeliest.find(count, sound());
  }

  private MostMade mostOfAny() {
    if (mostOfAny == null) {
      mostOfAny = MostMade.withoutAny(groups, tracking.space(), reports.weights().ofMade());
    }
    return mostOfAny;
  }
}
