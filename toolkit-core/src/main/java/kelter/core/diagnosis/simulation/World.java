package kelter.core.diagnosis.simulation;

import kelter.core.diagnosis.EngineSettings;

/**
 * By which chances machines and readings are drawn. Which faults a machine has follows from their
 * own priors: each is there or not by itself, so that a pair has the product of two priors.
 *
 * @param nothingWrong the chance that nothing is wrong with a machine, 0 to 1
 * @param unexplained the chance that a group of components does what no known fault explains, 0 to
 *     1; its readings then lie anywhere in their spans
 * @param coincidence by how much the odds of a fault are lower in a machine that may have others as
 *     well, as a ratio, above 0 and up to 1
 * @param blunder the chance that a reading is wrong altogether, 0 to 1; it then lies anywhere in
 *     its span
 * @param mostTogether at most so many faults in one group of components, 1 or more
 */
public record World(
    double nothingWrong, double unexplained, double coincidence, double blunder, int mostTogether) {

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if one is not 0 to 1, or there can be no fault at all
   */
  public World {
    for (double chance : new double[] {nothingWrong, unexplained, blunder}) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException("a chance of " + chance + "; 0 to 1 is allowed");
      }
    }
    if (!(coincidence > 0 && coincidence <= 1)) {
      throw new IllegalArgumentException(
          "a coincidence of " + coincidence + "; above 0 and up to 1 is allowed");
    }
    if (mostTogether < 1) {
      throw new IllegalArgumentException(mostTogether + " faults together; 1 or more are allowed");
    }
  }

  /**
   * A chance by itself turned into that in a machine that may have other faults as well.
   *
   * @param chance a chance, 0 or more and below 1
   * @return the chance with its odds times the coincidence
   */
  public double beside(double chance) {
    return EngineSettings.beside(chance, coincidence);
  }

  /**
   * The world that an engine takes for granted where somebody complains.
   *
   * @param settings of the engine
   * @return the chances
   */
  public static World of(EngineSettings settings) {
    return new World(
        settings.nothingFound(),
        settings.unexplained(),
        settings.coincidence(),
        settings.blunder(),
        settings.mostFaults());
  }
}
