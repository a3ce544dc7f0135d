package kelter.core.book;

import java.util.OptionalDouble;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * One reading that was taken on a job; its value is in the job file.
 *
 * @param component the kind of the component
 * @param observable what was read
 * @param instrument the id of the instrument; empty where it was seen or heard
 * @param minutes how long it took, 0 to 10,000
 * @param misled whether it turned out wrong altogether: misread, or the instrument at fault
 */
public record ReadingTaken(
    String component,
    String observable,
    String instrument,
    OptionalDouble minutes,
    boolean misled) {

  /**
   * Checks words and minutes.
   *
   * @throws IllegalArgumentException if a word is no id, or the minutes are outside their range
   */
  public ReadingTaken {
    Ids.require(component);
    Ids.require(observable);
    if (!Required.value(instrument, "instrument of a reading").isEmpty()) {
      Ids.require(instrument);
    }
    WorkDone.requireMinutes(minutes);
  }

  /**
   * What it is counted under.
   *
   * @return kind of component and observable, joined by a full stop
   */
  public String key() {
    return component + "." + observable;
  }
}
