package kelter.costing.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import kelter.core.source.Standing;
import kelter.testkit.ledger.OutsideCheck;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ApplianceLifeTest {

  static List<String> kinds() {
    return LifeStudies.kinds();
  }

  /**
   * Means of EIA (2023), Updated Buildings Sector Appliance and Equipment Costs, known second-hand
   * through public building-energy data that cites it: dishwasher 15, clothes washer 11.5, dryer
   * 13, refrigerator 15 years. Other countries and other questions than the studies used here: an
   * agreement within a quarter is what the spread between studies allows.
   */
  @OutsideCheck(
      of = "appliance-life",
      against = "EIA (2023), as public data cite it, within a quarter")
  @Test
  void ofTheSameSizeAsTheAmericanFigures() {
    assertEquals(15, mean(LifeStudies.DISHWASHER), 15 / 4.0);
    assertEquals(11.5, mean(LifeStudies.WASHING_MACHINE), 11.5 / 4);
    assertEquals(13, mean(LifeStudies.TUMBLE_DRYER), 13 / 4.0);
    assertEquals(15, mean(LifeStudies.REFRIGERATOR), 15 / 4.0);
  }

  private static double mean(String kind) {
    return KindOfLife.of(kind).life().mean();
  }

  /**
   * What is left is the area under the share of all machines that still run, over the share that
   * reaches the age: summed here in small steps with the Weibull distribution of Commons
   * Statistics, all studies in one heap and no study weighted.
   */
  @ParameterizedTest
  @MethodSource("kinds")
  void whatIsLeftIsTheAreaUnderTheShareThatStillRuns(String kind) {
    List<WeibullDistribution> studies =
        KindOfLife.of(kind).life().studies().stream()
            .map(study -> WeibullDistribution.of(study.shape(), study.scale()))
            .toList();
    for (double age : new double[] {0, 8, 25}) {
      double step = 0.01;
      double sum = -running(studies, age) / 2;
      for (double time = age; time < 400; time += step) {
        sum += running(studies, time);
      }
      double expected = sum * step / running(studies, age);
      double left = KindOfLife.of(kind).life().meanResidual(age);
      assertEquals(expected, left, 1e-4 * expected, kind + " at " + age);
    }
  }

  private static double running(List<WeibullDistribution> studies, double time) {
    return studies.stream().mapToDouble(study -> study.survivalProbability(time)).sum();
  }

  @Test
  void everyStudyIsCitedSecondHand() {
    assertEquals(41, LifeStudies.all().size());
    assertTrue(
        LifeStudies.all().stream()
            .allMatch(study -> study.source().standing() == Standing.SECOND_HAND));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void theOlderTheLessIsLeft(String kind) {
    ApplianceLife life = KindOfLife.of(kind).life();
    double before = life.mean();
    assertEquals(before, life.meanResidual(0), 1e-9);
    for (int age = 1; age <= 20; age++) {
      double left = life.meanResidual(age);
      assertTrue(left < before, kind + " at " + age + ": " + left + " after " + before);
      before = left;
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void weightsSumToOneAtAnyAge(String kind) {
    for (double age : new double[] {0, 5, 20, 100, 1000}) {
      assertEquals(1, Arrays.stream(KindOfLife.of(kind).life().weights(age)).sum(), 1e-12);
    }
  }

  @Test
  void survivalToAnAgeAndBeyondIsAChain() {
    ApplianceLife life = KindOfLife.of(LifeStudies.DISHWASHER).life();
    assertEquals(life.survival(13), life.survival(8) * life.survival(8, 5), 1e-12);
  }

  /**
   * Two lives without memory (shape 1) of a mean of 10 and 20 years, three to one: after ten years
   * 3/4 exp(-1) + 1/4 exp(-1/2) are left, and of the studies the first has not kept its 3/4.
   */
  @Test
  void studiesCountByTheirShares() {
    ApplianceLife life =
        new ApplianceLife(List.of(new Weibull(10, 1), new Weibull(20, 1)), List.of(3.0, 1.0));
    assertEquals(List.of(0.75, 0.25), life.shares());
    assertEquals(12.5, life.mean(), 1e-12);
    double first = 0.75 * Math.exp(-1);
    double second = 0.25 * Math.exp(-0.5);
    assertEquals(first + second, life.survival(10), 1e-14);
    assertEquals(first / (first + second), life.weights(10)[0], 1e-14);
    assertEquals((10 * first + 20 * second) / (first + second), life.meanResidual(10), 1e-12);
  }

  @Test
  void aStudyWithoutAShareIsRefused() {
    List<Weibull> two = List.of(new Weibull(10, 1), new Weibull(20, 1));
    for (double share : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      List<Double> shares = List.of(1.0, share);
      assertThrows(IllegalArgumentException.class, () -> new ApplianceLife(two, shares));
    }
  }

  @Test
  void anUnknownKindIsTakenForTheNearestAndSaidSo() {
    KindOfLife extractor = KindOfLife.of("washer-extractor");
    assertEquals(LifeStudies.of(LifeStudies.WASHING_MACHINE), extractor.studies());
    assertTrue(extractor.assumption().contains("'washer-extractor'"));
    assertEquals(LifeStudies.of(LifeStudies.DISHWASHER), KindOfLife.of("dish-washer").studies());
    assertEquals(LifeStudies.all(), KindOfLife.of("water-softener").studies());
    assertFalse(KindOfLife.of("water-softener").assumption().isEmpty());
    assertTrue(KindOfLife.of(LifeStudies.OVEN).assumption().isEmpty());
  }

  @Test
  void eachStudyIsNamedOnceWithItsPlacesAndYears() {
    List<String> documents =
        LifeStudy.sources(LifeStudies.of(LifeStudies.DISHWASHER)).stream()
            .map(source -> source.document())
            .toList();
    assertEquals(
        List.of(
            "Forti et al. (2018): Italy 2012; Netherlands, France, Belgium 2005",
            "Prakash et al. (2016): Germany 2004; Germany 2008; Germany 2012"),
        documents);
  }

  @Test
  void withoutAShapeThereIsNoLife() {
    List<LifeStudy> bare =
        List.of(new LifeStudy("kettle", 6, OptionalDouble.empty(), 2000, "nowhere", "nobody"));
    assertThrows(IllegalArgumentException.class, () -> ApplianceLife.of(bare));
    assertThrows(IllegalArgumentException.class, () -> new ApplianceLife(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LifeStudy("kettle", 0, OptionalDouble.empty(), 2000, "nowhere", "nobody"));
  }
}
