package kelter.costing.choice;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.job.Prices;

/**
 * What an option may turn out to be in each state of the machine: after which step it works, and
 * what has been paid by then.
 *
 * @param cumulative for each state, the chance that the machine works after the first step, after
 *     the second, and so on; for an option without steps, before any work
 * @param paid what is paid now if it works after a step, and at the end if it never does
 * @param later for each state and step, what has to be paid in all when mended components fail
 *     later, by how worn they are then, in the order of {@link #WEAR}; a component that was not at
 *     fault is not counted
 * @param visits for each state and step, how many call-outs are in that amount
 */
public record Outcomes(
    double[][] cumulative, double[] paid, double[][][] later, double[][][] visits) {

  /**
   * How old a mended component is afterwards, as a ratio of the age of the machine, by what the
   * remedy restores: function, part, component (virtual age after Kijima, J. Appl. Prob. 26
   * (1989)). The half for a renewed part is an assumption.
   */
  public static final List<Double> WEAR = List.of(1.0, 0.5, 0.0);

  /**
   * What an option may turn out to be.
   *
   * @param candidate the option
   * @param states the states of the machine
   * @param prices the prices of the job
   * @param basis the figures that the weighing rests on
   * @return the outcomes
   */
  public static Outcomes of(Candidate candidate, States states, Prices prices, Basis basis) {
    List<Work.Step> steps = candidate.steps();
    int before = candidate.kind() == Candidate.Kind.WAIT ? 1 : 0;
    int places = Math.max(1, before + steps.size());
    int count = states.all().size();
    double[] price =
        steps.stream()
            .mapToDouble(step -> Work.price(step.remedy(), prices, basis.labourPerHour()))
            .toArray();
    Outcomes outcomes =
        new Outcomes(
            new double[count][places],
            paid(price, before, basis.callOut()),
            new double[count][places][WEAR.size()],
            new double[count][places][WEAR.size()]);
    for (int s = 0; s < count; s++) {
      States.State state = states.all().get(s);
      for (int i = 0; i < places; i++) {
        List<Work.Step> done = steps.subList(0, Math.min(i + 1 - before, steps.size()));
        boolean replaces = candidate.kind() == Candidate.Kind.REPLACE;
        outcomes.cumulative[s][i] = replaces ? 0 : States.chanceOfCure(state, done);
        for (int last : lastOnEachFaultyComponent(state, done)) {
          int wear = steps.get(last).remedy().restores().ordinal();
          outcomes.later[s][i][wear] += basis.callOut() + price[last];
          outcomes.visits[s][i][wear]++;
        }
      }
    }
    return outcomes;
  }

  /** What has been paid after each step; a visit at which nothing is done is paid by itself. */
  private static double[] paid(double[] price, int before, double callOut) {
    double[] paid = new double[Math.max(1, before + price.length)];
    paid[0] = callOut;
    double sum = callOut * (1 + before);
    for (int i = 0; i < price.length; i++) {
      sum += price[i];
      paid[i + before] = sum;
    }
    return paid;
  }

  /** The place of the last step on each component that is at fault, by component. */
  private static Collection<Integer> lastOnEachFaultyComponent(
      States.State state, List<Work.Step> done) {
    Map<String, Integer> last = new TreeMap<>();
    for (int i = 0; i < done.size(); i++) {
      if (!Collections.disjoint(done.get(i).cures(), state.faults())) {
        last.put(done.get(i).remedy().component(), i);
      }
    }
    return last.values();
  }

  /**
   * The same with work and parts dearer, the call-out as it is.
   *
   * @param factor how many times as dear
   * @param callOut what coming costs
   * @return the changed outcomes
   */
  public Outcomes dearer(double factor, double callOut) {
    double[] dearer = Arrays.stream(paid).map(a -> callOut + (a - callOut) * factor).toArray();
    double[][][] dearerLater = new double[later.length][][];
    for (int s = 0; s < later.length; s++) {
      dearerLater[s] = new double[later[s].length][WEAR.size()];
      for (int i = 0; i < later[s].length; i++) {
        for (int w = 0; w < WEAR.size(); w++) {
          double coming = visits[s][i][w] * callOut;
          dearerLater[s][i][w] = coming + (later[s][i][w] - coming) * factor;
        }
      }
    }
    return new Outcomes(cumulative, dearer, dearerLater, visits);
  }

  /**
   * The same with another chance that it does not work after a step.
   *
   * @param factor how many times the chance, which stays at most 1
   * @return the changed outcomes
   */
  public Outcomes failing(double factor) {
    double[][] changed = new double[cumulative.length][];
    for (int s = 0; s < changed.length; s++) {
      changed[s] =
          Arrays.stream(cumulative[s]).map(c -> 1 - Math.min(1, (1 - c) * factor)).toArray();
    }
    return new Outcomes(changed, paid, later, visits);
  }

  /**
   * After which step the machine works.
   *
   * @param state the place of the state of the machine
   * @param uniform a draw from 0 to below 1
   * @return the place of the step, or the number of steps if it never works
   */
  public int place(int state, double uniform) {
    double[] chances = cumulative[state];
    int place = 0;
    while (place < chances.length && uniform >= chances[place]) {
      place++;
    }
    return place;
  }

  /**
   * What is paid for the work on average, a new machine not counted.
   *
   * @param states the states of the machine
   * @return the amount, in units of the currency
   */
  public double meanPaid(States states) {
    double mean = 0;
    for (int s = 0; s < cumulative.length; s++) {
      double before = 0;
      double state = 0;
      for (int i = 0; i < paid.length; i++) {
        state += (cumulative[s][i] - before) * paid[i];
        before = cumulative[s][i];
      }
      mean += states.all().get(s).probability() * (state + (1 - before) * paid[paid.length - 1]);
    }
    return mean;
  }

  /**
   * The chance that the machine works afterwards without being replaced.
   *
   * @param states the states of the machine
   * @return a probability from 0 to 1
   */
  public double chanceOfCure(States states) {
    double chance = 0;
    for (int s = 0; s < cumulative.length; s++) {
      chance += states.all().get(s).probability() * cumulative[s][cumulative[s].length - 1];
    }
    return chance;
  }
}
