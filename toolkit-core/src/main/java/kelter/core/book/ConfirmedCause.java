package kelter.core.book;

import kelter.core.vocabulary.Ids;

/**
 * A cause that was confirmed: it was seen, or the complaint was gone once it was mended.
 *
 * @param component the id of the component in its machine
 * @param kind the kind of that component
 * @param fault the id of what was wrong with it
 */
public record ConfirmedCause(String component, String kind, String fault) {

  /**
   * Checks the words.
   *
   * @throws IllegalArgumentException if one of them is no id
   */
  public ConfirmedCause {
    Ids.require(component);
    Ids.require(kind);
    Ids.require(fault);
  }

  /**
   * Its name within the machine.
   *
   * @return component and fault, joined by a full stop
   */
  public String key() {
    return component + "." + fault;
  }
}
