package kelter.core.diagnosis.symptom.exact;

import java.util.Arrays;
import kelter.core.numeric.Rounding;

/**
 * One state of each group.
 *
 * @param states the number of the state of each group
 * @param probability its probability, 0 to 1
 */
public record JointState(int[] states, double probability) implements Comparable<JointState> {

  /** The likeliest first; ties, but for rounding, in the order of the states. */
  @Override
  public int compareTo(JointState other) {
    int byProbability =
        Double.compare(Rounding.toCompare(other.probability), Rounding.toCompare(probability));
    return byProbability != 0 ? byProbability : Arrays.compare(states, other.states);
  }
}
