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
 * @param mostHazard the most dangerous way of measuring that may be proposed
 * @param mostFaults how many faults of one model a state may hold at once, 1 or 2
 */
public record EngineSettings(
    double blunder,
    double unexplained,
    double nothingFound,
    double soundIfUnasked,
    Hazard mostHazard,
    int mostFaults) {

  /** The usual settings: single faults and pairs, no live work. */
  public static final EngineSettings USUAL =
      new EngineSettings(0.01, 0.03, 0.1, 0.9, Hazard.RUNNING, 2);

  /** Where the chances come from. */
  public static final Source SOURCE =
      Source.fromMemory("chance of a blunder, of an unknown fault and of an unfounded complaint");

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if one is not above 0 and below 1, or a state may hold no
   *     fault or more than two
   */
  public EngineSettings {
    Objects.requireNonNull(mostHazard);
    for (double chance : new double[] {blunder, unexplained, nothingFound, soundIfUnasked}) {
      if (!(chance > 0 && chance < 1)) {
        throw new IllegalArgumentException("a chance of the engine lies above 0 and below 1");
      }
    }
    if (mostFaults < 1 || mostFaults > 2) {
      throw new IllegalArgumentException("a state holds one fault or two");
    }
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

  /**
   * The same for a machine that must not be powered.
   *
   * @return the settings
   */
  public EngineSettings unplugged() {
    return upTo(Hazard.DEAD);
  }

  private EngineSettings upTo(Hazard most) {
    return new EngineSettings(blunder, unexplained, nothingFound, soundIfUnasked, most, mostFaults);
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
