package kelter.core.source;

import java.util.Objects;

/**
 * Where a figure or a formula comes from.
 *
 * @param document the document, edition and clause or equation; for figures without a document, who
 *     says so
 * @param standing what that is worth
 */
public record Source(String document, Standing standing) {

  /**
   * Checks that the document is named.
   *
   * @throws IllegalArgumentException if the document is blank
   */
  public Source {
    Objects.requireNonNull(standing);
    if (document.isBlank()) {
      throw new IllegalArgumentException("a source names its document");
    }
  }

  /**
   * A published source.
   *
   * @param document the document, edition and clause or equation
   * @return the source
   */
  public static Source published(String document) {
    return new Source(document, Standing.PUBLISHED);
  }

  /**
   * A published figure that was written down from memory.
   *
   * @param document the document in which it is believed to stand
   * @return the source
   */
  public static Source fromMemory(String document) {
    return new Source(document, Standing.FROM_MEMORY);
  }

  /**
   * What the trade does without a source.
   *
   * @param rule what is done
   * @return the source
   */
  public static Source commonPractice(String rule) {
    return new Source(rule, Standing.COMMON_PRACTICE);
  }

  /**
   * Both sources, of figures that come partly from the one and partly from the other.
   *
   * @param further where the other figures come from
   * @return both documents, with the weaker standing
   */
  public Source with(Source further) {
    if (equals(further)) {
      return this;
    }
    Standing weaker = standing.compareTo(further.standing) < 0 ? further.standing : standing;
    return new Source(document + "; further figures: " + further.document, weaker);
  }

  /**
   * The text that a person sees.
   *
   * @return document and standing
   */
  public String display() {
    return document + " (" + standing.words() + ")";
  }
}
