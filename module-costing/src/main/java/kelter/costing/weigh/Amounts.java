package kelter.costing.weigh;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import kelter.core.quantity.Money;

/** Computed figures as a person reads them, without the locale data of a formatter. */
final class Amounts {

  private Amounts() {}

  static String text(double amount, Currency currency) {
    return new Money(BigDecimal.valueOf(amount), currency).rounded().format();
  }

  /** A figure with so many decimal places. */
  static String decimal(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** A ratio in whole per cent. */
  static String percent(double ratio) {
    return decimal(100 * ratio, 0) + " %";
  }
}
