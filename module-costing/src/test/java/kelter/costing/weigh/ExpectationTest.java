package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.owner.Supplies;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExpectationTest {

  private static final int DRAWS = 200_000;

  /** Two ways to the same figure, quadrature and drawing, agree within four standard errors. */
  @ParameterizedTest
  @CsvSource({
    "0, washing-machine, 3",
    "7, washing-machine, 3",
    "14, dishwasher, 0",
    "22, oven, 8",
    "5, washer-extractor, 25"
  })
  void theMeanOfTheDrawsIsTheExpectation(double age, String kind, double rate) {
    OptionComparison comparison =
        OptionComparison.of(
            Cases.job(kind, age, Optional.of(Cases.prices(14, 130, 700, rate))),
            Cases.diagnosis(0.5, 0.3, 0.1, 0.05),
            LearnedLives.NONE,
            new ArrayList<>());
    assertDrawsMeet(comparison);
  }

  /** The same with warranties, days without the machine, unsure prices and learned lives. */
  @ParameterizedTest
  @CsvSource({"0, 0", "6, 3", "13, 8"})
  void termsAndUnsurePricesDoNotPartThem(double age, double rate) {
    Prices prices =
        Cases.with(
            Cases.prices(14, 130, 700, rate), Cases.terms(), Supplies.UNKNOWN, Cases.spread());
    Job job = Cases.job("washing-machine", age, Optional.of(prices));
    Diagnosis diagnosis = Cases.diagnosis(0.5, 0.3, 0.1, 0.05);
    assertDrawsMeet(OptionComparison.of(job, diagnosis, LearnedLives.NONE, new ArrayList<>()));
    assertDrawsMeet(
        OptionComparison.of(
            TermsTest.withPump(job), diagnosis, TermsTest.LEARNED, new ArrayList<>()));
  }

  private static void assertDrawsMeet(OptionComparison comparison) {
    double[][] costs = Scenario.draw(comparison, DRAWS, 99);
    for (int k = 0; k < costs.length; k++) {
      double mean = Arrays.stream(costs[k]).average().orElseThrow();
      double squares = Arrays.stream(costs[k]).map(c -> (c - mean) * (c - mean)).sum();
      double error = Math.sqrt(squares / DRAWS / DRAWS);
      assertEquals(comparison.weighed().get(k).mean(), mean, 4 * error);
    }
  }

  /**
   * Without discounting, the worth of the years left is the mean residual life, which has a closed
   * form by the incomplete gamma function.
   */
  @ParameterizedTest
  @CsvSource({"0, dishwasher", "8, oven", "20, washing-machine", "40, tumble-dryer", "3, softener"})
  void undiscountedItIsTheMeanResidualLife(double age, String kind) {
    OptionComparison comparison =
        OptionComparison.of(
            Cases.job(kind, age, Optional.of(Cases.prices(14, 130, 700, 0))),
            Cases.certain(Cases.PUMP),
            LearnedLives.NONE,
            new ArrayList<>());
    double left = comparison.basis().life().meanResidual(age);
    assertEquals(left, comparison.expectation().worthLeft(), 1e-4 * left);
  }

  /**
   * Machines that do not wear (shape 1, the exponential distribution of the NIST/SEMATECH
   * e-Handbook, 8.1.6.1): a mended one is as good as a new one at any age. Two studies disagree
   * about how long they last; an old machine speaks for the longer life, but for a new machine no
   * less. Against replacing, a repair that never fails again thus saves the price less the bill,
   * whatever the age.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 20, 50})
  void whatDoesNotWearIsWorthANewOneAtAnyAge(double age) {
    ApplianceLife memoryless = new ApplianceLife(List.of(new Weibull(5, 1), new Weibull(20, 1)));
    OptionComparison any =
        OptionComparison.of(
            Cases.washer(age, Cases.prices(0, 155, 800, 0)),
            Cases.certain(Cases.remedy("renew-pump", Remedy.Restores.COMPONENT, 45, true, 1)),
            LearnedLives.NONE,
            new ArrayList<>());
    OptionComparison comparison = any.with(any.basis().withLife(memoryless, 1e9));
    double saved = 850 + 45 - (45 + 45 + 155);
    double years = comparison.expectation().period();
    assertEquals(saved, comparison.saving() * years, 0.5);
    double[][] costs = Scenario.draw(comparison, DRAWS, 5);
    int repair = comparison.weighed().get(0).candidate().steps().isEmpty() ? 1 : 0;
    double[] saving = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      saving[i] = costs[1 - repair][i] - costs[repair][i];
    }
    double mean = Arrays.stream(saving).average().orElseThrow();
    double squares = Arrays.stream(saving).map(s -> (s - mean) * (s - mean)).sum();
    assertEquals(saved / years, mean, 4 * Math.sqrt(squares) / DRAWS);
  }

  /**
   * Fewer draws than a block are made in one thread, many in as many as there are: the first of the
   * many are those few, to the last digit.
   */
  @Test
  void theNumberOfThreadsDoesNotShow() {
    Prices prices =
        Cases.with(Cases.prices(14, 130, 700, 3), Cases.terms(), Supplies.UNKNOWN, Cases.spread());
    OptionComparison comparison =
        OptionComparison.of(
            Cases.job("washing-machine", 6, Optional.of(prices)),
            Cases.diagnosis(0.5, 0.3, 0.1, 0.05),
            LearnedLives.NONE,
            new ArrayList<>());
    double[][] few = Scenario.draw(comparison, 999, 7);
    double[][] many = Scenario.draw(comparison, 25_500, 7);
    assertTrue(few.length > 1);
    for (int k = 0; k < few.length; k++) {
      assertArrayEquals(few[k], Arrays.copyOf(many[k], few[k].length));
    }
    assertArrayEquals(many, Scenario.draw(comparison, 25_500, 7));
  }
}
