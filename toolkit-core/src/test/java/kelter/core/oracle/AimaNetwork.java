package kelter.core.oracle;

import aima.core.probability.RandomVariable;
import aima.core.probability.bayes.BayesianNetwork;
import aima.core.probability.bayes.FiniteNode;
import aima.core.probability.bayes.Node;
import aima.core.probability.bayes.exact.EliminationAsk;
import aima.core.probability.bayes.impl.BayesNet;
import aima.core.probability.bayes.impl.FullCPTNode;
import aima.core.probability.domain.ArbitraryTokenDomain;
import aima.core.probability.proposition.AssignmentProposition;
import aima.core.probability.util.RandVar;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A network of the independent library aima-core 3.0.0 (variable elimination). Node 0 is the state;
 * outcomes are numbered.
 */
public final class AimaNetwork {

  private final List<FiniteNode> nodes = new ArrayList<>();
  private BayesianNetwork network;

  /** Makes a network without nodes. */
  public AimaNetwork() {}

  /**
   * Adds a node.
   *
   * @param outcomes how many outcomes it has
   * @param table the probability of each outcome, the last parent changing fastest but the outcome
   * @param parents the numbers of its parents
   * @return its number
   */
  public int add(int outcomes, double[] table, int... parents) {
    Object[] values = IntStream.range(0, outcomes).boxed().toArray();
    RandVar variable = new RandVar("N" + nodes.size(), new ArbitraryTokenDomain(values));
    Node[] above = IntStream.of(parents).mapToObj(nodes::get).toArray(Node[]::new);
    nodes.add(new FullCPTNode(variable, table, above));
    return nodes.size() - 1;
  }

  /**
   * One finding, ready to be used as evidence.
   *
   * @param node the number of the node
   * @param outcome the number of the outcome
   * @return the evidence
   */
  public AssignmentProposition finding(int node, int outcome) {
    return new AssignmentProposition(nodes.get(node).getRandomVariable(), outcome);
  }

  /**
   * The posterior of a node.
   *
   * @param node its number
   * @param evidence what was found
   * @return the probability of each outcome
   */
  public double[] ask(int node, AssignmentProposition... evidence) {
    if (network == null) {
      network = new BayesNet(nodes.get(0));
    }
    RandomVariable[] query = {nodes.get(node).getRandomVariable()};
    return new EliminationAsk().ask(query, evidence, network).getValues();
  }
}
