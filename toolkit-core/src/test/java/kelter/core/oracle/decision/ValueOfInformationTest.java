package kelter.core.oracle.decision;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.engine.RepairOrder;
import kelter.core.oracle.Belief;
import kelter.core.oracle.Block;
import kelter.core.oracle.DiscreteModel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Decisions with known answers: worked examples, and arithmetic on their inputs. */
class ValueOfInformationTest {

  private static final int[] NOTHING = {-1};

  /** Vomlel, slides on troubleshooting (2007), "light print": causes .4, .3, .2, .1. */
  private static final double[] CAUSES = {.4, .3, .2, .1};

  /** Whether the second action works, and whether the answer is yes. */
  private static DiscreteModel lightPrint() {
    Block works = Block.single(new double[][] {{.9, .1}, {.9, .1}, {0, 1}, {0, 1}});
    Block yes = Block.single(new double[][] {{1, 0}, {1, 0}, {0, 1}, {0, 1}});
    return new DiscreteModel(CAUSES, List.of(works, yes));
  }

  private static Repairs secondAction(double service) {
    return Repairs.of(new double[] {15}, new double[][] {{.9, .9, 0, 0}}, service);
  }

  @Test
  @DisplayName("1.4: what the question on a light print tells (arithmetic on Vomlel's inputs)")
  void lightPrintInformation() {
    Belief belief = lightPrint().given(new int[] {-1, -1});

    assertEquals(.63, belief.outcomes(0)[0], 1e-15);
    assertEquals(.9, belief.and(1, 0).outcomes(0)[0], 1e-15);
    assertEquals(1.8464393446710, belief.entropy(), 5.01e-14);
    assertEquals(.881290899231, belief.information()[1], 5.01e-13);
    assertEquals(.965148445440, belief.entropy() - belief.information()[1], 5.01e-13);
  }

  @ParameterizedTest
  @DisplayName("1.4: the question before the repair is worth its price")
  @CsvSource({"100, 52.0, 49.5", "50, 33.5, 31.0"})
  void lightPrintDecision(double service, double repairFirst, double askFirst) {
    double[] prices = {Double.POSITIVE_INFINITY, 2};
    Advice advice =
        new ValueOfInformation(lightPrint(), secondAction(service), prices)
            .advise(new int[] {-1, -1}, 2);

    assertEquals(repairFirst, advice.costNow(), 1e-12);
    assertEquals(1, advice.readings().get(0).observable());
    assertEquals(askFirst, advice.readings().get(0).expectedCost(), 1e-12);
    assertEquals(askFirst, advice.readings().get(0).expectedCostWithSecond(), 1e-12);
    assertFalse(advice.enough());
  }

  @Test
  @DisplayName("1.5: the test of a used car that changes nothing (AIMA, chapter 16, after Pearl)")
  void usedCar() {
    Block pass = Block.single(new double[][] {{.8, .2}, {.35, .65}});
    DiscreteModel car = new DiscreteModel(new double[] {.7, .3}, List.of(pass));
    Choice buyOrNot = new Choice(new double[][] {{-500, 200}, {0, 0}});
    ValueOfInformation value = new ValueOfInformation(car, buyOrNot, new double[] {50});
    Belief belief = car.given(NOTHING);

    assertEquals(-290, buyOrNot.leastCost(belief.posterior()), 1e-12);
    assertEquals(.665, belief.outcomes(0)[0], 1e-15);
    assertEquals(.842105263, belief.and(0, 0).posterior()[0], 5.01e-10);
    assertEquals(.417910448, belief.and(0, 1).posterior()[0], 5.01e-10);
    assertEquals(-389.473684, buyOrNot.leastCost(belief.and(0, 0).posterior()), 5.01e-7);
    assertEquals(-92.537313, buyOrNot.leastCost(belief.and(0, 1).posterior()), 5.01e-7);
    assertEquals(0, buyOrNot.best(belief.and(0, 1).posterior()));
    assertEquals(0, value.savings(NOTHING)[0], 1e-12);
    Advice advice = value.advise(NOTHING, 1);
    assertEquals(-50, advice.costNow() - advice.readings().get(0).expectedCost(), 1e-12);
    assertTrue(advice.enough());
  }

  @Test
  @DisplayName("1.6: the oil wildcatter (Raiffa, from memory)")
  void wildcatter() {
    Block seismic = Block.single(new double[][] {{.6, .3, .1}, {.3, .4, .3}, {.1, .4, .5}});
    DiscreteModel field = new DiscreteModel(new double[] {.5, .3, .2}, List.of(seismic));
    Choice drillOrNot = new Choice(new double[][] {{70, -50, -200}, {0, 0, 0}});
    ValueOfInformation value = new ValueOfInformation(field, drillOrNot, new double[] {10});
    Advice advice = value.advise(NOTHING, 1);

    assertEquals(-20, advice.costNow(), 1e-12);
    assertEquals(12.5, advice.readings().get(0).saving(), 1e-12);
    assertEquals(-22.5, advice.readings().get(0).expectedCost(), 1e-12);
    assertEquals(35, value.perfect(NOTHING), 1e-12);
    assertFalse(advice.enough());
  }

  @Test
  @DisplayName("Two fair coins: each alone says nothing of whether they are equal, both say all")
  void twoReadingsEachWorthNothingAlone() {
    double[][] coin = {{.5, .5}, {.5, .5}};
    double[][][] other = {{{1, 0}, {0, 1}}, {{0, 1}, {1, 0}}};
    Block coins = Block.sharing(coin, Block.sharedItself(2, 2), other);
    DiscreteModel model = new DiscreteModel(new double[] {.5, .5}, List.of(coins));
    Choice bet = new Choice(new double[][] {{0, 10}, {10, 0}});
    int[] none = {-1, -1};

    ValueOfInformation cheap = new ValueOfInformation(model, bet, new double[] {1, 2});
    assertArrayEquals(new double[] {0, 0}, cheap.savings(none), 1e-15);
    assertTrue(cheap.advise(none, 0).enough(), "alone");
    Advice advice = cheap.advise(none, 2);
    assertEquals(5, advice.costNow(), 1e-15);
    assertEquals(3, advice.readings().get(0).expectedCostWithSecond(), 1e-15);
    assertFalse(advice.enough());

    ValueOfInformation dear = new ValueOfInformation(model, bet, new double[] {3, 3});
    assertTrue(dear.advise(none, 2).enough(), "6 for what saves 5");
    assertTrue(cheap.advise(new int[] {0, 1}, 2).readings().isEmpty());
  }

  @Test
  void whatIsNoDecisionIsRefused() {
    refused(() -> new Choice(new double[0][]));
    refused(() -> new Choice(new double[][] {{1, 2}, {1}}));
    refused(() -> new Choice(new double[][] {{Double.NaN}}));
    refused(() -> new Choice(new double[][] {{1, 2}}).leastCost(new double[] {1}));
    refused(() -> Repairs.of(new double[] {1, 2}, new double[][] {{1}}, 5));
    refused(() -> Repairs.of(new double[] {-1}, new double[][] {{1}}, 5));
    refused(() -> Repairs.of(new double[] {1}, new double[][] {{1.1}}, 5));
    refused(() -> Repairs.of(new double[] {1}, new double[][] {{Double.NaN}}, 5));
    refused(() -> Repairs.of(new double[] {1}, new double[][] {{1}}, -5));
    refused(() -> Repairs.of(new double[0], new double[0][], 5));
    refused(() -> Repairs.of(new double[13], new double[13][1], 5));
    refused(() -> Repairs.of(new double[] {1}, new double[][] {{1}}, 5).leastCost(new double[2]));
    refused(() -> Repairs.of(new double[] {Double.POSITIVE_INFINITY}, new double[][] {{1}}, 5));
    double[] cures = {1, 0};
    refused(() -> RepairOrder.best(1, (remedy, done) -> Double.NaN, cures, 5));
    refused(() -> RepairOrder.best(1, (remedy, done) -> -1, cures, 5));
    refused(() -> RepairOrder.best(1, (remedy, done) -> 1, new double[] {1, Double.NaN}, 5));
    refused(() -> RepairOrder.best(1, (remedy, done) -> 1, cures, Double.NaN));
    refused(() -> RepairOrder.best(2, (remedy, done) -> 1, cures, 5));
    refused(() -> RepairOrder.best(13, (remedy, done) -> 1, new double[1 << 13], 5));
    DiscreteModel model = lightPrint();
    refused(() -> new ValueOfInformation(model, secondAction(1), new double[] {1}));
    refused(() -> new ValueOfInformation(model, secondAction(1), new double[] {1, -1}));
    refused(() -> new ValueOfInformation(model, secondAction(1), new double[] {1, Double.NaN}));
    refused(() -> ChanceOverCost.best(new double[] {.6, .6}, new double[] {1, 1}, 5));
    refused(() -> ChanceOverCost.best(new double[] {.6}, new double[] {1, 1}, 5));
    refused(() -> ChanceOverCost.best(new double[] {Double.NaN}, new double[] {1}, 5));
    refused(() -> ChanceOverCost.best(new double[] {.6}, new double[] {-1}, 5));
    refused(() -> ChanceOverCost.best(new double[] {.6}, new double[] {1}, Double.NaN));
  }

  private static void refused(org.junit.jupiter.api.function.Executable code) {
    assertThrows(IllegalArgumentException.class, code);
  }
}
