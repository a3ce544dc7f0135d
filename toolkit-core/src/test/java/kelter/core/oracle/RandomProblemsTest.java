package kelter.core.oracle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Problems of up to 40 states and 20 observables, each asked of aima-core 3.0.0 as well. */
class RandomProblemsTest {

  private static final int TRIALS = 40;

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3})
  void posteriorsAndPredictions(double chanceOfZero) {
    for (int trial = 0; trial < TRIALS; trial++) {
      int states = trial == 0 ? 40 : 2 + trial * 7 % 39;
      int observables = trial == 0 ? 20 : 1 + trial * 11 % 20;
      RandomProblem problem = new RandomProblem(trial, states, observables, chanceOfZero);
      int[] evidence = problem.draw(0.6);
      Belief belief = problem.model.given(evidence);
      String where = "trial " + trial;

      double[] expected = problem.aima.ask(0, problem.findings(evidence));
      assertArrayEquals(expected, belief.posterior(), 1e-12, where);
      for (int f = 0; f < evidence.length; f++) {
        if (evidence[f] < 0) {
          double[] outcomes = problem.aima.ask(problem.nodes.get(f), problem.findings(evidence));
          assertArrayEquals(outcomes, belief.outcomes(f), 1e-12, where);
        }
      }
    }
  }

  @Test
  void informationOfObservablesThatShareSomething() {
    for (int trial = 0; trial < 10; trial++) {
      RandomProblem problem = new RandomProblem(100 + trial, 3 + trial, 6, 0.2);
      int[] evidence = problem.draw(0.4);
      double[] bits = problem.model.given(evidence).information();
      double before = Entropy.bits(problem.aima.ask(0, problem.findings(evidence)));
      for (int f = 0; f < evidence.length; f++) {
        if (evidence[f] >= 0) {
          assertEquals(0, bits[f]);
          continue;
        }
        double[] outcomes = problem.aima.ask(problem.nodes.get(f), problem.findings(evidence));
        double after = 0;
        for (int o = 0; o < outcomes.length; o++) {
          int[] more = evidence.clone();
          more[f] = o;
          if (outcomes[o] > 0) {
            after += outcomes[o] * Entropy.bits(problem.aima.ask(0, problem.findings(more)));
          }
        }
        assertEquals(before - after, bits[f], 1e-12, "trial " + trial + ", observable " + f);
      }
    }
  }

  @Test
  @DisplayName("60 readings of 1e-10 and 2e-10: odds of 2^60, by hand")
  void manyImprobableReadings() {
    double[][] table = {{1e-10, 1 - 1e-10}, {2e-10, 1 - 2e-10}};
    Block[] blocks = new Block[60];
    Arrays.fill(blocks, Block.single(table));
    DiscreteModel model = new DiscreteModel(new double[] {.5, .5}, List.of(blocks));
    int[] evidence = new int[60];

    double[] posterior = model.posterior(evidence);

    assertEquals(1 / (1 + Math.pow(2, 60)), posterior[0], 1e-12 * posterior[0]);
    double expected = 60 * Math.log(1e-10) + Math.log(Math.pow(2, 60) + 1) + Math.log(.5);
    assertEquals(expected, model.logEvidence(evidence), 1e-9);
  }

  @Test
  @DisplayName("A state that fell to 1e-400 comes back once the other is ruled out")
  void nothingIsLostOnTheWay() {
    double[][] against = {{1e-10, 1 - 1e-10}, {1, 0}};
    double[][] ruledOut = {{.25, .75}, {0, 1}};
    Block[] blocks = new Block[41];
    Arrays.fill(blocks, Block.single(against));
    blocks[40] = Block.single(ruledOut);
    DiscreteModel model = new DiscreteModel(new double[] {.5, .5}, List.of(blocks));
    int[] evidence = new int[41];

    assertArrayEquals(new double[] {1, 0}, model.posterior(evidence), 0);
    assertEquals(40 * Math.log(1e-10) + Math.log(.125), model.logEvidence(evidence), 1e-9);
    evidence[40] = DiscreteModel.NOT_OBSERVED;
    assertEquals(1, model.posterior(evidence)[1], 0);
  }

  @Test
  @DisplayName("40 improbable readings that share something, against decimal arithmetic")
  void manyImprobableReadingsThatShareSomething() {
    double[][][] table = {
      {{1e-10, 1 - 1e-10}, {3e-9, 1 - 3e-9}}, {{4e-9, 1 - 4e-9}, {1e-12, 1 - 1e-12}}
    };
    double[][] shared = {{.7, .3}, {.2, .8}};
    double[][][][] observables = new double[41][][][];
    Arrays.fill(observables, table);
    double[][][] told = {{{.9, .1}, {.2, .8}}, {{.9, .1}, {.2, .8}}};
    observables[40] = told;
    DiscreteModel model =
        new DiscreteModel(new double[] {.4, .6}, List.of(Block.sharing(shared, observables)));
    int[] evidence = new int[41];
    evidence[40] = DiscreteModel.NOT_OBSERVED;

    BigDecimal[] term = new BigDecimal[4];
    for (int i = 0; i < 4; i++) {
      term[i] =
          BigDecimal.valueOf(i < 2 ? .4 : .6)
              .multiply(BigDecimal.valueOf(shared[i / 2][i % 2]))
              .multiply(BigDecimal.valueOf(table[i / 2][i % 2][0]).pow(40));
    }
    BigDecimal first = term[0].add(term[1]);
    BigDecimal all = first.add(term[2]).add(term[3]);
    double expected = first.divide(all, MathContext.DECIMAL64).doubleValue();
    Belief belief = model.given(evidence);
    // Logarithms near -900 carry 1e-13 each.
    assertEquals(expected, belief.posterior()[0], 1e-11 * expected);

    double outcome = 0;
    for (int i = 0; i < 4; i++) {
      double share = term[i].divide(all, MathContext.DECIMAL64).doubleValue();
      outcome += share * (i % 2 == 0 ? .9 : .2);
    }
    assertEquals(outcome, belief.outcomes(40)[0], 1e-12);
  }

  @Test
  void evidenceThatCannotBeIsRefused() {
    DiscreteModel model =
        new DiscreteModel(
            new double[] {.5, .5},
            List.of(
                Block.single(new double[][] {{1, 0}, {0, 1}}),
                Block.single(new double[][] {{1, 0}, {0, 1}})));

    assertEquals(Double.NEGATIVE_INFINITY, model.logEvidence(new int[] {0, 1}));
    assertEquals(Double.POSITIVE_INFINITY, ConflictMeasure.bits(model, new int[] {0, 1}));
    refused(() -> model.posterior(new int[] {0, 1}));
    refused(() -> model.given(new int[] {1, 0}));
    refused(() -> model.posterior(new int[] {0}));
    refused(() -> model.posterior(new int[] {0, 2}));
    refused(() -> model.posterior(new int[] {0, -2}));
  }

  @Test
  void tablesThatAreNoDistributionsAreRefused() {
    refused(() -> Block.single(new double[0][]));
    refused(() -> Block.single(new double[][] {{}}));
    refused(() -> Block.single(new double[][] {{.5, .5}, {.5, .4}}));
    refused(() -> Block.single(new double[][] {{.5, .5}, {1}}));
    refused(() -> Block.single(new double[][] {{Double.NaN, 1}}));
    refused(() -> Block.single(new double[][] {{-.1, 1.1}}));
    refused(() -> Block.sharing(new double[][] {{1}}));
    refused(() -> Block.sharing(new double[][] {{1}, {1}}, new double[][][] {{{1}}}));
    refused(() -> Block.sharing(new double[][] {{1}, {.5, .5}}, new double[][][] {{{1}}, {{1}}}));
    Block two = Block.single(new double[][] {{1}, {1}});
    refused(() -> new DiscreteModel(new double[] {1}, List.of(two)));
    refused(() -> new DiscreteModel(new double[] {.5, .6}, List.of(two)));
    refused(() -> new DiscreteModel(new double[0], List.of()));
  }

  private static void refused(org.junit.jupiter.api.function.Executable code) {
    assertThrows(IllegalArgumentException.class, code);
  }
}
