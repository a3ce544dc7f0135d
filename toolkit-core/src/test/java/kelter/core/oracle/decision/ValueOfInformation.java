package kelter.core.oracle.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kelter.core.oracle.Belief;
import kelter.core.oracle.DiscreteModel;
import kelter.core.source.Source;

/**
 * What another reading is worth to whoever has to decide.
 *
 * <p>With {@code C*(e)} the expected cost of what is best to do, a reading o saves {@code EVSI(o) =
 * C*(e) - sum_k P(o = k | e) C*(e, o = k)}, never less than nothing, and leads to an expected cost
 * of {@code ECO(o) = C_o + C*(e) - EVSI(o)}. It is worth its price if that is below {@code C*(e)}.
 * Two readings may be worth theirs together where neither is alone; so for the best few first
 * readings a second one is thought of, for each outcome the one that then is best.
 */
public final class ValueOfInformation {

  /** Where the measures come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Heckerman, Breese and Rommelse, Decision-theoretic troubleshooting, Communications of"
              + " the ACM 38 (1995) 3, 49; EVSI: Raiffa, Decision Analysis (1968)");

  /** How many first readings a second one is thought of for, where nothing else is said. */
  public static final int USUAL_FEW = 4;

  /** What is saved has to exceed this share of the cost, since sums are rounded. */
  private static final double ROUNDING = 1e-12;

  private final DiscreteModel model;
  private final Decision decision;
  private final double[] price;

  /**
   * Takes the problem, what can be done and what readings cost.
   *
   * @param model the problem
   * @param decision what can be done
   * @param price for each observable the cost of reading it, not negative, in the unit of the costs
   *     of the decision; infinite if it cannot be read
   * @throws IllegalArgumentException if there are not as many prices as observables, or one is
   *     negative
   */
  public ValueOfInformation(DiscreteModel model, Decision decision, double[] price) {
    if (price.length != model.observables()) {
      throw new IllegalArgumentException(
          price.length + " prices for " + model.observables() + " observables");
    }
    for (double each : price) {
      if (!(each >= 0)) {
        throw new IllegalArgumentException("a price of " + each + "; 0 or more is allowed");
      }
    }
    this.model = model;
    this.decision = decision;
    this.price = price.clone();
  }

  /**
   * What each reading would save before its price.
   *
   * @param evidence what was observed
   * @return for each observable EVSI, 0 or more; 0 for one that was observed
   * @throws IllegalArgumentException if the evidence does not fit the observables or cannot be
   */
  public double[] savings(int[] evidence) {
    Belief belief = model.given(evidence);
    double now = decision.leastCost(belief.posterior());
    double[] savings = new double[price.length];
    for (int f = 0; f < savings.length; f++) {
      savings[f] = belief.isObserved(f) ? 0 : Math.max(0, now - costAfter(belief, f));
    }
    return savings;
  }

  /**
   * What it would save to know the state, which no reading exceeds.
   *
   * @param evidence what was observed
   * @return EVPI, 0 or more
   * @throws IllegalArgumentException if the evidence does not fit the observables or cannot be
   */
  public double perfect(int[] evidence) {
    double[] posterior = model.posterior(evidence);
    return Math.max(0, decision.leastCost(posterior) - decision.costWhenKnown(posterior));
  }

  /**
   * Which reading to take next, if any.
   *
   * @param evidence what was observed
   * @param few for how many first readings a second one is thought of; as many as there are
   *     observables finds every pair that is worth it
   * @return the advice
   * @throws IllegalArgumentException if the evidence does not fit the observables or cannot be
   */
  public Advice advise(int[] evidence, int few) {
    Belief belief = model.given(evidence);
    double now = decision.leastCost(belief.posterior());
    List<Advice.Reading> readings = new ArrayList<>();
    double[] bits = belief.information();
    for (int f = 0; f < price.length; f++) {
      if (!belief.isObserved(f)) {
        double saving = Math.max(0, now - costAfter(belief, f));
        double cost = price[f] + now - saving;
        readings.add(new Advice.Reading(f, bits[f], saving, cost, cost));
      }
    }
    readings.sort(
        Comparator.comparingDouble(Advice.Reading::expectedCost)
            .thenComparingDouble(reading -> -reading.bits()));
    for (int i = 0; i < Math.min(few, readings.size()); i++) {
      readings.set(i, withSecond(belief, readings.get(i)));
    }
    readings.sort(
        Comparator.comparingDouble(Advice.Reading::expectedCostWithSecond)
            .thenComparingDouble(Advice.Reading::expectedCost)
            .thenComparingInt(Advice.Reading::observable));
    boolean worth =
        !readings.isEmpty()
            && readings.get(0).expectedCostWithSecond() < now - ROUNDING * Math.abs(now);
    return new Advice(now, readings, !worth);
  }

  private Advice.Reading withSecond(Belief belief, Advice.Reading first) {
    double cost = price[first.observable()];
    double[] outcomes = belief.outcomes(first.observable());
    for (int o = 0; o < outcomes.length; o++) {
      if (outcomes[o] > 0) {
        cost += outcomes[o] * costWithOneMore(belief.and(first.observable(), o));
      }
    }
    return new Advice.Reading(
        first.observable(),
        first.bits(),
        first.saving(),
        first.expectedCost(),
        Math.min(cost, first.expectedCost()));
  }

  private double costWithOneMore(Belief belief) {
    double least = decision.leastCost(belief.posterior());
    for (int f = 0; f < price.length; f++) {
      if (!belief.isObserved(f)) {
        least = Math.min(least, price[f] + costAfter(belief, f));
      }
    }
    return least;
  }

  /** sum_k P(o = k | e) C*(e, o = k), since costs are of the same multiple as the weights. */
  private double costAfter(Belief belief, int observable) {
    double sum = 0;
    for (double[] weight : belief.joint(observable)) {
      sum += decision.leastCost(weight);
    }
    return sum;
  }
}
