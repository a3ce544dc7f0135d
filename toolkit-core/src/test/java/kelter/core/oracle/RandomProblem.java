package kelter.core.oracle;

import aima.core.probability.proposition.AssignmentProposition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A problem drawn at random, for the kernel and for the independent library aima-core 3.0.0. */
final class RandomProblem {

  private final Random random;
  private final int states;
  private final double chanceOfZero;
  final double[] prior;
  final List<Block> blocks = new ArrayList<>();
  final AimaNetwork aima = new AimaNetwork();
  final List<Integer> nodes = new ArrayList<>();
  final DiscreteModel model;

  RandomProblem(long seed, int states, int observables, double chanceOfZero) {
    this.random = new Random(seed);
    this.states = states;
    this.chanceOfZero = chanceOfZero;
    this.prior = distribution(states, 0);
    aima.add(states, prior);
    while (nodes.size() < observables) {
      int most = observables - nodes.size();
      if (random.nextBoolean()) {
        single();
      } else {
        sharing(Math.min(most, 1 + random.nextInt(4)));
      }
    }
    this.model = new DiscreteModel(prior, blocks);
  }

  private void single() {
    int outcomes = 2 + random.nextInt(4);
    double[][] table = new double[states][];
    Arrays.setAll(table, s -> distribution(outcomes, chanceOfZero));
    blocks.add(Block.single(table));
    nodes.add(aima.add(outcomes, Networks.flat(table), 0));
  }

  /** Some observables with something shared, which is among them or hidden. */
  private void sharing(int observables) {
    int values = 2 + random.nextInt(3);
    double[][] shared = new double[states][];
    Arrays.setAll(shared, s -> distribution(values, chanceOfZero));
    int node = aima.add(values, Networks.flat(shared), 0);
    double[][][][] tables = new double[observables][states][values][];
    for (int k = 0; k < observables; k++) {
      if (k == 0 && random.nextBoolean()) {
        tables[k] = Block.sharedItself(states, values);
        nodes.add(node);
        continue;
      }
      int outcomes = 2 + random.nextInt(3);
      for (double[][] ofState : tables[k]) {
        Arrays.setAll(ofState, l -> distribution(outcomes, chanceOfZero));
      }
      double[] flat =
          Arrays.stream(tables[k]).flatMapToDouble(t -> Arrays.stream(Networks.flat(t))).toArray();
      nodes.add(aima.add(outcomes, flat, 0, node));
    }
    blocks.add(Block.sharing(shared, tables));
  }

  private double[] distribution(int n, double zero) {
    double[] p = new double[n];
    for (int i = 0; i < n; i++) {
      p[i] = random.nextDouble() < zero ? 0 : -Math.log(1 - random.nextDouble());
    }
    p[random.nextInt(n)] += 0.1;
    double sum = Arrays.stream(p).sum();
    return Arrays.stream(p).map(x -> x / sum).toArray();
  }

  /** Draws outcomes that can be, for a share of the observables. */
  int[] draw(double share) {
    int[] evidence = model.nothingObserved();
    for (int f = 0; f < evidence.length; f++) {
      if (random.nextDouble() < share) {
        evidence[f] = pick(model.given(evidence).outcomes(f));
      }
    }
    return evidence;
  }

  private int pick(double[] p) {
    double at = random.nextDouble();
    int i = 0;
    while (i < p.length - 1 && at >= p[i]) {
      at -= p[i++];
    }
    return p[i] > 0 ? i : pick(p);
  }

  AssignmentProposition[] findings(int[] evidence) {
    List<AssignmentProposition> findings = new ArrayList<>();
    for (int f = 0; f < evidence.length; f++) {
      if (evidence[f] >= 0) {
        findings.add(aima.finding(nodes.get(f), evidence[f]));
      }
    }
    return findings.toArray(new AssignmentProposition[0]);
  }
}
