package kelter.core.book.figures;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kelter.core.quantity.Money;

/**
 * What a shop's book answers.
 *
 * @param question what was asked
 * @param jobs how many jobs were read
 * @param from the day on which the first of them was closed; empty if there are none
 * @param currency of all amounts; empty if none is told
 * @param otherAmounts how many amounts of the book are in another currency and left out
 * @param years the years over which the uses of parts were counted; 0 if there are no jobs
 * @param spares parts by how often they are asked for
 * @param times how long jobs took, all first, then by kind
 * @param callBacks how often complaints come back, all first, then by kind
 * @param firstCures how often the first job cures, all first, then by kind
 * @param time where time goes, the most first within each sort
 * @param models what is known of models, the most jobs first
 * @param fewer how many models have fewer jobs than it takes
 */
public record ShopFigures(
    Question question,
    int jobs,
    Optional<LocalDate> from,
    Optional<Currency> currency,
    int otherAmounts,
    double years,
    List<Spare> spares,
    List<JobTimes> times,
    List<CallBacks> callBacks,
    List<FirstCures> firstCures,
    List<TimeShare> time,
    List<ModelRecord> models,
    int fewer) {

  /** Copies the lists. */
  public ShopFigures {
    spares = List.copyOf(spares);
    times = List.copyOf(times);
    callBacks = List.copyOf(callBacks);
    firstCures = List.copyOf(firstCures);
    time = List.copyOf(time);
    models = List.copyOf(models);
  }

  /**
   * What an hour is reckoned at, where it is in the currency of the figures.
   *
   * @return the amount
   */
  public Optional<Money> hour() {
    return question.reckonedHour().filter(each -> currency.equals(Optional.of(each.currency())));
  }

  /**
   * What all parts to carry cost that have a price.
   *
   * @return the sum; empty if none has
   */
  public Optional<Money> capital() {
    return spares.stream()
        .flatMap(each -> each.capital().stream())
        .reduce((one, other) -> new Money(one.amount().add(other.amount()), one.currency()));
  }
}
