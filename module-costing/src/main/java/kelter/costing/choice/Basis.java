package kelter.costing.choice;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;

/**
 * The figures that a weighing rests on. Money is in units of the job's currency.
 *
 * @param age the age of the machine, in years
 * @param ageUncertainty the standard uncertainty of the age, in years; 0 if none is stated
 * @param life how long such machines last
 * @param componentLife how long a component lasts, as a ratio of what is taken for it
 * @param learned what was learned of the lives of components, by the id of the component
 * @param costs what the options cost
 * @param repairWarranty for how long the shop mends again for nothing, in years
 * @param newWarranty for how long a new machine is replaced for nothing, in years
 * @param rate the discount rate a year, as a ratio
 * @param spread how far prices may turn out otherwise
 */
public record Basis(
    double age,
    double ageUncertainty,
    ApplianceLife life,
    double componentLife,
    Map<String, LearnedLife> learned,
    Costs costs,
    double repairWarranty,
    double newWarranty,
    double rate,
    Spread spread) {

  /** The least real discount rate of 10 CFR 436.14(a)(2), a year, as a ratio. */
  public static final double USUAL_RATE = 0.03;

  /** No study of components is known: they last as long as the machine. */
  public static final double AS_THE_MACHINE = 1;

  /**
   * How far prices may turn out otherwise, as relative standard deviations.
   *
   * @param repair of the bill for a repair
   * @param replacement of a new machine
   * @param running of energy, water and detergent
   */
  public record Spread(double repair, double replacement, double running) {

    /**
     * Whether there is any.
     *
     * @return false if all prices are sure
     */
    public boolean isAny() {
      return repair > 0 || replacement > 0 || running > 0;
    }
  }

  /** What was learned is kept sorted by component, so that the numbers of the lives are fixed. */
  public Basis {
    learned = Collections.unmodifiableMap(new TreeMap<>(learned));
  }

  /**
   * How many different lives components may have: one for all of which nothing was learned, and one
   * for each other.
   *
   * @return the number, 1 or more
   */
  public int groups() {
    return 1 + learned.size();
  }

  /**
   * Which of these lives a component has.
   *
   * @param component the id of the component
   * @return the number of the life, from 0 to below {@link #groups}
   */
  public int group(String component) {
    return List.copyOf(learned.keySet()).indexOf(component) + 1;
  }

  /**
   * The life of components by one study. What was learned is pooled with the assumption that they
   * last as long as the machine: characteristic life (by its logarithm) and shape are means with
   * their weights.
   *
   * @param study the life of the machine by the study
   * @param group the number of the life
   * @return the life, in years
   */
  public Weibull component(Weibull study, int group) {
    if (group == 0) {
      return study.stretched(componentLife);
    }
    LearnedLife own = List.copyOf(learned.values()).get(group - 1);
    double share = own.weight() / (1 + own.weight());
    double scale = Math.exp((1 - share) * Math.log(study.scale()) + share * Math.log(own.scale()));
    double shape = (1 - share) * study.shape() + share * own.shape();
    return new Weibull(scale * componentLife, shape);
  }

  /**
   * The same at another age.
   *
   * @param years the age, in years
   * @return the changed figures
   */
  public Basis withAge(double years) {
    return with(years, life, componentLife, costs, rate);
  }

  /**
   * The same with other lives.
   *
   * @param other how long such machines last
   * @param component how long a component lasts, as a ratio of what is taken for it
   * @return the changed figures
   */
  public Basis withLife(ApplianceLife other, double component) {
    return with(age, other, component, costs, rate);
  }

  /**
   * The same at another discount rate.
   *
   * @param other the discount rate a year, as a ratio
   * @return the changed figures
   */
  public Basis withRate(double other) {
    return with(age, life, componentLife, costs, other);
  }

  /**
   * The same with other costs.
   *
   * @param other the costs
   * @return the changed figures
   */
  public Basis withCosts(Costs other) {
    return with(age, life, componentLife, other, rate);
  }

  private Basis with(
      double years, ApplianceLife lives, double component, Costs cost, double discount) {
    return new Basis(
        years,
        ageUncertainty,
        lives,
        component,
        learned,
        cost,
        repairWarranty,
        newWarranty,
        discount,
        spread);
  }
}
