package kelter.core.safety.lockout;

import java.util.Objects;

/**
 * Something that makes a row of the table hold.
 *
 * @param sort what kind of thing it is
 * @param about the id of the symptom, or {@code component.observable} of what was read; empty for
 *     the kind of machine
 * @param text the same for a person
 */
public record Ground(Sort sort, String about, String text) {

  /** What makes rows hold. */
  public enum Sort {
    /** What the owner says. */
    SYMPTOM("symptom"),
    /** A reading beyond a limit of the row. */
    READING("reading"),
    /** A finding of a module that keeps the machine unplugged. */
    FINDING("finding"),
    /** What such machines are. */
    KIND("kind-of-machine");

    private final String id;

    Sort(String id) {
      this.id = id;
    }

    /**
     * The word for programs; it stays the same when the words change.
     *
     * @return lower-case letters and hyphens
     */
    public String id() {
      return id;
    }
  }

  public Ground {
    Objects.requireNonNull(sort);
    Objects.requireNonNull(about);
    Objects.requireNonNull(text);
  }

  static Ground ofSymptom(String symptom, String title) {
    return new Ground(Sort.SYMPTOM, symptom, title);
  }

  static Ground ofReading(Sort sort, String component, String observable, String shown) {
    String words = component + " " + observable.replace('-', ' ') + " " + shown;
    return new Ground(sort, component + "." + observable, words.strip());
  }
}
