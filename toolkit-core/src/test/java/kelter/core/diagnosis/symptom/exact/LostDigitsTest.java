package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Twelve groups of twelve states that hardly make what was reported, against sums with signs
 * (Heckerman 1989, Quickscore) with 60 decimal digits. With the digits of a double these sums lose
 * all of them here.
 */
class LostDigitsTest {

  private static final MathContext DIGITS = new MathContext(60);
  private static final int GROUPS = 12;
  private static final int STATES = 12;

  @ParameterizedTest
  @DisplayName("All symptoms reported, no report wrong")
  @CsvSource({"1e-3, .05, 1, 8", "1e-4, .01, .3, 4", "1e-6, .001, .1, 8"})
  void noDigitsAreLost(double leak, double prior, double most, int symptoms) {
    double[][][] chance = chances(most, symptoms);
    SymptomPosterior posterior = posterior(leak, prior, chance);
    BigDecimal[][] expected = marginals(leak, prior, chance);
    for (int g = 0; g < GROUPS; g++) {
      for (int x = 0; x < STATES; x++) {
        double exact = expected[g][x].doubleValue();
        assertTrue(exact > 0);
        assertEquals(1, posterior.marginal(g, x) / exact, 2e-14, g + "." + x);
      }
    }
  }

  private static double[][][] chances(double most, int symptoms) {
    Random random = new Random(11);
    double[][][] chance = new double[GROUPS][STATES][symptoms];
    for (double[][] ofGroup : chance) {
      for (int x = 1; x < STATES; x++) {
        for (int i = 0; i < symptoms; i++) {
          ofGroup[x][i] = most * random.nextDouble();
        }
      }
    }
    return chance;
  }

  private static SymptomPosterior posterior(double leak, double prior, double[][][] chance) {
    List<GroupChances> groups = new ArrayList<>();
    int symptoms = chance[0][0].length;
    for (double[][] ofGroup : chance) {
      List<StateChances> states = new ArrayList<>();
      states.add(StateChances.Nodes.silent(Math.log(1 - prior), symptoms));
      for (int x = 1; x < STATES; x++) {
        double[][] makes = new double[symptoms][];
        for (int i = 0; i < symptoms; i++) {
          makes[i] = new double[] {ofGroup[x][i]};
        }
        states.add(new StateChances.Nodes(Math.log(prior / (STATES - 1)), new double[] {1}, makes));
      }
      groups.add(new GroupChances(Math.log(1 - prior), states));
    }
    List<Background> leaks = new ArrayList<>();
    List<Report> yes = new ArrayList<>();
    for (int i = 0; i < symptoms; i++) {
      leaks.add(new Background(leak, leak));
      yes.add(new Report(1, 0, 1));
    }
    // The sound machine has the prior that the groups give it.
    double sound = Math.pow(1 - prior, GROUPS);
    return SymptomPosterior.of(new MachineChances(groups, sound), new Reports(leaks, yes));
  }

  /** P(all there) = sum over T of (-1)^|T| P(none of T). */
  private static BigDecimal[][] marginals(double leak, double prior, double[][][] chance) {
    BigDecimal[][] marginal = new BigDecimal[GROUPS][STATES];
    BigDecimal total = BigDecimal.ZERO;
    for (BigDecimal[] ofGroup : marginal) {
      java.util.Arrays.fill(ofGroup, BigDecimal.ZERO);
    }
    int symptoms = chance[0][0].length;
    for (int set = 0; set < 1 << symptoms; set++) {
      BigDecimal[][] none = new BigDecimal[GROUPS][STATES];
      BigDecimal[] ofGroup = new BigDecimal[GROUPS];
      BigDecimal product = sign(set).multiply(noneOf(set, leaks(symptoms, leak)), DIGITS);
      for (int g = 0; g < GROUPS; g++) {
        ofGroup[g] = BigDecimal.ZERO;
        for (int x = 0; x < STATES; x++) {
          double weight = x == 0 ? 1 - prior : prior / (STATES - 1);
          none[g][x] = noneOf(set, chance[g][x]).multiply(new BigDecimal(weight), DIGITS);
          ofGroup[g] = ofGroup[g].add(none[g][x], DIGITS);
        }
        product = product.multiply(ofGroup[g], DIGITS);
      }
      total = total.add(product, DIGITS);
      for (int g = 0; g < GROUPS; g++) {
        BigDecimal others = product.divide(ofGroup[g], DIGITS);
        for (int x = 0; x < STATES; x++) {
          marginal[g][x] = marginal[g][x].add(others.multiply(none[g][x], DIGITS), DIGITS);
        }
      }
    }
    for (BigDecimal[] each : marginal) {
      for (int x = 0; x < STATES; x++) {
        each[x] = each[x].divide(total, DIGITS);
      }
    }
    return marginal;
  }

  private static double[] leaks(int symptoms, double leak) {
    double[] leaks = new double[symptoms];
    java.util.Arrays.fill(leaks, leak);
    return leaks;
  }

  private static BigDecimal sign(int set) {
    return Integer.bitCount(set) % 2 == 0 ? BigDecimal.ONE : BigDecimal.ONE.negate();
  }

  private static BigDecimal noneOf(int set, double[] chance) {
    BigDecimal none = BigDecimal.ONE;
    for (int i = 0; i < chance.length; i++) {
      if ((set >> i & 1) == 1) {
        none = none.multiply(BigDecimal.ONE.subtract(new BigDecimal(chance[i])), DIGITS);
      }
    }
    return none;
  }
}
