package kelter.costing.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.KindOfLife;

/**
 * The figures that a weighing rests on. Money is in units of the job's currency.
 *
 * @param age the age of the machine, in years
 * @param life how long such machines last
 * @param componentLife how long a component lasts, as a ratio of the life of the machine
 * @param labourPerHour the price of an hour of work
 * @param callOut what coming costs, whatever is done
 * @param newMachine the price of a new machine, installed
 * @param running the running cost of the old machine a year
 * @param runningNew the running cost of the new machine a year
 * @param rate the discount rate a year, as a ratio
 * @param ageUncertainty the standard uncertainty of the age, in years; 0 if none is stated
 */
public record Basis(
    double age,
    ApplianceLife life,
    double componentLife,
    double labourPerHour,
    double callOut,
    double newMachine,
    double running,
    double runningNew,
    double rate,
    double ageUncertainty) {

  /** The least real discount rate of 10 CFR 436.14(a)(2), a year, as a ratio. */
  public static final double USUAL_RATE = 0.03;

  /** No study of components is known: they last as long as the machine. */
  public static final double AS_THE_MACHINE = 1;

  private static final double YEAR = QuantityKind.AGE.unit().factor();

  /**
   * Reads the figures from a job.
   *
   * @param job the job
   * @param work what work the options need
   * @param kind which studies speak for the machine
   * @param assumptions where to put what the job does not state
   * @return the figures
   * @throws InputException if the job lacks what cannot be assumed; every such thing is told
   */
  public static Basis of(Job job, Work work, KindOfLife kind, List<String> assumptions) {
    List<Problem> problems = new ArrayList<>();
    if (job.appliance().age().isEmpty()) {
      problems.add(
          new Problem(
              "/appliance/age",
              "is missing",
              "give the age of the machine, for instance \"8 a\"; what is left of its life"
                  + " depends on it"));
    }
    if (job.prices().isEmpty()) {
      problems.add(
          new Problem(
              "/prices",
              "is missing",
              "give the currency, the price of an hour of work and the price of a new machine"));
      throw new InputException(problems);
    }
    Prices prices = job.prices().get();
    requirePrice(prices, prices.labourPerHour(), "labour-per-hour", "an hour of work", problems);
    requirePrice(
        prices,
        prices.replacement(),
        "replacement",
        "a new machine (if none can be had, of the nearest that can)",
        problems);
    problems.addAll(work.missing(prices));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return stated(job, prices, kind, assumptions);
  }

  private static void requirePrice(
      Prices prices, Optional<Money> price, String name, String what, List<Problem> problems) {
    if (price.isEmpty()) {
      problems.add(
          new Problem(
              "/prices/" + name,
              "is missing",
              "give the price of %s in %s".formatted(what, prices.currency())));
    }
  }

  private static Basis stated(Job job, Prices prices, KindOfLife kind, List<String> assumptions) {
    if (!kind.assumption().isEmpty()) {
      assumptions.add(kind.assumption());
    }
    double callOut =
        amount(
            prices.callOut(),
            "The job states no price for the call-out; 0 was taken.",
            assumptions);
    double installation =
        amount(
            prices.installation(),
            "The job states no price for installing a new machine and taking the old one away; 0"
                + " was taken.",
            assumptions);
    double[] running = running(prices, assumptions);
    return new Basis(
        job.appliance().age().map(Quantity::si).orElseThrow() / YEAR,
        kind.life(),
        AS_THE_MACHINE,
        prices.labourPerHour().orElseThrow().toDouble(),
        callOut,
        prices.replacement().orElseThrow().toDouble() + installation,
        running[0],
        running[1],
        rate(prices, assumptions),
        job.appliance().age().map(Quantity::standardUncertaintySi).orElseThrow() / YEAR);
  }

  private static double amount(Optional<Money> price, String assumption, List<String> assumptions) {
    if (price.isEmpty()) {
      assumptions.add(assumption);
    }
    return price.map(Money::toDouble).orElse(0.0);
  }

  private static double[] running(Prices prices, List<String> assumptions) {
    Optional<Double> old = prices.runningPerYear().map(Money::toDouble);
    Optional<Double> young = prices.runningPerYearNew().map(Money::toDouble);
    if (old.isEmpty() && young.isEmpty()) {
      assumptions.add(
          "The job states no running costs; energy, water and detergent were taken to cost the same"
              + " for the old and the new machine and were left out.");
    } else if (young.isEmpty()) {
      assumptions.add(
          "The job states no running cost of the new machine; that of the old one was taken.");
    } else if (old.isEmpty()) {
      assumptions.add(
          "The job states no running cost of the old machine; that of the new one was taken.");
    }
    return new double[] {old.or(() -> young).orElse(0.0), young.or(() -> old).orElse(0.0)};
  }

  private static double rate(Prices prices, List<String> assumptions) {
    if (prices.discountRate().isEmpty()) {
      assumptions.add(
          "The job states no discount rate; 3 % a year was taken, the least real rate of 10 CFR"
              + " 436.14.");
    }
    return prices.discountRate().map(Quantity::si).orElse(USUAL_RATE);
  }

  /**
   * The same at another age.
   *
   * @param years the age, in years
   * @return the changed figures
   */
  public Basis withAge(double years) {
    return new Basis(
        years,
        life,
        componentLife,
        labourPerHour,
        callOut,
        newMachine,
        running,
        runningNew,
        rate,
        ageUncertainty);
  }

  /**
   * The same with other lives.
   *
   * @param other how long such machines last
   * @param component how long a component lasts, as a ratio of the life of the machine
   * @return the changed figures
   */
  public Basis withLife(ApplianceLife other, double component) {
    return new Basis(
        age,
        other,
        component,
        labourPerHour,
        callOut,
        newMachine,
        running,
        runningNew,
        rate,
        ageUncertainty);
  }

  /**
   * The same at another discount rate.
   *
   * @param other the discount rate a year, as a ratio
   * @return the changed figures
   */
  public Basis withRate(double other) {
    return new Basis(
        age,
        life,
        componentLife,
        labourPerHour,
        callOut,
        newMachine,
        running,
        runningNew,
        other,
        ageUncertainty);
  }

  /**
   * The same with other costs.
   *
   * @param price the price of a new machine, installed
   * @param ofOld the running cost of the old machine a year
   * @param ofNew the running cost of the new machine a year
   * @return the changed figures
   */
  public Basis withCosts(double price, double ofOld, double ofNew) {
    return new Basis(
        age,
        life,
        componentLife,
        labourPerHour,
        callOut,
        price,
        ofOld,
        ofNew,
        rate,
        ageUncertainty);
  }
}
