package kelter.core.diagnosis.symptom;

/**
 * How often a symptom of the whole machine is there without any group, and what hides it.
 *
 * <p>Causes combine by noisy-OR with a leak: P(i) = 1 - (1 - leak) prod (1 - p) over the causes
 * that are there. Sources: Pearl, Probabilistic Reasoning in Intelligent Systems (1988), 4.3.2;
 * Henrion, Uncertainty in Artificial Intelligence (1987), for the leak; both from memory.
 *
 * @param leak the chance, 0 to 1, that something makes it which no group stands for, where at least
 *     one group is in a state other than nothing wrong
 * @param leakWhenSound the same where nothing at all is wrong: how often it is named among
 *     complaints in which nothing is found, 0 to 1
 * @param maskers the places of the symptoms each of which, if there, hides this one
 */
public record Background(double leak, double leakWhenSound, int... maskers) {

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if a chance is not from 0 to 1
   */
  public Background {
    Chance.require("the leak of a symptom", leak);
    Chance.require("the leak of a symptom in a sound machine", leakWhenSound);
  }
}
