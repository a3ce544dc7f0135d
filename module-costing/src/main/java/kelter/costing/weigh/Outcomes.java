package kelter.costing.weigh;

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
 * @param wear how worn the component is after the step that cured, as a place in {@link
 *     Scenario#WEAR}; -1 if nothing is watched
 */
record Outcomes(double[][] cumulative, double[] paid, double[] again, int[] wear) {

  static Outcomes of(Candidate candidate, States states, Prices prices, Basis basis) {
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

  /** After which step the machine works, or the number of steps if it never does. */
  int place(int state, double uniform) {
    double[] chances = cumulative[state];
    int place = 0;
    while (place < chances.length && uniform >= chances[place]) {
      place++;
    }
    return place;
  }

  /** What is paid for the work on average, a new machine not counted. */
  double meanPaid(States states) {
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

  /** The chance that the machine works afterwards without being replaced. */
  double chanceOfCure(States states) {
    double chance = 0;
    for (int s = 0; s < cumulative.length; s++) {
      chance += states.all().get(s).probability() * cumulative[s][cumulative[s].length - 1];
    }
    return chance;
  }
}
