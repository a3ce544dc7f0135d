package kelter.costing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.costing.life.RemainingLife;
import kelter.costing.money.AnnualCost;
import kelter.costing.money.PayBack;
import kelter.costing.money.RealRate;
import kelter.costing.money.RepairOrReplace;
import kelter.costing.money.SinglePresentValue;
import kelter.costing.money.UniformPresentValue;
import kelter.costing.shop.SparesStock;
import kelter.costing.use.CarbonOfReplacing;
import kelter.costing.use.LifeAtUse;
import kelter.testkit.ledger.OutsideCheck;
import org.apache.commons.numbers.gamma.Gamma;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What each calculation takes and gives, and that its units come out right, asked by name. */
class LawsTest {

  /** A year of 365.25 days, in s. */
  private static final double YEAR = 365.25 * 24 * 3600;

  private static final double DAY = 24 * 3600;
  private static final double MOST = 1e12;

  /** A parameter with its limits in the coherent unit, and what is taken for it. */
  private record Taken(String id, double low, double high, String usual) {}

  private static Taken amount(String id) {
    return new Taken(id, 0, MOST, "");
  }

  private static Taken rate() {
    return new Taken("rate", -0.5, 1, "3 %");
  }

  private static Taken years(String id, double least) {
    return new Taken(id, least, 200 * YEAR, "");
  }

  private static Taken yearly(String id) {
    return new Taken(id, 0, MOST / YEAR, "0");
  }

  private static Arguments law(Calculation calculation, List<String> outputs, Taken... taken) {
    return Arguments.of(calculation, outputs, List.of(taken));
  }

  static Stream<Arguments> laws() {
    Taken within = new Taken("within", 0, 200 * YEAR, "1 a");
    return Stream.of(
        law(
            RemainingLife.weibullCalculation(),
            List.of("left", "reached", "ends"),
            years("mean", DAY),
            new Taken("shape", 0.2, 50, ""),
            years("age", 0),
            within),
        law(
            RemainingLife.applianceCalculation(),
            List.of("left", "left-least", "left-most", "reached", "ends"),
            new Taken("kind", 0, 5, "washing-machine"),
            years("age", 0),
            within),
        law(
            SinglePresentValue.calculation(),
            List.of("present-value"),
            amount("amount"),
            years("time", 0),
            rate()),
        law(
            UniformPresentValue.calculation(),
            List.of("present-value", "recovery"),
            new Taken("amount", 0.01 / YEAR, MOST / YEAR, ""),
            years("time", DAY),
            rate()),
        law(
            AnnualCost.calculation(),
            List.of("annual-cost", "present-cost"),
            amount("outlay"),
            yearly("running"),
            new Taken("salvage", 0, MOST, "0"),
            years("life", DAY),
            rate()),
        law(
            RepairOrReplace.calculation(),
            List.of("annual-repair", "annual-new", "break-even"),
            amount("repair"),
            years("left", DAY),
            yearly("running"),
            amount("price"),
            years("life", DAY),
            yearly("running-new"),
            rate()),
        law(
            RealRate.calculation(),
            List.of("real"),
            new Taken("nominal", -0.5, 1, ""),
            new Taken("inflation", -0.5, 1, "")),
        law(
            PayBack.calculation(),
            List.of("years"),
            amount("outlay"),
            new Taken("saving", 0.01 / YEAR, MOST / YEAR, ""),
            new Taken("rate", 0, 1, "3 %")),
        law(
            SparesStock.calculation(),
            List.of("stock", "ready", "cost"),
            new Taken("demand", 0, 1000, ""),
            new Taken("delivery", 0, 5 * YEAR, ""),
            new Taken("service", 0.01, 0.9999, "95 %"),
            new Taken("price", 0, MOST, "0"),
            new Taken("holding", 0, 1, "20 %")),
        law(
            LifeAtUse.calculation(),
            List.of("life-here"),
            years("life", 0),
            new Taken("cycles", 0.1, 1000, ""),
            new Taken("household", 0.1, 1000, "4.2")),
        law(
            CarbonOfReplacing.calculation(),
            List.of("annual-old", "annual-new"),
            new Taken("energy", 0, 1e6 * 3.6e6 / YEAR, ""),
            new Taken("energy-new", 0, 1e6 * 3.6e6 / YEAR, ""),
            new Taken("per-kwh", 0, 3, ""),
            new Taken("making", 0, 1e6, ""),
            years("life", 0.01 * YEAR)));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void takesAndGivesWhatItsRangeSays(
      Calculation calculation, List<String> outputs, List<Taken> taken) {
    assertEquals(outputs, calculation.outputs().stream().map(Output::id).toList());
    assertEquals(
        taken.stream().map(Taken::id).toList(),
        calculation.parameters().stream().map(Parameter::id).toList());
    for (int i = 0; i < taken.size(); i++) {
      Taken expected = taken.get(i);
      Parameter parameter = calculation.parameters().get(i);
      String of = calculation.id() + " " + expected.id();
      assertEquals(expected.low(), parameter.low(), 1e-12 * Math.abs(expected.low()), of);
      assertEquals(expected.high(), parameter.high(), 1e-12 * expected.high(), of);
      assertEquals(expected.usual(), parameter.usual().orElse(""), of);
    }
  }

  private static double[] results(Calculation calculation, Map<String, String> given) {
    return Computation.of(calculation, given).results().stream()
        .mapToDouble(result -> result.quantity().value())
        .toArray();
  }

  /** The finance functions of Apache POI. */
  @OutsideCheck(of = "present-value", against = "Apache POI")
  @OutsideCheck(of = "annuity", against = "Apache POI")
  @OutsideCheck(of = "annual-cost", against = "Apache POI")
  @OutsideCheck(of = "repair-or-replace", against = "Apache POI")
  @Test
  void moneyByNameAgreesWithPoi() {
    double annual = 95 - FinanceLib.pmt(0.045, 11, 830, -60, false);
    assertArrayEquals(
        new double[] {annual, -FinanceLib.pv(0.045, 11, annual, 0, false)},
        results(
            AnnualCost.calculation(),
            Map.of(
                "outlay", "830",
                "running", "95",
                "salvage", "60",
                "life", "11 a",
                "rate", "4.5 %")),
        1e-8);
    assertArrayEquals(
        new double[] {FinanceLib.nper(0.04, -110, 600, 0, false)},
        results(PayBack.calculation(), Map.of("outlay", "600", "saving", "110", "rate", "4 %")),
        1e-8);
    double annualNew = 60 - FinanceLib.pmt(0.03, 12, 900, 0, false);
    assertArrayEquals(
        new double[] {
          85 - FinanceLib.pmt(0.03, 4, 200, 0, false),
          annualNew,
          -FinanceLib.pv(0.03, 4, annualNew - 85, 0, false)
        },
        results(
            RepairOrReplace.calculation(),
            Map.of(
                "repair", "200",
                "left", "4 a",
                "running", "85",
                "price", "900",
                "life", "12 a",
                "running-new", "60")),
        1e-8);
    assertArrayEquals(
        new double[] {
          -FinanceLib.pv(0.07, 5, 100, 0, false), -FinanceLib.pmt(0.07, 5, 1, 0, false)
        },
        results(
            UniformPresentValue.calculation(),
            Map.of("amount", "100", "time", "5 a", "rate", "7 %")),
        1e-8);
    assertArrayEquals(
        new double[] {-FinanceLib.pv(0.07, 5, 0, 100, false)},
        results(
            SinglePresentValue.calculation(),
            Map.of("amount", "100", "time", "5 a", "rate", "7 %")),
        1e-8);
  }

  /**
   * Five rows of dishwashers: means 12.7, 13.06, 12.1, 12.4 and 12.8 years (mean 12.612), shapes
   * 1.64 and 1.37 and for the others their mean, 1.505. A new machine has the mean life left; later
   * on the shares are those of the Weibull distribution of Commons Statistics, summed.
   */
  @OutsideCheck(of = "appliance-life", against = "Commons Statistics, Weibull distribution")
  @Test
  void anApplianceByNameAgreesWithCommonsStatistics() {
    List<WeibullDistribution> studies =
        List.of(
            weibull(12.7, 1.64),
            weibull(13.06, 1.37),
            weibull(12.1, 1.505),
            weibull(12.4, 1.505),
            weibull(12.8, 1.505));
    assertArrayEquals(
        new double[] {12.612, 12.1, 13.06, 100, 100 * (1 - reaching(studies, 1))},
        results(RemainingLife.applianceCalculation(), Map.of("kind", "dishwasher", "age", "0 a")),
        1e-8);
    double[] later =
        results(
            RemainingLife.applianceCalculation(),
            Map.of("kind", "dishwasher", "age", "8 a", "within", "3 a"));
    assertEquals(100 * reaching(studies, 8), later[3], 1e-8);
    assertEquals(100 * (1 - reaching(studies, 11) / reaching(studies, 8)), later[4], 1e-8);
  }

  private static WeibullDistribution weibull(double mean, double shape) {
    return WeibullDistribution.of(shape, mean / Gamma.value(1 + 1 / shape));
  }

  private static double reaching(List<WeibullDistribution> studies, double age) {
    return studies.stream().mapToDouble(s -> s.survivalProbability(age)).average().orElseThrow();
  }

  /**
   * Demand of 24 a year and a month (1/12 a) to deliver are 2 in the delivery time. The Poisson
   * table (four decimals, from memory) gives P(at most 4) = 0.9473 and P(at most 5) = 0.9834, so
   * that 95 % need 6; six at 10 cost 20 % of 60 a year.
   */
  @Test
  void sparesByName() {
    double[] stock =
        results(
            SparesStock.calculation(),
            Map.of("demand", "24", "delivery", "30.4375 d", "price", "10"));
    assertArrayEquals(new double[] {6, 98.34, 12}, stock, 0.5e-2);
  }
}
