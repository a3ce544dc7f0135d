package kelter.core.catalogue;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.vocabulary.Ids;

/**
 * A cause of calls to machines of a kind.
 *
 * @param part the id of the part
 * @param fault what is wrong with it
 * @param title what is wrong, for a person
 * @param share the chance, above 0 and below 1, that it is behind a call, at the typical age
 * @param split whether the share was split off one that several causes have together; the split is
 *     from memory
 * @param mend what mends it, where no module knows
 * @param several the word of a figure that counts like pieces of the part; the cause is met only
 *     where there is more than one of them; empty for other causes
 * @param wear the shape of the Weibull life of the part, above 0, if its share depends on age
 * @param symptoms by the id of a symptom the chance, 0 to 1, that the cause makes it at middling
 *     severity; what is not named it does not make
 */
public record KindCause(
    String part,
    String fault,
    String title,
    double share,
    boolean split,
    Mend mend,
    Optional<String> several,
    OptionalDouble wear,
    Map<String, Double> symptoms) {

  /** What mends a cause. */
  public enum Mend {
    /** The part is renewed. */
    RENEW("renew"),
    /** The part is cleaned or freed. */
    CLEAN("clean"),
    /** The part is set, tightened or filled. */
    ADJUST("adjust"),
    /** It is for the licensed trade. */
    HAND_OVER("hand-over");

    private final String id;

    Mend(String id) {
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
   * Checks words and chances.
   *
   * @throws IllegalArgumentException if the share is not above 0 and below 1, a chance not from 0
   *     to 1, or the shape not from 0.2 to 10
   */
  public KindCause {
    Ids.require(part);
    Ids.require(fault);
    Objects.requireNonNull(title);
    Objects.requireNonNull(mend);
    Objects.requireNonNull(several);
    Objects.requireNonNull(wear);
    symptoms = Map.copyOf(symptoms);
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          part + "." + fault + ": a share of " + share + "; above 0 and below 1 is allowed");
    }
    if (wear.isPresent() && !(wear.getAsDouble() >= 0.2 && wear.getAsDouble() <= 10)) {
      throw new IllegalArgumentException(
          part + "." + fault + ": a shape of " + wear.getAsDouble() + "; 0.2 to 10 is allowed");
    }
    for (Map.Entry<String, Double> each : symptoms.entrySet()) {
      if (!(each.getValue() >= 0 && each.getValue() <= 1)) {
        throw new IllegalArgumentException(
            "%s.%s makes %s with a chance of %s; 0 to 1 is allowed"
                .formatted(part, fault, each.getKey(), each.getValue()));
      }
    }
  }

  /**
   * The same cause with another share and other chances.
   *
   * @param other the chance that it is behind a call
   * @param chances by the id of a symptom the chance that the cause makes it
   * @return the cause
   */
  public KindCause with(double other, Map<String, Double> chances) {
    return new KindCause(part, fault, title, other, split, mend, several, wear, chances);
  }

  /**
   * Its name within a machine.
   *
   * @return part and fault, joined by a full stop
   */
  public String key() {
    return part + "." + fault;
  }
}
