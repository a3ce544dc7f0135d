package kelter.core.job;

import java.util.List;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * What was read of an observable: one reading, or several of the same thing under the same
 * conditions.
 *
 * @param component the id of the component
 * @param observable the word for the observable
 * @param readings one reading or more
 * @param conditions the circumstances
 * @param instrument the id of the instrument, if one is named
 * @param note a remark, may be empty
 * @param stage whether it was read before or after the work
 */
public record Measurement(
    String component,
    String observable,
    List<Reading> readings,
    Conditions conditions,
    Optional<String> instrument,
    String note,
    Stage stage) {

  private static final int MOST_SHOWN = 5;

  /** When in the course of a job something is read. */
  public enum Stage {
    /** Before the work. */
    AS_FOUND("as-found"),
    /** After the work. */
    AS_LEFT("as-left");

    private final String id;

    Stage(String id) {
      this.id = id;
    }

    /**
     * The word in a job file.
     *
     * @return lower-case letters and a hyphen
     */
    public String id() {
      return id;
    }
  }

  /**
   * What was read before the work.
   *
   * @param component the id of the component
   * @param observable the word for the observable
   * @param readings one reading or more
   * @param conditions the circumstances
   * @param instrument the id of the instrument, if one is named
   * @param note a remark, may be empty
   * @throws IllegalArgumentException if there is no reading
   */
  public Measurement(
      String component,
      String observable,
      List<Reading> readings,
      Conditions conditions,
      Optional<String> instrument,
      String note) {
    this(component, observable, readings, conditions, instrument, note, Stage.AS_FOUND);
  }

  /**
   * Checks the readings.
   *
   * @throws IllegalArgumentException if there is no reading
   */
  public Measurement {
    Ids.require(Required.value(component, "component of a measurement"));
    Ids.require(Required.value(observable, "observable of a measurement"));
    readings = Required.list(readings, "readings of a measurement");
    Required.value(conditions, "conditions of a measurement");
    Required.optional(instrument, "instrument of a measurement");
    Required.value(note, "note of a measurement");
    Required.value(stage, "stage of a measurement");
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a measurement has a reading");
    }
  }

  /**
   * Whether it stands in place of an earlier one: of the same thing at the same stage, under
   * conditions that are alike and tell all that those of the earlier one tell, so that a cold
   * reading does not stand in place of a warm one.
   *
   * @param earlier a measurement of the same job before this one
   * @return true if the earlier one does not count any more
   * @see Conditions#isAlike(Conditions)
   */
  public boolean supersedes(Measurement earlier) {
    return component.equals(earlier.component)
        && observable.equals(earlier.observable)
        && stage == earlier.stage
        && conditions.figures().keySet().containsAll(earlier.conditions.figures().keySet())
        && earlier.conditions.isAlike(conditions);
  }

  /** The readings as they are told to a person: the first five, and how many there are. */
  public String shown() {
    StringBuilder all = new StringBuilder();
    for (Reading reading : readings.subList(0, Math.min(MOST_SHOWN, readings.size()))) {
      all.append(all.isEmpty() ? "" : ", ").append(reading.display());
    }
    if (readings.size() > MOST_SHOWN) {
      all.append(" and ").append(readings.size() - MOST_SHOWN).append(" more");
    }
    return all.toString();
  }
}
