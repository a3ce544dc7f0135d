package kelter.costing.weigh;

import java.math.BigDecimal;
import java.util.Currency;
import kelter.core.quantity.Money;
import kelter.costing.choice.Rounded;

/** Computed figures as a person reads them, without the locale data of a formatter. */
final class Amounts {

  private Amounts() {}

  static String text(double amount, Currency currency) {
    return new Money(BigDecimal.valueOf(amount), currency).rounded().format();
  }

  /** A ratio in whole per cent. */
  static String percent(double ratio) {
    return Rounded.decimal(100 * ratio, 0) + " %";
  }
}
