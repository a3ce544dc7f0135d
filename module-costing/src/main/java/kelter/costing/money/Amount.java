package kelter.costing.money;

import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;

/**
 * An amount of money as a calculation takes it: a plain number, all amounts of a calculation in one
 * currency, which the calculation does not need to know.
 */
public final class Amount {

  /** The greatest amount that is taken, in units of the currency. */
  public static final double GREATEST = 1e12;

  private Amount() {}

  /**
   * An amount that must be given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0 to 10^12
   */
  public static Parameter required(String id, String title) {
    return Parameter.required(id, inCurrency(title), QuantityKind.RATIO, 0, GREATEST);
  }

  /**
   * An amount that is nothing where nothing is given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0 to 10^12
   */
  public static Parameter optional(String id, String title) {
    return Parameter.optional(id, inCurrency(title), QuantityKind.RATIO, 0, GREATEST, "0");
  }

  private static String inCurrency(String title) {
    return title + ", a plain number, all in one currency";
  }
}
