package kelter.core.job.work;

import java.util.List;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * A piece of work that was done.
 *
 * @param remedy the remedy, {@code component.remedy}, if it is one that a module knows; else empty
 * @param title what was done, for the owner; may be empty where the remedy says it
 * @param time how long it took, if it is told
 * @param parts what was put in
 * @param found what was found to be wrong, {@code component.fault} each
 * @param by who did it, may be empty
 * @param date the day, {@code yyyy-mm-dd}, may be empty
 * @param note a remark, may be empty
 */
public record WorkDone(
    Optional<String> remedy,
    String title,
    Optional<Quantity> time,
    List<PartUsed> parts,
    List<String> found,
    String by,
    String date,
    String note) {

  /**
   * Checks that it says what was done.
   *
   * @throws IllegalArgumentException if it has neither remedy nor title, or the time is not one
   */
  public WorkDone {
    Required.optional(remedy, "remedy of a piece of work");
    Required.value(title, "title of a piece of work");
    Required.optional(time, "time of a piece of work");
    parts = Required.list(parts, "parts of a piece of work");
    found = Required.list(found, "findings of a piece of work");
    Required.value(by, "who did a piece of work");
    Required.value(date, "day of a piece of work");
    Required.value(note, "note of a piece of work");
    if (remedy.isEmpty() && title.isBlank()) {
      throw new IllegalArgumentException("a piece of work tells its remedy, or has a title");
    }
    if (time.isPresent() && !(time.get().kind() == QuantityKind.TIME && time.get().si() >= 0)) {
      throw new IllegalArgumentException("a piece of work takes a time that is not negative");
    }
  }

  /**
   * The id of the component that was worked on.
   *
   * @return what stands before the full stop of the remedy; empty if there is none
   */
  public Optional<String> component() {
    return remedy.map(key -> key.substring(0, Math.max(0, key.indexOf('.'))));
  }

  /**
   * Whether it is work in own words for what it found to be wrong.
   *
   * @return false where it is a remedy that a module knows, or found nothing
   */
  public boolean isForWhatWasFound() {
    return remedy.isEmpty() && !found.isEmpty();
  }

  /**
   * What was worked on.
   *
   * @return the component of the remedy; of work in own words those of what was found
   */
  public List<String> components() {
    return component()
        .map(List::of)
        .orElseGet(
            () ->
                found.stream()
                    .map(key -> key.substring(0, Math.max(0, key.indexOf('.'))))
                    .distinct()
                    .toList());
  }
}
