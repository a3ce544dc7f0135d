package kelter.core.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Three multipliers and two adders: X = AC (M1), Y = BD (M2), Z = CE (M3), F = X + Y (A1), G = Y +
 * Z (A2) with A = 3, B = 2, C = 2, D = 3, E = 3. F should be 12 and is 10; G is 12 as it should be.
 *
 * <p>The problem is that of de Kleer and Williams, Diagnosing multiple faults, Artificial
 * Intelligence 32 (1987) 97 (abstract seen; conflicts and diagnoses from memory). Probabilities are
 * arithmetic on it, done outside the project.
 */
class PolyboxTest {

  private static final int A1 = 1;
  private static final int A2 = 2;
  private static final int M1 = 4;
  private static final int M2 = 8;
  private static final int M3 = 16;

  /** The digits of expected entropies are cut off after the twelfth, not rounded. */
  private static final double CUT_OFF = 1.01e-12;

  private static final int SUBSETS = 32;
  private static final int VALUES = 16;
  private static final int PRODUCT = 6;

  private static double[] prior(double failed) {
    double[] prior = new double[SUBSETS];
    Arrays.setAll(
        prior,
        s -> Math.pow(failed, Integer.bitCount(s)) * Math.pow(1 - failed, 5 - Integer.bitCount(s)));
    return prior;
  }

  /** Whether some outputs of the failed parts explain what was seen. */
  private static boolean consistent(int failed) {
    for (int x = 0; x < VALUES; x++) {
      for (int y = 0; y < VALUES; y++) {
        for (int z = 0; z < VALUES; z++) {
          boolean products =
              ((failed & M1) != 0 || x == PRODUCT)
                  && ((failed & M2) != 0 || y == PRODUCT)
                  && ((failed & M3) != 0 || z == PRODUCT);
          boolean sums = ((failed & A1) != 0 || x + y == 10) && ((failed & A2) != 0 || y + z == 12);
          if (products && sums) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static double[] byConsistency(double failed) {
    double[][] table = new double[SUBSETS][];
    Arrays.setAll(table, s -> consistent(s) ? new double[] {1, 0} : new double[] {0, 1});
    return new DiscreteModel(prior(failed), List.of(Block.single(table))).posterior(new int[] {0});
  }

  private static double marginal(double[] posterior, int part) {
    double sum = 0;
    for (int s = 0; s < SUBSETS; s++) {
      sum += (s & part) != 0 ? posterior[s] : 0;
    }
    return sum;
  }

  @Test
  void conflictsAndDiagnoses() {
    double[] posterior = byConsistency(.01);

    assertEquals(27, Arrays.stream(posterior).filter(p -> p > 0).count());
    assertEquals(Set.of(A1, M1, A2 | M2, M2 | M3), least(s -> posterior[s] > 0));
    // A conflict is a set of parts of which every diagnosis blames one.
    IntPredicate conflict =
        set -> {
          for (int s = 0; s < SUBSETS; s++) {
            if (posterior[s] > 0 && (s & set) == 0) {
              return false;
            }
          }
          return true;
        };
    assertEquals(Set.of(A1 | M1 | M2, A1 | A2 | M1 | M3), least(conflict));
  }

  /** The sets that have the property while no set within them has it. */
  private static Set<Integer> least(IntPredicate property) {
    Set<Integer> least = new TreeSet<>();
    for (int s = 0; s < SUBSETS; s++) {
      if (property.test(s)) {
        boolean within = false;
        for (int smaller : least) {
          within |= (smaller & s) == smaller;
        }
        if (!within) {
          least.add(s);
        }
      }
    }
    return least;
  }

  @Test
  @DisplayName("2.1: consistency alone, parts fail with .01 or .05")
  void consistencyAlone() {
    double[] posterior = byConsistency(.01);

    assertEquals(.478026, posterior[A1], 5.01e-7);
    assertEquals(.478026, posterior[M1], 5.01e-7);
    assertEquals(.004829, posterior[A1 | A2], 5.01e-7);
    assertEquals(.497635, marginal(posterior, A1), 5.01e-7);
    assertEquals(.497635, marginal(posterior, M1), 5.01e-7);
    assertEquals(.019609, marginal(posterior, M2), 5.01e-7);
    assertEquals(.014780, marginal(posterior, A2), 5.01e-7);
    assertEquals(.014780, marginal(posterior, M3), 5.01e-7);
    assertEquals(.942296, Entropy.bits(posterior) * Math.log(2), 5.01e-7);

    posterior = byConsistency(.05);
    assertEquals(.399661, posterior[A1], 5.01e-7);
    assertEquals(.490679, marginal(posterior, A1), 5.01e-7);
    assertEquals(.091018, marginal(posterior, M2), 5.01e-7);
    assertEquals(.069983, marginal(posterior, A2), 5.01e-7);
  }

  @Test
  @DisplayName("2.1: among the diagnoses of one part, X tells all and Y and Z nothing")
  void crudeEstimates() {
    // {A1}: X, Y and Z are 6; {M1}: X is 4.
    Block x = Block.single(new double[][] {{0, 1}, {1, 0}});
    Block y = Block.single(new double[][] {{0, 1}, {0, 1}});
    Belief belief =
        new DiscreteModel(new double[] {.5, .5}, List.of(x, y)).given(new int[] {-1, -1});
    double[] bits = belief.information();
    // sum_v n_v ln n_v over the two diagnoses.
    double scale = 2 * Math.log(2);

    assertEquals(0, scale * (belief.entropy() - bits[0]), 1e-15);
    assertEquals(1.386294, scale * (belief.entropy() - bits[1]), 5.01e-7);
  }

  /** What the parts put out: their product, or anything from 0 to 15 if they failed. */
  private static DiscreteModel generative() {
    int shared = VALUES * VALUES * VALUES;
    double[][] products = new double[SUBSETS][shared];
    double[][][] f = new double[SUBSETS][shared][];
    double[][][] g = new double[SUBSETS][shared][];
    double[][] ofX = new double[shared][];
    double[][] ofY = new double[shared][];
    double[][] ofZ = new double[shared][];
    for (int l = 0; l < shared; l++) {
      int x = l / (VALUES * VALUES);
      int y = l / VALUES % VALUES;
      int z = l % VALUES;
      ofX[l] = exactly(x);
      ofY[l] = exactly(y);
      ofZ[l] = exactly(z);
      for (int s = 0; s < SUBSETS; s++) {
        products[s][l] = output(s, M1, x) * output(s, M2, y) * output(s, M3, z);
        f[s][l] = seen((s & A1) != 0, x + y == 10);
        g[s][l] = seen((s & A2) != 0, y + z == 12);
      }
    }
    return new DiscreteModel(
        prior(.01), List.of(Block.sharing(products, f, g, same(ofX), same(ofY), same(ofZ))));
  }

  private static final double[][] EXACTLY = new double[VALUES][VALUES];

  static {
    for (int value = 0; value < VALUES; value++) {
      EXACTLY[value][value] = 1;
    }
  }

  private static double[] exactly(int value) {
    return EXACTLY[value];
  }

  private static double[][][] same(double[][] table) {
    double[][][] all = new double[SUBSETS][][];
    Arrays.fill(all, table);
    return all;
  }

  private static double output(int failed, int part, int value) {
    return (failed & part) != 0 ? 1.0 / VALUES : value == PRODUCT ? 1 : 0;
  }

  private static final double[] BY_CHANCE = {1.0 / VALUES, 1 - 1.0 / VALUES};
  private static final double[] SURELY = {1, 0};
  private static final double[] NOT = {0, 1};

  private static double[] seen(boolean failed, boolean fits) {
    return failed ? BY_CHANCE : fits ? SURELY : NOT;
  }

  @Test
  @DisplayName("2.2: a failed part puts out anything from 0 to 15")
  void anythingFromAFailedPart() {
    DiscreteModel model = generative();
    int[] evidence = {0, 0, -1, -1, -1};
    Belief belief = model.given(evidence);
    double[] posterior = belief.posterior();

    assertEquals(.4962261, posterior[A1], 5.01e-8);
    assertEquals(.4962261, posterior[M1], 5.01e-8);
    assertEquals(.00501238, posterior[A1 | M1], 5.01e-9);
    assertEquals(.50219683, marginal(posterior, A1), 5.01e-9);
    assertEquals(.50219543, marginal(posterior, M1), 5.01e-9);
    assertEquals(.00126962, marginal(posterior, M2), 5.01e-9);
    assertEquals(.00095794, marginal(posterior, A2), 5.01e-9);
    assertEquals(.00095734, marginal(posterior, M3), 5.01e-9);
    assertEquals(1.071306914438, belief.entropy(), 5.01e-13);

    double[] bits = belief.information();
    assertEquals(.038302923740, belief.entropy() - bits[2], CUT_OFF);
    assertEquals(1.063543527404, belief.entropy() - bits[3], CUT_OFF);
    assertEquals(1.066986222265, belief.entropy() - bits[4], CUT_OFF);
    assertEquals(.498119, belief.outcomes(2)[6], 5.01e-7);
    assertEquals(.497483, belief.outcomes(2)[4], 5.01e-7);
    assertEquals(.99620023, belief.and(2, 6).posterior()[A1], 5.01e-9);
    assertEquals(.99747277, belief.and(2, 4).posterior()[M1], 5.01e-9);
    assertTrue(bits[2] > Math.max(bits[3], bits[4]), "measure X");
  }
}
