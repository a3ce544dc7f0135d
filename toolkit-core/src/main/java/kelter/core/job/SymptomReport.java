package kelter.core.job;

import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * What was said of a symptom of the whole machine. A symptom of which nothing was said has no
 * report: silence is no answer.
 *
 * @param symptom the id of the symptom
 * @param answer what was said
 * @param when under which circumstances it shows, if it does not always
 * @param step at which step of the run, in the words of the owner; may be empty
 * @param since since when, in the words of the owner; may be empty
 */
public record SymptomReport(
    String symptom, Answer answer, Optional<Circumstance> when, String step, String since) {

  /** What somebody says who is asked. */
  public enum Answer {
    /** It is there. */
    YES("yes"),
    /** It is not. */
    NO("no"),
    /** It is there now and then. */
    SOMETIMES("sometimes");

    private final String id;

    Answer(String id) {
      this.id = id;
    }

    /**
     * The word in a file.
     *
     * @return lower-case letters
     */
    public String id() {
      return id;
    }
  }

  /** When a symptom shows. */
  public enum Circumstance {
    /** Once the machine is warm. */
    HOT("hot"),
    /** Once it is wet. */
    WET("wet");

    private final String id;

    Circumstance(String id) {
      this.id = id;
    }

    /**
     * The word in a file.
     *
     * @return lower-case letters
     */
    public String id() {
      return id;
    }
  }

  /**
   * Checks the word.
   *
   * @throws IllegalArgumentException if the symptom has no id
   */
  public SymptomReport {
    Ids.require(Required.value(symptom, "symptom of a report"));
    Required.value(answer, "answer of a report");
    Required.optional(when, "when a reported symptom shows");
    Required.value(step, "step of a reported symptom");
    Required.value(since, "since when a reported symptom is there");
  }

  /**
   * A plain answer.
   *
   * @param symptom the id of the symptom
   * @param answer what was said
   */
  public SymptomReport(String symptom, Answer answer) {
    this(symptom, answer, Optional.empty(), "", "");
  }
}
