package kelter.core.oracle.decision;

import java.util.Arrays;
import kelter.core.diagnosis.engine.RepairOrder;

/**
 * Remedies that may be tried one after the other until the machine works, in the best order ({@link
 * RepairOrder}), and a service that always ends it.
 */
public final class Repairs implements Decision {

  private final int states;
  private final int count;
  private final double service;

  /** What a remedy costs after others, at done * count + remedy. */
  private final double[] cost;

  /** The chance in a state that the machine does not work after remedies, at done * states + s. */
  private final double[] left;

  /**
   * Puts the remedies together.
   *
   * @param cost what each costs, not negative, finite
   * @param cure for each remedy the chance, 0 to 1, that it cures each state; whether it does so is
   *     independent of the others
   * @param service the cost of the service that always ends it; infinite if there is none
   * @throws IllegalArgumentException if there are none or more than {@link RepairOrder#MOST}
   *     remedies, they are not of the same number of states, a cost is negative or infinite, or a
   *     chance not from 0 to 1
   */
  public Repairs(RepairOrder.Cost cost, double[][] cure, double service) {
    if (cure.length == 0 || cure.length > RepairOrder.MOST) {
      throw new IllegalArgumentException(
          cure.length + " remedies; 1 to " + RepairOrder.MOST + " are allowed");
    }
    this.count = cure.length;
    this.states = cure[0].length;
    this.service = notNegative(service);
    this.cost = new double[(1 << count) * count];
    this.left = new double[(1 << count) * states];
    for (int done = 0; done < 1 << count; done++) {
      for (int remedy = 0; remedy < count; remedy++) {
        this.cost[done * count + remedy] = finite(notNegative(cost.of(remedy, done)));
      }
    }
    fillLeft(cure);
  }

  /**
   * Remedies that cost the same whatever was done before.
   *
   * @param cost what each costs, not negative
   * @param cure for each remedy the chance, 0 to 1, that it cures each state
   * @param service the cost of the service that always ends it; infinite if there is none
   * @return the remedies
   * @throws IllegalArgumentException as the constructor does, or if there are not as many costs
   */
  public static Repairs of(double[] cost, double[][] cure, double service) {
    if (cost.length != cure.length) {
      throw new IllegalArgumentException(cost.length + " costs for " + cure.length + " remedies");
    }
    return new Repairs((remedy, done) -> cost[remedy], cure, service);
  }

  private void fillLeft(double[][] cure) {
    Arrays.fill(left, 0, states, 1);
    for (int remedy = 0; remedy < count; remedy++) {
      Weights.checked(cure[remedy], states);
    }
    for (int done = 1; done < 1 << count; done++) {
      int last = Integer.numberOfTrailingZeros(done);
      int before = (done & (done - 1)) * states;
      for (int s = 0; s < states; s++) {
        left[done * states + s] = left[before + s] * (1 - chance(cure[last][s]));
      }
    }
  }

  private static double notNegative(double cost) {
    if (!(cost >= 0)) {
      throw new IllegalArgumentException("a cost of " + cost + "; 0 or more is allowed");
    }
    return cost;
  }

  private static double finite(double cost) {
    if (Double.isInfinite(cost)) {
      throw new IllegalArgumentException("a remedy of infinite cost; leave it out instead");
    }
    return cost;
  }

  private static double chance(double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException("a chance of " + chance + "; 0 to 1 is allowed");
    }
    return chance;
  }

  @Override
  public double leastCost(double[] weight) {
    Weights.checked(weight, states);
    return RepairOrder.best(count, this::cost, notWorking(weight), service).expectedCost();
  }

  /**
   * The best order.
   *
   * @param probability of each state, summing to 1
   * @return the order, with its expected cost
   * @throws IllegalArgumentException if there are not as many probabilities as states
   */
  public RepairOrder order(double[] probability) {
    Weights.checked(probability, states);
    return RepairOrder.best(count, this::cost, notWorking(probability), service);
  }

  private double cost(int remedy, int done) {
    return cost[done * count + remedy];
  }

  private double[] notWorking(double[] weight) {
    double[] notWorking = new double[1 << count];
    for (int done = 0; done < notWorking.length; done++) {
      notWorking[done] = Weights.dot(weight, left, done * states);
    }
    return notWorking;
  }
}
