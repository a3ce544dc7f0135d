package kelter.core.shop;

import kelter.core.problem.Required;

/**
 * A part that is carried in the van.
 *
 * @param part what it is, not blank
 * @param remedy what it is for, {@code component-kind.remedy}; empty if that is not told
 * @param number how many there are, from 0
 */
public record StockPart(String part, String remedy, int number) {

  /**
   * Checks the name and the number.
   *
   * @throws IllegalArgumentException if the name is blank or the number negative
   */
  public StockPart {
    Required.value(remedy, "remedy of a part");
    if (Required.value(part, "name of a part").isBlank()) {
      throw new IllegalArgumentException("the name of a part is not blank");
    }
    if (number < 0) {
      throw new IllegalArgumentException(number + " of a part; from 0 on is allowed");
    }
  }
}
