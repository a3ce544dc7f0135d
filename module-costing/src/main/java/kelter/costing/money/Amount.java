package kelter.costing.money;

import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;

/**
 * An amount of money as a calculation takes and gives it: all amounts of a calculation in one
 * currency, which its law does not need to know. An amount for each year is one of these for a
 * second inside, like any quantity in its coherent unit.
 */
public final class Amount {

  /** The greatest amount that is taken, in units of the currency. */
  public static final double GREATEST = 1e12;

  /** The least amount that counts as one, in units of the currency. */
  private static final double LEAST = 0.01;

  /** One year of 365.25 days (UCUM {@code a}), in s. */
  public static final double YEAR = QuantityKind.AGE.unit().factor();

  private Amount() {}

  /**
   * An amount that must be given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0 to 10^12
   */
  public static Parameter required(String id, String title) {
    return Parameter.required(id, title, QuantityKind.MONEY, 0, GREATEST);
  }

  /**
   * An amount that is nothing where nothing is given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0 to 10^12
   */
  public static Parameter optional(String id, String title) {
    return Parameter.optional(id, title, QuantityKind.MONEY, 0, GREATEST, "0");
  }

  /**
   * An amount for each year that must be given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0.01 to 10^12 a year
   */
  public static Parameter requiredYearly(String id, String title) {
    return Parameter.required(
        id, title, QuantityKind.MONEY_PER_YEAR, LEAST / YEAR, GREATEST / YEAR);
  }

  /**
   * An amount for each year that is nothing where nothing is given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from 0 to 10^12 a year
   */
  public static Parameter yearly(String id, String title) {
    return Parameter.optional(id, title, QuantityKind.MONEY_PER_YEAR, 0, GREATEST / YEAR, "0");
  }

  /**
   * An amount that comes out.
   *
   * @param id the word in a result
   * @param title the words for a person
   * @return the output
   */
  public static Output output(String id, String title) {
    return new Output(id, title, QuantityKind.MONEY);
  }

  /**
   * An amount for each year that comes out.
   *
   * @param id the word in a result
   * @param title the words for a person
   * @return the output, whose value is an amount for each second inside
   */
  public static Output yearlyOutput(String id, String title) {
    return new Output(id, title, QuantityKind.MONEY_PER_YEAR);
  }
}
