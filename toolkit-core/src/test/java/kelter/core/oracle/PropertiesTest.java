package kelter.core.oracle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import kelter.core.oracle.decision.Advice;
import kelter.core.oracle.decision.Decision;
import kelter.core.oracle.decision.Repairs;
import kelter.core.oracle.decision.ValueOfInformation;
import org.junit.jupiter.api.Test;

/** What must hold of any problem, whatever its figures. */
class PropertiesTest {

  private static final int TRIALS = 30;
  private static final double EXACT = 1e-12;

  private static RandomProblem problem(int trial) {
    return new RandomProblem(1000 + trial, 2 + trial % 12, 2 + trial % 7, trial % 3 * 0.1);
  }

  private static double[] random(Random random, int n) {
    double[] p = random.doubles(n).map(x -> x + 0.01).toArray();
    double sum = Arrays.stream(p).sum();
    return Arrays.stream(p).map(x -> x / sum).toArray();
  }

  private static Repairs repairs(int states, Random random, double money) {
    int n = 1 + random.nextInt(4);
    double[] cost = random.doubles(n, 20, 120).map(x -> x * money).toArray();
    double[][] cure = new double[n][];
    for (int r = 0; r < n; r++) {
      cure[r] = random.doubles(states).map(x -> x < 0.5 ? 0 : x).toArray();
    }
    return Repairs.of(cost, cure, 260 * money);
  }

  @Test
  void aPosteriorSumsToOneAndInformationIsBounded() {
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      Belief belief = problem.model.given(problem.draw(0.4));

      assertEquals(1, Arrays.stream(belief.posterior()).sum(), EXACT);
      double[] bits = belief.information();
      for (int f = 0; f < bits.length; f++) {
        double[] outcomes = belief.outcomes(f);
        assertEquals(1, Arrays.stream(outcomes).sum(), EXACT);
        assertTrue(bits[f] >= 0 && bits[f] <= belief.entropy() + EXACT);
        assertTrue(bits[f] <= Entropy.bits(outcomes) + EXACT);
      }
    }
  }

  @Test
  void theOrderOfTheEvidenceDoesNotMatter() {
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      int[] evidence = problem.draw(0.7);
      List<Integer> order = new ArrayList<>();
      for (int f = 0; f < evidence.length; f++) {
        if (evidence[f] >= 0) {
          order.add(f);
        }
      }
      Collections.shuffle(order, new Random(trial));
      Belief oneByOne = problem.model.given(problem.model.nothingObserved());
      double log = 0;
      for (int f : order) {
        log += Math.log(oneByOne.outcomes(f)[evidence[f]]);
        oneByOne = oneByOne.and(f, evidence[f]);
      }

      assertArrayEquals(problem.model.posterior(evidence), oneByOne.posterior(), EXACT);
      // The chain rule, which the kernel does not use.
      assertEquals(log, problem.model.logEvidence(evidence), 1e-10);
    }
  }

  @Test
  void theOrderOfTheBlocksDoesNotMatter() {
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      int[] evidence = problem.draw(0.7);
      List<Block> backwards = new ArrayList<>(problem.blocks);
      Collections.reverse(backwards);
      int[] moved = new int[evidence.length];
      int to = evidence.length;
      int from = 0;
      for (Block block : problem.blocks) {
        to -= block.observables();
        System.arraycopy(evidence, from, moved, to, block.observables());
        from += block.observables();
      }

      assertArrayEquals(
          problem.model.posterior(evidence),
          new DiscreteModel(problem.prior, backwards).posterior(moved),
          EXACT);
    }
  }

  @Test
  void aNeutralReadingChangesNothing() {
    Random random = new Random(7);
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      int[] evidence = problem.draw(0.5);
      double[] same = random(random, 3);
      double[][] neutral = new double[problem.prior.length][];
      Arrays.fill(neutral, same);
      List<Block> more = new ArrayList<>(problem.blocks);
      more.add(Block.single(neutral));
      DiscreteModel model = new DiscreteModel(problem.prior, more);
      int[] longer = Arrays.copyOf(evidence, evidence.length + 1);
      longer[evidence.length] = DiscreteModel.NOT_OBSERVED;
      double[] bits = model.given(longer).information();

      assertEquals(0, bits[evidence.length], EXACT);
      longer[evidence.length] = 1;
      assertArrayEquals(problem.model.posterior(evidence), model.posterior(longer), EXACT);
    }
  }

  @Test
  void twoHalvesOfOneCauseHaveItsProbabilityTogether() {
    Random random = new Random(11);
    for (int trial = 0; trial < TRIALS; trial++) {
      int states = 3 + trial % 5;
      double[] prior = random(random, states);
      List<double[][]> tables = new ArrayList<>();
      for (int f = 0; f < 4; f++) {
        double[][] table = new double[states][];
        Arrays.setAll(table, s -> random(random, 3));
        tables.add(table);
      }
      double[] split = Arrays.copyOf(prior, states + 1);
      split[0] = 0.3 * prior[0];
      split[states] = 0.7 * prior[0];
      int[] evidence = {0, 2, 1, -1};
      double[] whole = model(prior, tables).posterior(evidence);
      double[] halves =
          model(
                  split,
                  tables.stream()
                      .map(
                          table -> {
                            double[][] wider = Arrays.copyOf(table, states + 1);
                            wider[states] = table[0];
                            return wider;
                          })
                      .toList())
              .posterior(evidence);

      assertEquals(whole[0], halves[0] + halves[states], EXACT);
      assertArrayEquals(
          Arrays.copyOfRange(whole, 1, states), Arrays.copyOfRange(halves, 1, states), EXACT);
    }
  }

  private static DiscreteModel model(double[] prior, List<double[][]> tables) {
    return new DiscreteModel(prior, tables.stream().map(Block::single).toList());
  }

  @Test
  void aBlurredReadingNeverTellsOrSavesMore() {
    Random random = new Random(13);
    for (int trial = 0; trial < TRIALS; trial++) {
      int states = 2 + trial % 6;
      double[] prior = random(random, states);
      double[][] sharp = new double[states][];
      Arrays.setAll(sharp, s -> random(random, 4));
      double[][] blur = new double[4][];
      Arrays.setAll(blur, o -> random(random, 4));
      double[][] blurred = new double[states][4];
      for (int s = 0; s < states; s++) {
        for (int o = 0; o < 4; o++) {
          for (int seen = 0; seen < 4; seen++) {
            blurred[s][seen] += sharp[s][o] * blur[o][seen];
          }
        }
      }
      DiscreteModel model = model(prior, List.of(sharp, blurred));
      double[] bits = model.given(model.nothingObserved()).information();
      double[] savings =
          new ValueOfInformation(model, repairs(states, random, 1), new double[2])
              .savings(model.nothingObserved());

      assertTrue(bits[1] <= bits[0] + EXACT, "trial " + trial);
      assertTrue(savings[1] <= savings[0] + 1e-9, "trial " + trial);
    }
  }

  @Test
  void aReadingSavesSomethingButNoMoreThanKnowing() {
    Random random = new Random(17);
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      int[] evidence = problem.draw(0.3);
      Decision decision = repairs(problem.prior.length, random, 1);
      double[] free = new double[evidence.length];
      ValueOfInformation value = new ValueOfInformation(problem.model, decision, free);
      double now = decision.leastCost(problem.model.posterior(evidence));
      double knowing = value.perfect(evidence);
      Advice advice = value.advise(evidence, evidence.length);

      assertTrue(now <= 260 + 1e-9, "never more than the service");
      for (int f = 0; f < evidence.length; f++) {
        double saving = value.savings(evidence)[f];
        assertTrue(saving >= 0 && saving <= knowing + 1e-9);
        assertTrue(evidence[f] < 0 || saving == 0);
      }
      for (Advice.Reading reading : advice.readings()) {
        assertTrue(reading.expectedCostWithSecond() <= reading.expectedCost());
        assertTrue(now - reading.expectedCostWithSecond() <= knowing + 1e-9);
        // The saving is not clipped: the raw difference is never below nothing.
        double after = 0;
        for (double[] weight : problem.model.given(evidence).joint(reading.observable())) {
          after += decision.leastCost(weight);
        }
        assertTrue(now - after >= -1e-9);
      }
    }
  }

  @Test
  void anotherCurrencyChangesNoDecision() {
    for (int trial = 0; trial < TRIALS; trial++) {
      RandomProblem problem = problem(trial);
      int[] evidence = problem.draw(0.3);
      Advice here = advise(problem, evidence, new Random(trial), 1);
      Advice there = advise(problem, evidence, new Random(trial), 64);

      assertEquals(here.enough(), there.enough());
      assertEquals(64 * here.costNow(), there.costNow(), 1e-9);
      for (int i = 0; i < here.readings().size(); i++) {
        assertEquals(here.readings().get(i).observable(), there.readings().get(i).observable());
      }
    }
  }

  private static Advice advise(RandomProblem problem, int[] evidence, Random random, double money) {
    double[] prices = random.doubles(evidence.length, 1, 9).map(x -> x * money).toArray();
    Repairs repairs = repairs(problem.prior.length, random, money);
    return new ValueOfInformation(problem.model, repairs, prices).advise(evidence, 3);
  }
}
