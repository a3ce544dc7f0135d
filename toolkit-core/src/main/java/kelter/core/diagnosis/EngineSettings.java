package kelter.core.diagnosis;

import java.util.Objects;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;

/**
 * What the engine takes for granted. All chances are from memory; they set how readily it doubts a
 * reading, its own catalogue of faults, and the complaint.
 *
 * @param blunder the chance that a reading is wrong altogether: misread, miswritten, taken at the
 *     wrong place
 * @param unexplained the prior probability that a group of components does what no known fault
 *     explains
 * @param nothingFound the prior probability that nothing is wrong although somebody complains
 * @param soundIfUnasked the prior probability that nothing is wrong if nobody complains
 * @param coincidence by how much the odds of a fault are lower in a machine that may have others as
 *     well, as a ratio; 1 where faults come together as if by chance. The catalogue tells how often
 *     a cause is met where somebody complains, and mostly one cause is behind a complaint
 * @param mostHazard the most dangerous way of measuring that may be proposed
 * @param mostFaults how many faults of one model a state may hold at once, 1 or 2
 */
public record EngineSettings(
    double blunder,
    double unexplained,
    double nothingFound,
    double soundIfUnasked,
    double coincidence,
    Hazard mostHazard,
    int mostFaults) {

  /** The usual settings: single faults and pairs, no live work. */
  public static final EngineSettings USUAL =
      new EngineSettings(0.01, 0.03, 0.1, 0.9, 0.1, Hazard.RUNNING, 2);

  /** Where the chances come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "chance of a blunder, of an unknown fault, of an unfounded complaint and of a second"
              + " fault");

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if one is not above 0 and below 1, the ratio of coincidence is
   *     not above 0 and up to 1, or a state may hold no fault or more than two
   */
  public EngineSettings {
    Objects.requireNonNull(mostHazard);
    for (double chance : new double[] {blunder, unexplained, nothingFound, soundIfUnasked}) {
      if (!(chance > 0 && chance < 1)) {
        throw new IllegalArgumentException("a chance of the engine lies above 0 and below 1");
      }
    }
    if (!(coincidence > 0 && coincidence <= 1)) {
      throw new IllegalArgumentException("the ratio of coincidence lies above 0 and up to 1");
    }
    if (mostFaults < 1 || mostFaults > 2) {
      throw new IllegalArgumentException("a state holds one fault or two");
    }
  }

  /**
   * The same for a kind of machine.
   *
   * @param ofUnfounded the share of complaints for which no cause is found
   * @param ofUnknown the share of complaints whose cause nobody names
   * @param groups over how many groups of components what is unknown is spread, 1 or more
   * @return the settings, in which the odds of what is unknown are as its share
   */
  public EngineSettings forKind(double ofUnfounded, double ofUnknown, int groups) {
    double each = ofUnknown / groups;
    return new EngineSettings(
        blunder,
        each / (1 + each),
        ofUnfounded,
        soundIfUnasked,
        coincidence,
        mostHazard,
        mostFaults);
  }

  /**
   * The same for a technician who is competent for live work, or is not.
   *
   * @param competent whether measurements on live parts may be proposed
   * @return the settings
   */
  public EngineSettings forLiveWork(boolean competent) {
    return upTo(competent ? Hazard.LIVE : Hazard.RUNNING);
  }

  private EngineSettings upTo(Hazard most) {
    return new EngineSettings(
        blunder, unexplained, nothingFound, soundIfUnasked, coincidence, most, mostFaults);
  }

  /**
   * A chance by itself turned into that beside others: its odds times the coincidence.
   *
   * @param chance a chance, 0 or more and below 1
   * @return the chance in a machine that may have other faults as well
   */
  public double beside(double chance) {
    return beside(chance, coincidence);
  }

  /**
   * The same for any coincidence.
   *
   * @param chance a chance, 0 or more and below 1
   * @param coincidence the ratio of the odds, above 0 and up to 1
   * @return the chance with its odds times the ratio
   */
  public static double beside(double chance, double coincidence) {
    double odds = coincidence * chance / (1 - chance);
    return odds / (1 + odds);
  }

  /**
   * Whether a measurement may be proposed.
   *
   * @param hazard how it is taken
   * @return false if that is more dangerous than allowed
   */
  public boolean allows(Hazard hazard) {
    return hazard.compareTo(mostHazard) <= 0;
  }
}
