package kelter.costing.choice;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Prices;

/**
 * What an option may turn out to be in each state of the machine: after which step it works, and
 * what has been paid by then.
 *
 * @param cumulative for each state, the chance that the machine works after the first step, after
 *     the second, and so on; for an option without steps, before any work
 * @param bill what is paid now if it works after a step, and at the end if it never does
 * @param paid the same with what the days cost in which parts are awaited
 * @param later for each state and step, what has to be paid in all when mended components fail
 *     later, by which life they have and how worn they are then: first life 0 in the order of
 *     {@link #WEAR}, then life 1, and so on; a component that was not at fault is not counted
 * @param work for each state and step, how much of that is for work and parts
 * @param uncredited what is paid beyond that where it never works: a call-out is taken off for a
 *     cure alone. It is in the cost and not in the bill, which is that of a mended machine
 */
public record Outcomes(
    double[][] cumulative,
    double[] bill,
    double[] paid,
    double[][][] later,
    double[][][] work,
    double uncredited) {

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
    List<PlannedWork.Step> steps = candidate.steps();
    int before = candidate.kind() == Candidate.Kind.WAIT ? 1 : 0;
    int places = Math.max(1, before + steps.size());
    int count = states.all().size();
    Costs costs = basis.costs();
    double[] price = new double[steps.size()];
    double[] wait = new double[steps.size()];
    for (int i = 0; i < price.length; i++) {
      Remedy remedy = steps.get(i).remedy();
      price[i] = PlannedWork.price(remedy, prices, costs.labourPerHour());
      wait[i] = remedy.needsPart() ? costs.waitForPart() : 0;
    }
    double[] bill = bill(steps, price, candidate.kind(), costs);
    int lives = lives(basis);
    Outcomes outcomes =
        new Outcomes(
            new double[count][places],
            bill,
            paid(bill, wait, before),
            new double[count][places][lives],
            new double[count][places][lives],
            steps.isEmpty() ? 0 : costs.callOut() - costs.callOutWithWork());
    boolean replaces = candidate.kind() == Candidate.Kind.REPLACE;
    for (int s = 0; s < count; s++) {
      Cures cures = new Cures(states.all().get(s), steps);
      for (int i = 0; i < places; i++) {
        int done = Math.min(i + 1 - before, steps.size());
        if (done > 0) {
          cures.take(done - 1);
        }
        outcomes.cumulative[s][i] = replaces ? 0 : cures.chance();
        for (int step = 0; step < done; step++) {
          if (cures.isLast(step)) {
            Remedy remedy = steps.get(step).remedy();
            int life = basis.group(remedy.component()) * WEAR.size() + remedy.restores().ordinal();
            double work = price[step] + costs.topUp(remedy.minutes());
            outcomes.later[s][i][life] += costs.callOutWithWork() + work + wait[step];
            outcomes.work[s][i][life] += work;
          }
        }
      }
    }
    return outcomes;
  }

  private static int lives(Basis basis) {
    return basis.groups() * WEAR.size();
  }

  /** What has been paid after each step; a visit at which nothing is done is paid by itself. */
  private static double[] bill(
      List<PlannedWork.Step> steps, double[] price, Candidate.Kind kind, Costs costs) {
    boolean waits = kind == Candidate.Kind.WAIT;
    int before = waits ? 1 : 0;
    double[] bill = new double[Math.max(1, before + price.length)];
    bill[0] = costs.callOut();
    double sum = (waits ? costs.callOut() : 0) + costs.callOutWithWork();
    double minutes = 0;
    for (int i = 0; i < price.length; i++) {
      sum += price[i];
      minutes += steps.get(i).remedy().minutes();
      bill[i + before] = sum + costs.topUp(minutes);
    }
    return bill;
  }

  private static double[] paid(double[] bill, double[] wait, int before) {
    double[] paid = bill.clone();
    double sum = 0;
    for (int i = 0; i < wait.length; i++) {
      sum += wait[i];
      paid[i + before] += sum;
    }
    return paid;
  }

  /**
   * The same with work and parts dearer, the call-out and the days as they are.
   *
   * @param factor how many times as dear
   * @param callOut how much of each bill is for coming
   * @return the changed outcomes
   */
  public Outcomes dearer(double factor, double callOut) {
    double[] dearer = bill.clone();
    double[] dearerPaid = paid.clone();
    for (int i = 0; i < bill.length; i++) {
      double more = (bill[i] - callOut) * (factor - 1);
      dearer[i] += more;
      dearerPaid[i] += more;
    }
    double[][][] dearerLater = new double[later.length][][];
    for (int s = 0; s < later.length; s++) {
      dearerLater[s] = new double[later[s].length][];
      for (int i = 0; i < later[s].length; i++) {
        dearerLater[s][i] = later[s][i].clone();
        for (int w = 0; w < later[s][i].length; w++) {
          dearerLater[s][i][w] += work[s][i][w] * (factor - 1);
        }
      }
    }
    return new Outcomes(cumulative, dearer, dearerPaid, dearerLater, work, uncredited);
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
      changed[s] = new double[cumulative[s].length];
      for (int i = 0; i < changed[s].length; i++) {
        changed[s][i] = 1 - Math.min(1, (1 - cumulative[s][i]) * factor);
      }
    }
    return new Outcomes(changed, bill, paid, later, work, uncredited);
  }

  /**
   * Which lives of components some options pay for later.
   *
   * @param options the options
   * @param basis the figures, with the lives that there are
   * @return for each life whether any of the options pays for it
   */
  public static boolean[] laterLives(List<Outcomes> options, Basis basis) {
    boolean[] paid = new boolean[lives(basis)];
    for (Outcomes option : options) {
      for (double[][] state : option.later) {
        for (double[] place : state) {
          for (int w = 0; w < paid.length; w++) {
            paid[w] |= place[w] != 0;
          }
        }
      }
    }
    return paid;
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
   * The bill for the work on average, a new machine not counted.
   *
   * @param states the states of the machine
   * @return the amount, in units of the currency
   */
  public double meanBill(States states) {
    return mean(bill, 0, states);
  }

  /**
   * The same with what the days cost in which parts are awaited, and with the call-out where it
   * never works.
   *
   * @param states the states of the machine
   * @return the amount, in units of the currency
   */
  public double meanPaid(States states) {
    return mean(paid, uncredited, states);
  }

  private double mean(double[] amounts, double beyond, States states) {
    double mean = 0;
    for (int s = 0; s < cumulative.length; s++) {
      double before = 0;
      double state = 0;
      for (int i = 0; i < amounts.length; i++) {
        state += (cumulative[s][i] - before) * amounts[i];
        before = cumulative[s][i];
      }
      double never = (1 - before) * (amounts[amounts.length - 1] + beyond);
      mean += states.all().get(s).probability() * (state + never);
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
