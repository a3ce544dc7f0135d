package kelter.core.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * Something that the machine as a whole does wrong, as its owner would tell it. Faults of any
 * component may make it; which do, and how often, the modules and the kinds of machines know.
 *
 * @param id the word for it in files, unique among all symptoms
 * @param title what the machine does, for a person, to be read behind "the machine"
 * @param question what to ask the owner
 * @param leak the chance, 0 to 1, that it is there beside another cause for a reason that nobody
 *     looks for
 * @param amongUnfounded the chance, 0 to 1, that it is named in a complaint for which no cause is
 *     found
 * @param misreports how often it is reported wrongly
 * @param maskedBy the ids of symptoms each of which, if there, hides this one: who cannot start the
 *     machine does not know whether it drains
 */
public record Symptom(
    String id,
    String title,
    String question,
    double leak,
    double amongUnfounded,
    Misreports misreports,
    List<String> maskedBy) {

  /**
   * How often people report a symptom wrongly.
   *
   * @param falseYes the chance of a yes where it is absent, above 0 and below 1
   * @param falseNo the chance of a no where it is there, above 0 and below 1
   * @param yesWhenMasked the chance of a yes where another symptom hides it, above 0 and below 1
   */
  public record Misreports(double falseYes, double falseNo, double yesWhenMasked) {

    /** What nobody overlooks or mistakes; from memory. */
    public static final Misreports PLAIN = new Misreports(0.005, 0.05, 0.05);

    /**
     * What has to be compared with how it was, or looked for. A caller names one or two of some
     * forty symptoms, so that few of those can be wrong; from memory.
     */
    public static final Misreports SUBTLE = new Misreports(0.02, 0.2, 0.05);

    /**
     * What happens slowly: compared with how it was, and told of what does not happen at all; from
     * memory.
     */
    public static final Misreports OF_DEGREE = new Misreports(0.02, 0.2, 0.3);

    /** What the machine shows of itself; from memory. */
    public static final Misreports SHOWN = new Misreports(0.01, 0.05, 0.02);

    /**
     * Checks the chances.
     *
     * @throws IllegalArgumentException if one is not above 0 and below 1
     */
    public Misreports {
      for (double chance : new double[] {falseYes, falseNo, yesWhenMasked}) {
        if (!(chance > 0 && chance < 1)) {
          throw new IllegalArgumentException("a wrong report has a chance above 0 and below 1");
        }
      }
    }
  }

  /**
   * Checks the word and the chances.
   *
   * @throws IllegalArgumentException if the id is not one, a chance is not from 0 to 1, or it hides
   *     itself
   */
  public Symptom {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(question);
    Objects.requireNonNull(misreports);
    maskedBy = List.copyOf(maskedBy);
    for (double chance : new double[] {leak, amongUnfounded}) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException(id + ": a chance of a symptom lies from 0 to 1");
      }
    }
    if (maskedBy.contains(id)) {
      throw new IllegalArgumentException(id + ": a symptom does not hide itself");
    }
  }

  /**
   * The same, hidden by others.
   *
   * @param others each of which hides it
   * @return the symptom
   */
  Symptom hiddenBy(Symptom... others) {
    List<String> ids = java.util.Arrays.stream(others).map(Symptom::id).toList();
    return new Symptom(id, title, question, leak, amongUnfounded, misreports, ids);
  }

  /**
   * The same, named more or less often where nothing is found.
   *
   * @param chance the chance, 0 to 1, that it is named in a complaint for which no cause is found
   * @return the symptom
   */
  public Symptom amongUnfounded(double chance) {
    return new Symptom(id, title, question, leak, chance, misreports, maskedBy);
  }
}
