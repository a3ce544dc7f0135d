package kelter.core.log.change;

import java.util.Arrays;
import kelter.core.source.Source;

/**
 * Which of many differences count as changes, so that of those that count no more than a given
 * share is there by chance: the chances in rising order, {@code p(1) <= p(2) <= ...}, and all up to
 * the last one for which {@code p(i) <= i/m alpha}, with m differences tested.
 *
 * <p>It holds for differences that are independent of each other or move together.
 */
public final class FalseDiscovery {

  /** Where the rule comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Benjamini and Hochberg, Controlling the false discovery rate, J. R. Statist. Soc. B 57"
              + " (1995) 289, equation (1); dependence: Benjamini and Yekutieli, Ann. Statist. 29"
              + " (2001) 1165");

  /** The share of false ones among all that are told, 5 %. */
  public static final double RATE = 0.05;

  private FalseDiscovery() {}

  /**
   * The greatest chance that still counts as a change, of differences that are independent or move
   * together.
   *
   * @param chances the chance of each difference if nothing happened, from 0 to 1
   * @param tested how many differences were tested, no fewer than there are chances: those that are
   *     left out are taken as due to chance
   * @param rate the share of false ones among all that count, above 0 and below 1
   * @return the limit: what has this chance or a lower one counts; at least that of the first,
   *     alpha / m
   */
  public static double limit(double[] chances, int tested, double rate) {
    double[] rising = chances.clone();
    Arrays.sort(rising);
    double share = rate / Math.max(1, tested);
    int i = rising.length;
    while (i > 1 && rising[i - 1] > i * share) {
      i--;
    }
    return Math.max(1, i) * share;
  }
}
