package kelter.core.book.figures;

import java.util.Currency;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.WorkDone;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.quantity.Money;
import kelter.core.shop.PriceList;

/** Amounts in one currency: that of the question, else the first that a job tells. */
final class Purse {

  private static final double MINUTES_PER_HOUR = 60;

  private final Question question;
  private Optional<Currency> currency;
  private int others;

  Purse(Question question) {
    this.question = question;
    this.currency =
        question.hour().map(Money::currency).or(() -> question.prices().map(PriceList::currency));
  }

  Optional<Currency> currency() {
    return currency;
  }

  int others() {
    return others;
  }

  /** Takes the currency of the first amount where none is told, and counts those in another. */
  void look(BookEntry entry) {
    entry.work().forEach(work -> work.parts().ifPresent(this::look));
    entry.charged().ifPresent(this::look);
  }

  private void look(Money money) {
    if (currency.isEmpty()) {
      currency = Optional.of(money.currency());
    }
    others += currency.get().equals(money.currency()) ? 0 : 1;
  }

  /** The amount; empty if it is in another currency. */
  OptionalDouble amount(Money money) {
    return currency.equals(Optional.of(money.currency()))
        ? OptionalDouble.of(money.toDouble())
        : OptionalDouble.empty();
  }

  /** What the parts of a job cost; empty where a part that was renewed has no price. */
  OptionalDouble parts(BookEntry entry) {
    double sum = 0;
    for (WorkDone work : entry.work()) {
      OptionalDouble each =
          work.parts().isPresent() ? amount(work.parts().get()) : OptionalDouble.empty();
      if (each.isEmpty() && (work.parts().isPresent() || work.renews())) {
        return OptionalDouble.empty();
      }
      sum += each.orElse(0);
    }
    return OptionalDouble.of(sum);
  }

  /**
   * What a job brought the shop beyond its parts. What the owner paid has the tax in it, which goes
   * on; the prices of parts have none. Where the shop states no rate the tax is left in.
   */
  OptionalDouble brought(BookEntry entry) {
    OptionalDouble charged =
        entry.charged().isPresent() ? amount(entry.charged().get()) : OptionalDouble.empty();
    OptionalDouble parts = parts(entry);
    if (charged.isEmpty() || parts.isEmpty()) {
      return OptionalDouble.empty();
    }
    Tax tax = question.tax();
    double ofParts = parts.getAsDouble() * (1 + ratio(tax.rate().flatMap(any -> tax.onParts())));
    return OptionalDouble.of((charged.getAsDouble() - ofParts) / (1 + ratio(tax.rate())));
  }

  private static double ratio(Optional<TaxRate> rate) {
    return rate.map(each -> each.percent().doubleValue() / 100).orElse(0.0);
  }

  /** What minutes cost; empty where nobody tells what an hour does. */
  OptionalDouble work(double minutes) {
    Optional<Money> hour = question.reckonedHour();
    return hour.isPresent() && hour.get().currency().equals(currency.orElse(null))
        ? OptionalDouble.of(minutes / MINUTES_PER_HOUR * hour.get().toDouble())
        : OptionalDouble.empty();
  }
}
