package kelter.core.module;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Ids;

/**
 * What a calculation takes.
 *
 * @param id the word on the command line
 * @param title the words for a person
 * @param kind what it measures; {@link QuantityKind#RATIO} for a choice
 * @param low the least value allowed, in the coherent SI unit
 * @param high the greatest value allowed, in the coherent SI unit
 * @param choices the words allowed if it is a choice and not a figure; its value is then the place
 *     of the word, from 0
 * @param usual what is taken, and told, where nothing is given, as one would write it; empty if it
 *     must be given
 */
public record Parameter(
    String id,
    String title,
    QuantityKind kind,
    double low,
    double high,
    List<String> choices,
    Optional<String> usual) {

  /**
   * Checks the limits.
   *
   * @throws IllegalArgumentException if the limits are out of order
   */
  public Parameter {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(usual);
    choices = List.copyOf(choices);
    if (!(low <= high)) {
      throw new IllegalArgumentException(id + ": the least value is at most the greatest");
    }
  }

  /**
   * A figure that must be given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param kind what it measures
   * @param low the least value allowed, in the coherent SI unit
   * @param high the greatest value allowed, in the coherent SI unit
   * @return the parameter
   */
  public static Parameter required(
      String id, String title, QuantityKind kind, double low, double high) {
    return new Parameter(id, title, kind, low, high, List.of(), Optional.empty());
  }

  /**
   * A figure that may be left out.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param kind what it measures
   * @param low the least value allowed, in the coherent SI unit
   * @param high the greatest value allowed, in the coherent SI unit
   * @param usual what is taken where nothing is given, as one would write it
   * @return the parameter
   */
  public static Parameter optional(
      String id, String title, QuantityKind kind, double low, double high, String usual) {
    return new Parameter(id, title, kind, low, high, List.of(), Optional.of(usual));
  }

  /**
   * A choice.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param choices the words allowed
   * @param usual the word that is taken where nothing is given
   * @return the parameter
   */
  public static Parameter choice(String id, String title, List<String> choices, String usual) {
    return new Parameter(
        id, title, QuantityKind.RATIO, 0, choices.size() - 1.0, choices, Optional.of(usual));
  }
}
