package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.exact.CountedStates;
import kelter.core.diagnosis.symptom.exact.CountedSum;
import kelter.core.diagnosis.symptom.exact.JointState;
import kelter.core.diagnosis.symptom.exact.PosteriorSum;
import kelter.core.diagnosis.symptom.exact.StateCounts;
import kelter.core.diagnosis.symptom.exact.SymptomPosterior;

/**
 * The states of the whole machine: one state of each group, weighed by their readings and by what
 * was reported of the machine.
 *
 * <p>Groups share no reading and fail independently, but for causes in one that bring an effect in
 * another. Each of these is a further term of the prior, {@code 1 + sum of r_b [cause b and effect
 * b are there]}; a term keeps the form of a product over the groups, so that the posterior is the
 * sum of one exact posterior for each term. One thread at a time may ask.
 */
final class JointPosterior {

  /** So many states are searched for first in each term. */
  private static final int FIRST_FOUND = 4;

  private final List<Group> groups;
  private final Asked asked;
  private final MachineChances machine;
  private final List<Term> terms;
  private final PosteriorSum sum;
  private final double[][][] shares;
  private final double[][] marginal;
  private final double[][] faults;

  /** For each group and fault how bad it is by itself, once asked for. */
  private final Diagnosis.Severity[][] severity;

  /** A term of the prior with its share of the whole and by how much its prior is multiplied. */
  private record Term(double share, BroughtAcross brought, SymptomPosterior posterior) {}

  private JointPosterior(
      List<Group> groups, Asked asked, MachineChances machine, List<Term> terms) {
    this.groups = groups;
    this.asked = asked;
    this.machine = machine;
    this.terms = terms;
    this.sum =
        new PosteriorSum(
            terms.stream().map(Term::posterior).toList(),
            terms.stream().mapToDouble(Term::share).toArray());
    this.shares = new double[groups.size()][][];
    this.marginal = new double[groups.size()][];
    this.faults = new double[groups.size()][];
    this.severity = new Diagnosis.Severity[groups.size()][];
  }

  /**
   * Puts the groups together.
   *
   * @param groups the groups
   * @param asked what was said of the machine
   * @param brought which causes bring effects in other groups
   * @param priorSound the prior probability that nothing at all is wrong
   */
  static JointPosterior of(
      List<Group> groups, Asked asked, List<BroughtAcross> brought, double priorSound) {
    List<GroupChances> chances = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      chances.add(
          new SymptomChances(groups.get(g), asked.symptoms())
              .chances(BroughtAcross.logFactors(brought, g, groups.get(g)), List.of()));
    }
    MachineChances machine = new MachineChances(chances, priorSound);
    return of(groups, asked, machine, SymptomPosterior.of(machine, asked.numbers()), brought);
  }

  private static JointPosterior of(
      List<Group> groups,
      Asked asked,
      MachineChances machine,
      SymptomPosterior usual,
      List<BroughtAcross> brought) {
    List<Term> weighed = new ArrayList<>();
    weighed.add(new Term(usual.total(), null, usual));
    for (BroughtAcross each : brought) {
      term(usual, each, groups).ifPresent(weighed::add);
    }
    return new JointPosterior(groups, asked, machine, shared(weighed));
  }

  /** The term of a relation; empty if no state that holds it explains the reports. */
  private static Optional<Term> term(
      SymptomPosterior usual, BroughtAcross brought, List<Group> groups) {
    return usual
        .times(brought.holding(groups))
        .map(holding -> new Term(brought.ratio() * holding.total(), brought, holding));
  }

  /**
   * The same with pairs of faults in its groups.
   *
   * @param paired the groups, each with its states and pairs between the last two
   * @param brought which causes bring effects in other groups
   */
  JointPosterior withPairs(List<Group> paired, List<BroughtAcross> brought) {
    List<GroupChances> chances = new ArrayList<>();
    for (int g = 0; g < paired.size(); g++) {
      chances.add(
          new SymptomChances(paired.get(g), asked.symptoms())
              .chances(
                  BroughtAcross.logFactors(brought, g, paired.get(g)),
                  machine.groups().get(g).states()));
    }
    MachineChances more = new MachineChances(chances, machine.priorSound());
    return of(paired, asked, more, terms.get(0).posterior.with(more), brought);
  }

  /** The terms with shares that sum to 1. */
  private static List<Term> shared(List<Term> weighed) {
    double sum = 0;
    for (Term term : weighed) {
      sum += term.share;
    }
    List<Term> shared = new ArrayList<>();
    for (Term term : weighed) {
      shared.add(new Term(term.share / sum, term.brought, term.posterior));
    }
    return List.copyOf(shared);
  }

  /** The same with one report taken back. */
  JointPosterior without(int symptom) {
    SymptomPosterior usual = terms.get(0).posterior.without(symptom);
    List<Term> rest = new ArrayList<>();
    rest.add(new Term(usual.total(), null, usual));
    for (Term term : terms.subList(1, terms.size())) {
      term(usual, term.brought, groups).ifPresent(rest::add);
    }
    return new JointPosterior(groups, asked, machine, shared(rest));
  }

  List<Group> groups() {
    return groups;
  }

  Asked asked() {
    return asked;
  }

  /** The probability that a group is in a state, whatever the others do. */
  double marginal(int group, int state) {
    if (marginal[group] == null) {
      double[] all = new double[groups.get(group).states()];
      for (int each = 0; each < all.length; each++) {
        all[each] = sum.marginal(group, each);
      }
      marginal[group] = all;
    }
    return marginal[group][state];
  }

  /** The probability that a fault of a group is there, whatever else is. */
  double fault(int group, int fault) {
    if (faults[group] == null) {
      double[] all = new double[groups.get(group).faults().size()];
      for (int each = 0; each < all.length; each++) {
        all[each] = overStates(group, each);
      }
      faults[group] = all;
    }
    return faults[group][fault];
  }

  private double overStates(int group, int fault) {
    double sum = 0;
    for (int state = 0; state < groups.get(group).states(); state++) {
      sum += groups.get(group).hasFault(state, fault) ? marginal(group, state) : 0;
    }
    return sum;
  }

  /** A bound of the probability of all states that were left out. */
  double leftOut() {
    double sum = 0;
    for (int g = 0; g < groups.size(); g++) {
      double logLeftOut = groups.get(g).logLeftOut();
      if (logLeftOut > Double.NEGATIVE_INFINITY) {
        for (Term term : terms) {
          sum += term.share * term.posterior.leftOut(g, logLeftOut);
        }
      }
    }
    return sum;
  }

  /**
   * How much the rest of the machine and the reports speak for the states of a group. The most that
   * they do is at most the sum of that over all terms; the least is at least that of the first.
   */
  Group.Outside outside(int group) {
    List<SymptomPosterior.Lift> lifts = new ArrayList<>();
    if (groups.get(group).faults().size() > 1) { // else there is no pair to ask for
      for (Term term : terms) {
        lifts.add(term.posterior.lift(group));
      }
    }
    double logTotal = terms.get(0).posterior.logTotal(group);
    return new Group.Outside() {
      @Override
      public double logTotal() {
        return logTotal;
      }

      @Override
      public double logMost(int one, int other) {
        double most = 0;
        for (int term = 0; term < lifts.size(); term++) {
          SymptomPosterior.Lift lift = lifts.get(term);
          most +=
              terms.get(term).share * Math.exp(lift.logMost(one + 1, other + 1) - lift.logTotal());
        }
        return Math.log(most) + logTotal;
      }

      @Override
      public double logLeast(int one, int other) {
        return lifts.get(0).logLeast(one + 1, other + 1) + Math.log(terms.get(0).share);
      }
    };
  }

  /** The probability that nothing at all is wrong. */
  double sound() {
    double sum = 0;
    for (Term term : terms) {
      sum += term.share * term.posterior.sound();
    }
    return sum;
  }

  /** The probability that at least one group does what no known fault explains. */
  double unexplained() {
    double[][] explained = new double[groups.size()][];
    for (int g = 0; g < explained.length; g++) {
      explained[g] = new double[groups.get(g).states()];
      for (int state = 0; state < groups.get(g).unexplainedState(); state++) {
        explained[g][state] = 1;
      }
    }
    double all = 0;
    for (Term term : terms) {
      all += term.share * term.posterior.counts().of(explained).mass();
    }
    return Math.max(0, 1 - all);
  }

  /**
   * What sets of states come to in which groups make all symptoms and nothing else does: what a
   * repair of the groups puts right.
   */
  Counts countsMadeByGroups() {
    List<StateCounts> counts = new ArrayList<>();
    double[] share = new double[terms.size()];
    for (int term = 0; term < share.length; term++) {
      counts.add(terms.get(term).posterior.countsMadeByGroups());
      share[term] = terms.get(term).share;
    }
    return new Counts(counts, share);
  }

  /** The expectation of a product of one factor for each group; null where it is 1. */
  double expectation(double[][] factor) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.share * term.posterior.counts().of(factor).mass();
    }
    return sum;
  }

  /**
   * Joint states, to be counted by factors.
   *
   * @param parts those of each term
   * @param share the share of each term
   */
  record Counts(List<StateCounts> parts, double[] share) {

    /**
     * Counts.
     *
     * @param factor for each group a factor, 0 or more, for each of its states
     */
    CountedSum of(double[][] factor) {
      List<CountedStates> counted = new ArrayList<>();
      for (StateCounts part : parts) {
        counted.add(part.of(factor));
      }
      return CountedSum.of(counted, share);
    }
  }

  /** The probability of a joint state, one state number for each group. */
  double joint(int... states) {
    double explained = terms.get(0).posterior.explained(states);
    double sum = 0;
    for (Term term : terms) {
      sum += term.share * term.posterior.joint(explained, states);
    }
    return sum;
  }

  /**
   * The likeliest states. A state that was found in no term is at most as likely as the last that
   * was found in each, and as the whole share of each that was not searched. As long as that is
   * more than the last state asked for, the term that leaves the most open is searched further.
   *
   * @param count how many
   * @return states with their probability, the likeliest first; ties in the order of the states
   */
  List<JointState> likeliest(int count) {
    if (terms.size() == 1) {
      return terms.get(0).posterior.likeliest(count);
    }
    TreeMap<int[], JointState> found = new TreeMap<>(Arrays::compare);
    int[] taken = new int[terms.size()];
    double[] open = new double[taken.length];
    for (int term = 0; term < open.length; term++) {
      open[term] = terms.get(term).share;
    }
    while (true) {
      List<JointState> states = found.values().stream().sorted().limit(count).toList();
      double notFound = Arrays.stream(open).sum();
      if (notFound == 0
          || states.size() == count && states.get(count - 1).probability() > notFound) {
        return states;
      }
      int next = greatest(open);
      taken[next] = Math.max(FIRST_FOUND, 2 * taken[next]);
      List<JointState> own = terms.get(next).posterior.likeliest(taken[next]);
      for (JointState state : own) {
        found.computeIfAbsent(state.states(), all -> new JointState(all, joint(all)));
      }
      boolean isAll = own.size() < taken[next];
      open[next] = isAll ? 0 : terms.get(next).share * own.get(own.size() - 1).probability();
    }
  }

  private static int greatest(double... values) {
    int greatest = 0;
    for (int i = 1; i < values.length; i++) {
      greatest = values[i] > values[greatest] ? i : greatest;
    }
    return greatest;
  }

  /** The shares of the nodes of a state once the reports are known, 1 in all. */
  double[] shares(int group, int state) {
    if (shares[group] == null) {
      shares[group] = new double[groups.get(group).states()][];
    }
    if (shares[group][state] == null) {
      shares[group][state] = sharesWithReports(group, state);
    }
    return shares[group][state];
  }

  private double[] sharesWithReports(int group, int state) {
    double[] usual = groups.get(group).shares(state);
    if (asked.symptoms().isEmpty() || isPairOfSingles(group, state)) {
      return usual;
    }
    return marginal(group, state) > 0 ? sum.nodeShares(group, state) : usual;
  }

  private boolean isPairOfSingles(int group, int state) {
    return groups.get(group).faultsOf(state).length == 2
        && groups.get(group).readings().count() == 0;
  }

  /** The severities of all faults in a state, at a few nodes of equal weight. */
  List<double[]> nodes(int group, int state, int count) {
    return groups.get(group).nodes(state, count, shares(group, state));
  }

  /** How bad one of the faults of a state is. */
  Diagnosis.Severity severity(int group, int state, int fault) {
    if (asked.symptoms().isEmpty()) {
      return groups.get(group).severity(state, fault);
    }
    boolean single = groups.get(group).faultsOf(state).length == 1;
    if (!single && isPairOfSingles(group, state)) {
      return severity(group, fault + 1, fault);
    }
    if (!single) {
      return severityOf(group, state, fault);
    }
    if (severity[group] == null) {
      severity[group] = new Diagnosis.Severity[groups.get(group).faults().size()];
    }
    if (severity[group][fault] == null) {
      severity[group][fault] = severityOf(group, state, fault);
    }
    return severity[group][fault];
  }

  private Diagnosis.Severity severityOf(int group, int state, int fault) {
    double[] ofNode = shares(group, state);
    double mean = 0;
    double square = 0;
    for (int node = 0; node < ofNode.length; node++) {
      double severity = groups.get(group).severityAt(state, node, fault);
      mean += ofNode[node] * severity;
      square += ofNode[node] * severity * severity;
    }
    return new Diagnosis.Severity(mean, Math.sqrt(Math.max(0, square - mean * mean)));
  }
}
