package kelter.costing.life;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * How long a machine that has reached an age still lasts, by the laws of {@link Weibull} and {@link
 * ApplianceLife}, as a person can ask for it by name.
 */
public final class RemainingLife {

  /** Where the law of the Weibull life comes from. */
  public static final Source WEIBULL =
      Source.published(
          "NIST/SEMATECH e-Handbook of Statistical Methods, 8.1.6.2 Weibull; mean residual life by"
              + " integrating its survival function");

  /** Where the lifetimes come from. */
  public static final Source STUDIES =
      new Source(
          "Studies of the life of household appliances: Forti et al. (2018), Prakash et al. (2016),"
              + " Wieser et al. (2015), Oguchi et al. (2008), Müller et al. (2007), Tufte (1999),"
              + " Dahl (1980)",
          Standing.SECOND_HAND);

  private static final double YEAR = QuantityKind.AGE.unit().factor();
  private static final double OLDEST = 200 * YEAR;
  private static final double SHORTEST = YEAR / 365.25;

  private RemainingLife() {}

  private static Parameter age() {
    return Parameter.required("age", "age reached", QuantityKind.AGE, 0, OLDEST);
  }

  private static Parameter within() {
    return Parameter.optional("within", "time from now on", QuantityKind.AGE, 0, OLDEST, "1 a");
  }

  private static Output left() {
    return new Output("left", "mean life that is left", QuantityKind.AGE);
  }

  private static Output reached() {
    return new Output("reached", "share of new ones that reach the age", QuantityKind.PERCENT);
  }

  private static Output ends() {
    return new Output("ends", "chance that it ends within the time", QuantityKind.PERCENT);
  }

  /**
   * The remaining life for a stated mean life and shape.
   *
   * @return the calculation, made on demand
   */
  public static Calculation weibullCalculation() {
    return new Calculation(
        "remaining-life",
        "How long one that has reached an age still lasts",
        "left = integral of S from age onwards / S(age); ends = 1 - S(age + within) /"
            + " S(age); S(t) = exp(-(t / scale)^shape), scale = mean / Gamma(1 + 1 / shape)",
        "Shapes from 0.2 to 50; a shape above 1 means wear, 1 that age does not matter. A mean"
            + " life from one day to 200 a.",
        WEIBULL,
        List.of(
            Parameter.required("mean", "mean life of new ones", QuantityKind.AGE, SHORTEST, OLDEST),
            Parameter.required(
                "shape",
                "Weibull shape",
                QuantityKind.RATIO,
                Weibull.LEAST_SHAPE,
                Weibull.GREATEST_SHAPE),
            age(),
            within()),
        List.of(left(), reached(), ends()),
        List.of(),
        x -> ofMean(x[0], x[1], notNegative(x[2]), notNegative(x[3])));
  }

  /**
   * The remaining life of a kind of appliance that was studied.
   *
   * @return the calculation, made on demand
   */
  public static Calculation applianceCalculation() {
    return new Calculation(
        "appliance-life",
        "How long an appliance that has reached an age is still kept, by the studies",
        "left = mean over the studies of the mean residual Weibull life, each study weighted by"
            + " the share that it says has reached the age",
        "Household use in the places of the studies; a machine in a shop does more cycles a year"
            + " and lasts fewer years.",
        STUDIES,
        List.of(
            Parameter.choice(
                "kind", "kind of appliance", LifeStudies.kinds(), LifeStudies.WASHING_MACHINE),
            age(),
            within()),
        List.of(
            left(),
            new Output("left-least", "the same by the least hopeful study", QuantityKind.AGE),
            new Output("left-most", "the same by the most hopeful study", QuantityKind.AGE),
            reached(),
            ends()),
        List.of(),
        x -> ofKind((int) x[0], notNegative(x[1]) / YEAR, notNegative(x[2]) / YEAR));
  }

  private static double notNegative(double time) {
    return Math.max(0, time);
  }

  private static double[] ofMean(double mean, double shape, double age, double within) {
    Weibull life = Weibull.ofMean(mean, shape);
    return new double[] {
      life.meanResidual(age), life.survival(age), 1 - life.survival(age, within)
    };
  }

  private static double[] ofKind(int place, double age, double within) {
    ApplianceLife life = ApplianceLife.of(LifeStudies.of(LifeStudies.kinds().get(place)));
    double[] left =
        life.studies().stream().mapToDouble(s -> s.meanResidual(age)).sorted().toArray();
    return new double[] {
      life.meanResidual(age) * YEAR,
      left[0] * YEAR,
      left[left.length - 1] * YEAR,
      life.survival(age),
      1 - life.survival(age, within)
    };
  }
}
