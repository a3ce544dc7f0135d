package kelter.costing.choice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import kelter.core.quantity.Money;

/** Figures in sentences, without the locale data of a formatter. */
public final class Rounded {

  private Rounded() {}

  /**
   * A figure with so many decimal places.
   *
   * @param value a finite figure
   * @param places how many
   * @return its text
   */
  public static String decimal(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /**
   * A ratio in whole per cent.
   *
   * @param ratio a finite ratio
   * @return for instance {@code 72 %}
   */
  public static String percent(double ratio) {
    return decimal(100 * ratio, 0) + " %";
  }

  /**
   * An amount of money.
   *
   * @param amount a finite amount, in units of the currency
   * @param currency the currency
   * @return the amount to its minor unit
   */
  public static String money(double amount, Currency currency) {
    return new Money(BigDecimal.valueOf(amount), currency).rounded().format();
  }
}
