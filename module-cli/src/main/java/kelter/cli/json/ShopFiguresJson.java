package kelter.cli.json;

import java.io.IOException;
import java.util.Currency;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.book.figures.CallBacks;
import kelter.core.book.figures.FirstCures;
import kelter.core.book.figures.Interval;
import kelter.core.book.figures.JobTimes;
import kelter.core.book.figures.Mean;
import kelter.core.book.figures.ModelRecord;
import kelter.core.book.figures.Quantile;
import kelter.core.book.figures.ShopFigures;
import kelter.core.book.figures.Spare;
import kelter.core.book.figures.TimeShare;
import kelter.core.quantity.Money;

/** What a shop asks its book, as JSON. A figure of too few jobs is null. */
public final class ShopFiguresJson {

  private final JsonOutput out;

  private ShopFiguresJson(JsonOutput out) {
    this.out = out;
  }

  /**
   * The answers.
   *
   * @param figures what the book answers
   * @return the result
   */
  public static JsonResult of(ShopFigures figures) {
    return new JsonResult(
        ResultFormat.BOOK_STATS.id(), output -> new ShopFiguresJson(output).write(figures));
  }

  private void write(ShopFigures figures) throws IOException {
    out.number("jobs", figures.jobs());
    out.textOrNull("from", figures.from().map(Object::toString));
    out.text("to", figures.question().asOf().toString());
    out.textOrNull("currency", figures.currency().map(Currency::getCurrencyCode));
    out.number("other-amounts", figures.otherAmounts());
    out.textOrNull("hour", figures.hour().map(Money::format));
    out.object("restocking", () -> restocking(figures));
    out.objects("spares", figures.spares(), this::spare);
    out.objects("job-times", figures.times(), this::times);
    out.objects("call-backs", figures.callBacks(), this::callBacks);
    out.objects("first-cures", figures.firstCures(), this::firstCures);
    out.objects("time", figures.time(), this::time);
    out.objects("models", figures.models(), this::model);
    out.number("models-with-fewer-jobs", figures.fewer());
  }

  private void restocking(ShopFigures figures) throws IOException {
    out.number("days", figures.question().restockDays());
    out.number("service", figures.question().service());
    out.number("years-counted", figures.years());
  }

  private void spare(Spare each) throws IOException {
    out.text("work", each.key());
    out.number("uses", each.demand().uses());
    out.number("per-year", each.demand().rate());
    interval("per-year-95", Optional.of(each.demand().interval()));
    out.number("carry", each.carry().isPresent() ? each.carry().getAsInt() : Double.NaN);
    out.number("met", each.carry().isPresent() ? each.met() : Double.NaN);
    out.number("carried", each.carried());
    out.textOrNull("price", each.price().map(Money::format));
    out.number("prices-of-book", each.priced());
    out.textOrNull("capital", each.capital().map(Money::format));
  }

  private void times(JobTimes each) throws IOException {
    out.textOrNull("kind", kind(each.kind()));
    out.number("jobs", each.jobs());
    quantile("minutes-median", each.median());
    quantile("minutes-19-of-20", each.high());
    out.number("hour-factor", each.factor().orElse(Double.NaN));
    interval("hour-factor-90", each.factorInterval());
    quantile("brought-median", each.brought());
    quantile("brought-1-of-20", each.broughtLow());
  }

  private void callBacks(CallBacks each) throws IOException {
    out.textOrNull("kind", kind(each.kind()));
    out.number("cured", each.share().of());
    out.number("came-back", each.share().cases());
    out.number("rate", each.isTold() ? each.share().rate() : Double.NaN);
    interval("rate-95", Optional.of(each.share().interval()).filter(any -> each.isTold()));
    mean("minutes", each.minutes());
    mean("cost", each.cost());
    out.number("reserve", each.reserve().orElse(Double.NaN));
    interval("reserve-95", each.reserveInterval());
  }

  private void firstCures(FirstCures each) throws IOException {
    out.textOrNull("kind", kind(each.kind()));
    out.number("jobs", each.share().of());
    out.number("cured-at-first", each.share().cases());
    out.number("rate", each.isTold() ? each.share().rate() : Double.NaN);
    interval("rate-95", Optional.of(each.share().interval()).filter(any -> each.isTold()));
  }

  private void time(TimeShare each) throws IOException {
    out.text("what", each.what());
    out.text("sort", each.sort().word());
    out.number("times", each.times());
    out.number("minutes", each.minutes());
    out.number("share", each.share());
    interval("share-95", each.interval());
  }

  private void model(ModelRecord each) throws IOException {
    out.text("kind", each.kind());
    out.text("model", each.model());
    out.number("jobs", each.jobs());
    out.number("machines", each.machines());
    out.textOrNull("cause", each.cause());
    out.number("jobs-with-it", each.ofCause().cases());
    out.number("jobs-with-a-cause", each.ofCause().of());
    interval(
        "share-95", Optional.of(each.ofCause().interval()).filter(any -> each.cause().isPresent()));
    out.number("failed-again", each.failures());
    out.number("lasted", each.lasted());
    out.objects("running", each.running(), this::running);
    out.objectOrNull("life", each.life(), this::life);
  }

  private void running(ModelRecord.Running each) throws IOException {
    out.number("years", each.years());
    out.number("share", each.share());
    interval("share-95", Optional.of(each.interval()));
  }

  private void life(ModelRecord.Life life) throws IOException {
    out.number("shape", life.shape());
    interval("shape-95", Optional.of(life.ofShape()));
    out.number("scale", life.scale());
    interval("scale-95", Optional.of(life.ofScale()));
  }

  private static Optional<String> kind(String id) {
    return Optional.of(id).filter(each -> !each.isEmpty());
  }

  private void interval(String name, Optional<Interval> interval) throws IOException {
    out.objectOrNull(name, interval, this::ends);
  }

  private void ends(Interval interval) throws IOException {
    out.number("low", interval.low());
    out.number("high", interval.high());
  }

  private void quantile(String name, Optional<Quantile> quantile) throws IOException {
    out.objectOrNull(
        name,
        quantile,
        each -> {
          out.number("of", each.number());
          out.number("value", each.value());
          out.number("low", or(each.low()));
          out.number("high", or(each.high()));
        });
  }

  private void mean(String name, Optional<Mean> mean) throws IOException {
    out.objectOrNull(
        name,
        mean,
        each -> {
          out.number("of", each.number());
          out.number("value", each.mean());
          ends(each.interval());
        });
  }

  private static double or(OptionalDouble value) {
    return value.orElse(Double.NaN);
  }
}
