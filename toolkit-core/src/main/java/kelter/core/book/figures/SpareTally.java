package kelter.core.book.figures;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.WorkDone;
import kelter.core.quantity.Money;
import kelter.core.shop.StockPart;

/** Which parts were used in the last years. */
final class SpareTally {

  /** What was asked for before tells little of what will be; own choice. */
  private static final int YEARS_BACK = 3;

  private static final double DAYS_PER_YEAR = 365.25;
  private static final double HALF = 0.5;

  private final Question question;
  private final Purse purse;
  private final Map<String, Figures> prices = new TreeMap<>();
  private final Map<String, Integer> uses = new TreeMap<>();

  SpareTally(Question question, Purse purse) {
    this.question = question;
    this.purse = purse;
  }

  void add(BookEntry entry) {
    if (entry.closed().isBefore(question.asOf().minusYears(YEARS_BACK))) {
      return;
    }
    for (WorkDone work : entry.work()) {
      if (work.renews() || work.parts().isPresent()) {
        uses.merge(work.key(), 1, Integer::sum);
        work.parts()
            .map(purse::amount)
            .ifPresent(
                price ->
                    price.ifPresent(
                        each ->
                            prices.computeIfAbsent(work.key(), any -> new Figures()).add(each)));
      }
    }
  }

  /** The years that uses are counted over. */
  double years(LocalDate first) {
    LocalDate begin = question.asOf().minusYears(YEARS_BACK);
    LocalDate from = first.isAfter(begin) ? first : begin;
    return ChronoUnit.DAYS.between(from, question.asOf()) / DAYS_PER_YEAR;
  }

  /** The parts that are asked for most first. */
  List<Spare> spares(double years) {
    List<Spare> spares = new ArrayList<>();
    if (years * DAYS_PER_YEAR >= 1) {
      uses.forEach((key, number) -> spares.add(spare(key, new Demand(number, years))));
    }
    spares.sort(
        Comparator.comparingInt((Spare each) -> -each.demand().uses()).thenComparing(Spare::key));
    return spares;
  }

  private Spare spare(String key, Demand demand) {
    double time = question.restockDays() / DAYS_PER_YEAR;
    boolean enough = demand.uses() >= Spare.LEAST_USES;
    int carry = enough ? demand.stockFor(time, question.service()) : 0;
    Optional<Money> own = question.prices().flatMap(list -> ofList(list.parts().get(key)));
    Figures paid = prices.getOrDefault(key, new Figures());
    return new Spare(
        key,
        demand,
        enough ? OptionalInt.of(carry) : OptionalInt.empty(),
        enough ? demand.met(carry, time) : 0,
        carried(key),
        own.or(() -> median(paid)),
        own.isPresent() ? 0 : paid.number());
  }

  private Optional<Money> ofList(Money price) {
    return Optional.ofNullable(price)
        .filter(each -> purse.currency().equals(Optional.of(each.currency())));
  }

  private Optional<Money> median(Figures paid) {
    return Quantile.of(paid.all(), HALF)
        .map(
            price ->
                new Money(BigDecimal.valueOf(price.value()), purse.currency().orElseThrow())
                    .rounded());
  }

  private int carried(String key) {
    return question.stock().stream()
        .filter(part -> part.remedy().equals(key))
        .mapToInt(StockPart::number)
        .sum();
  }
}
