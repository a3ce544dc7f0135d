package kelter.costing.weigh;

import java.math.BigDecimal;
import java.util.Currency;
import kelter.core.quantity.Money;

/** Computed amounts as a person reads them. */
final class Amounts {

  private Amounts() {}

  static String text(double amount, Currency currency) {
    return new Money(BigDecimal.valueOf(amount), currency).rounded().format();
  }
}
