package kelter.costing.choice;

import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Prices;

/**
 * What an option may turn out to be in each state of the machine: after which step it works, and
 * what has been paid by then.
 *
 * @param cumulative for each state, the chance that the machine works after the first step, after
 *     the second, and so on; for an option without steps, before any work
 * @param paid what is paid now if it works after a step, and at the end if it never does
 * @param again what has to be paid when the same component fails later, by the step that cured
 * @param wear how worn the component is after the step that cured, as a place in {@link #WEAR}; -1
 *     if nothing is watched
 */
public record Outcomes(double[][] cumulative, double[] paid, double[] again, int[] wear) {

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
    int places = Math.max(1, steps.size());
    double[][] cumulative = new double[states.all().size()][places];
    double[] paid = new double[places];
    double[] again = new double[places];
    int[] wear = new int[places];
    paid[0] = basis.callOut();
    wear[0] = -1;
    double sum = basis.callOut();
    for (int i = 0; i < steps.size(); i++) {
      Remedy remedy = steps.get(i).remedy();
      double price = Work.price(remedy, prices, basis.labourPerHour());
      sum += price;
      paid[i] = sum;
      again[i] = basis.callOut() + price;
      wear[i] = remedy.restores().ordinal();
    }
    for (int s = 0; s < cumulative.length; s++) {
      for (int i = 0; i < places; i++) {
        List<Work.Step> done = steps.subList(0, Math.min(i + 1, steps.size()));
        cumulative[s][i] =
            candidate.replaces() ? 0 : States.chanceOfCure(states.all().get(s), done);
      }
    }
    return new Outcomes(cumulative, paid, again, wear);
  }

  /**
   * The same with work and parts dearer, the call-out as it is.
   *
   * @param factor how many times as dear
   * @param callOut what coming costs
   * @return the changed outcomes
   */
  public Outcomes dearer(double factor, double callOut) {
    return new Outcomes(
        cumulative, scaled(paid, factor, callOut), scaled(again, factor, callOut), wear);
  }

  private static double[] scaled(double[] amounts, double factor, double callOut) {
    return Arrays.stream(amounts).map(a -> callOut + (a - callOut) * factor).toArray();
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
    return new Outcomes(changed, paid, again, wear);
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
