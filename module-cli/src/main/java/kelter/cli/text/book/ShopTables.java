package kelter.cli.text.book;

import static kelter.cli.text.book.FigureCells.NONE;
import static kelter.cli.text.book.FigureCells.TOO_FEW;
import static kelter.cli.text.book.FigureCells.amount;
import static kelter.cli.text.book.FigureCells.between;
import static kelter.cli.text.book.FigureCells.percents;
import static kelter.cli.text.book.FigureCells.quantile;
import static kelter.cli.text.book.FigureCells.whole;
import static kelter.cli.text.book.FigureCells.with;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.cli.text.Figures;
import kelter.core.book.figures.CallBacks;
import kelter.core.book.figures.FirstCures;
import kelter.core.book.figures.JobTimes;
import kelter.core.book.figures.ModelRecord;
import kelter.core.book.figures.ShopFigures;
import kelter.core.book.figures.Spare;
import kelter.core.book.figures.TimeShare;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import kelter.core.quantity.Money;

/** What a shop asks its book, as tables. */
public final class ShopTables {

  private static final double DAYS_PER_YEAR = 365.25;

  private static final String ROWS_95 = "95\u00a0% between";

  private final ShopFigures figures;
  private final Kinds kinds;

  private ShopTables(ShopFigures figures, Kinds kinds) {
    this.figures = figures;
    this.kinds = kinds;
  }

  /**
   * Makes the tables.
   *
   * @param figures what the book answers
   * @param kinds the kinds of machines
   * @return the tables; one that has no row says in its notes why
   */
  public static List<ShopTable> of(ShopFigures figures, Kinds kinds) {
    ShopTables tables = new ShopTables(figures, kinds);
    return List.of(
        tables.spares(),
        tables.times(),
        tables.brought(),
        tables.callBacks(),
        tables.firstCures(),
        tables.time(),
        tables.causes(),
        tables.running());
  }

  private String kind(String id) {
    return id.isEmpty() ? "all machines" : kinds.kind(id).map(Kind::title).orElse(id);
  }

  private String currency() {
    return figures.currency().map(Currency::getCurrencyCode).orElse("");
  }

  private String money(String what) {
    return currency().isEmpty() ? what : what + ", " + currency();
  }

  /** The words of the id of some work on a kind of part. */
  private static String work(String key) {
    return key.replace(".", ": ").replace('-', ' ');
  }

  private ShopTable spares() {
    List<List<String>> rows = new ArrayList<>();
    for (Spare each : figures.spares()) {
      boolean told = each.carry().isPresent();
      rows.add(
          List.of(
              work(each.key()),
              Integer.toString(each.demand().uses()),
              with(
                  whole(each.demand().rate()),
                  between(each.demand().interval(), FigureCells::whole)),
              FigureCells.number(each.carry()),
              told ? Figures.percent(each.met()) : NONE,
              Integer.toString(each.carried()),
              each.price().map(price -> amount(price.toDouble())).orElse(NONE),
              each.capital().map(price -> amount(price.toDouble())).orElse(NONE)));
    }
    return new ShopTable(
        "spares",
        "Which spares to carry",
        List.of(
            "work",
            "uses",
            "a year (95\u00a0%)",
            "carry",
            "met",
            "in van",
            money("each"),
            money("in all")),
        rows,
        spareNotes());
  }

  private List<String> spareNotes() {
    List<String> notes = new ArrayList<>();
    if (figures.spares().isEmpty()) {
      return List.of(
          figures.years() * DAYS_PER_YEAR < 1
              ? "How many are used a year cannot be told of a book of less than a day."
              : "No part was used in the last three years of the book.");
    }
    notes.add(
        "Uses of %s years. Carry so many that nothing is missing with %s in the %s days until more come; met: with what chance they do. Uses are taken to come one by one at a steady rate. Fewer than %s uses tell no number. A kind of part is not one part yet: models take different ones."
            .formatted(
                whole(figures.years()),
                Figures.percent(figures.question().service()),
                whole(figures.question().restockDays()),
                Spare.LEAST_USES));
    figures
        .capital()
        .ifPresent(
            sum ->
                notes.add(
                    "All parts to carry that have a price: %s. Prices: %s, of which %s medians of the book; the others are the shop's."
                        .formatted(
                            sum.rounded().format(),
                            figures.spares().stream()
                                .filter(each -> each.price().isPresent())
                                .count(),
                            figures.spares().stream().filter(each -> each.priced() > 0).count())));
    otherAmounts(notes);
    return notes;
  }

  private void otherAmounts(List<String> notes) {
    if (figures.otherAmounts() > 0) {
      notes.add(
          "%s amounts are not in %s and left out.".formatted(figures.otherAmounts(), currency()));
    }
  }

  private ShopTable times() {
    List<List<String>> rows = new ArrayList<>();
    for (JobTimes each : figures.times()) {
      rows.add(
          List.of(
              kind(each.kind()),
              Integer.toString(each.jobs()),
              quantile(each.median(), FigureCells::whole),
              quantile(each.high(), FigureCells::whole),
              asked(each)));
    }
    return new ShopTable(
        "hour",
        "What an hour must be asked at",
        List.of(
            "machines",
            "jobs",
            "median, min (95\u00a0%)",
            "1 in 20 above (95\u00a0%)",
            figures.hour().isPresent() ? "an hour at (90\u00a0%)" : "its cost times (90\u00a0%)"),
        rows,
        hourNotes());
  }

  /** What to ask for an hour, or by how much more than it costs. */
  private String asked(JobTimes times) {
    double hour = figures.hour().map(Money::toDouble).orElse(1.0);
    return times
        .factor()
        .map(
            factor ->
                with(
                    amount(hour * factor),
                    times
                        .factorInterval()
                        .map(each -> between(each.times(hour), FigureCells::amount))
                        .orElse("?")))
        .orElse(TOO_FEW);
  }

  private ShopTable brought() {
    List<List<String>> rows = new ArrayList<>();
    for (JobTimes each : figures.times()) {
      rows.add(
          List.of(
              kind(each.kind()),
              each.brought().map(told -> Integer.toString(told.number())).orElse(TOO_FEW),
              quantile(each.brought(), FigureCells::whole),
              quantile(each.broughtLow(), FigureCells::whole)));
    }
    return new ShopTable(
        "brought",
        "What an hour brought",
        List.of("machines", "jobs", "median (95\u00a0%)", "19 of 20 above (95\u00a0%)"),
        rows,
        List.of(
            "What was charged less parts%s, by the hour of the job%s. A job that renewed something and tells no price of it is left out. Fewer than %s jobs tell no figure."
                .formatted(
                    figures.question().tax().rate().isPresent()
                        ? " and less the tax by the shop's rates of today"
                        : ", with the tax that is in it, since the shop states no rate",
                    currency().isEmpty() ? "" : ", in " + currency(),
                    JobTimes.LEAST_JOBS)));
  }

  private List<String> hourNotes() {
    if (figures.times().isEmpty()) {
      return List.of("No job tells its minutes.");
    }
    List<String> notes = new ArrayList<>();
    String hour =
        figures
            .hour()
            .map(
                each ->
                    "An hour is reckoned at %s, %s; the median job is paid at that."
                        .formatted(
                            each.format(),
                            figures.question().hour().isPresent()
                                ? "as told"
                                : "the shop's price of it ('--hour-costs' tells what it costs)"))
            .orElse(
                "'--hour-costs \"38 EUR\"' tells what an hour costs you; without it the table tells only by how much more to ask. The median job is paid at what an hour costs.");
    notes.add(
        "Minutes of work and of readings that tell theirs; way and waiting are not in the book. %s Who asks a fixed sum by the median is paid in 19 of 20 jobs where an hour is asked at that much; its interval holds in 90 of 100 books at least. Fewer than %s jobs tell no figure."
            .formatted(hour, JobTimes.LEAST_JOBS));
    return notes;
  }

  private ShopTable callBacks() {
    List<List<String>> rows = new ArrayList<>();
    for (CallBacks each : figures.callBacks()) {
      rows.add(
          List.of(
              kind(each.kind()),
              Integer.toString(each.share().of()),
              Integer.toString(each.share().cases()),
              each.isTold()
                  ? with(Figures.percent(each.share().rate()), percents(each.share().interval()))
                  : TOO_FEW,
              each.minutes()
                  .map(mean -> with(whole(mean.mean()), Integer.toString(mean.number())))
                  .orElse(TOO_FEW),
              each.cost().map(mean -> amount(mean.mean())).orElse(NONE),
              reserve(each)));
    }
    return new ShopTable(
        "reserve",
        "What to lay aside for call-backs",
        List.of(
            "machines",
            "cured",
            "back",
            "rate (95\u00a0%)",
            "min (of)",
            "cost",
            "a job (95\u00a0%)"),
        rows,
        figures.callBacks().isEmpty()
            ? List.of("No complaint was cured 90 days ago or more.")
            : List.of(
                "Cured jobs of which the 90 days in which complaints come back are over. To lay aside with each job: rate times mean cost of a call-back, which is its minutes at what an hour is reckoned at and its parts%s. The way is not in it. Fewer than %s cured jobs tell no rate, fewer than 2 call-backs no cost."
                    .formatted(
                        currency().isEmpty() ? "" : ", in " + currency(), CallBacks.LEAST_JOBS)));
  }

  private static String reserve(CallBacks each) {
    return each.reserve()
        .map(
            sum ->
                with(
                    amount(sum),
                    between(each.reserveInterval().orElseThrow(), FigureCells::amount)))
        .orElse(each.isTold() ? NONE : TOO_FEW);
  }

  private ShopTable firstCures() {
    List<List<String>> rows = new ArrayList<>();
    for (FirstCures each : figures.firstCures()) {
      rows.add(
          List.of(
              kind(each.kind()),
              Integer.toString(each.share().of()),
              Integer.toString(each.share().cases()),
              each.isTold() ? Figures.percent(each.share().rate()) : TOO_FEW,
              each.isTold() ? percents(each.share().interval()) : NONE));
    }
    return new ShopTable(
        "first",
        "How often the first job cures",
        List.of("machines", "jobs", "cured", "share", ROWS_95),
        rows,
        figures.firstCures().isEmpty()
            ? List.of("No job ended as cured or not cured 90 days ago or more.")
            : List.of(
                "Jobs that are no call-backs, ended as cured or not cured; cured is what did not come back. A job may have taken several visits, which the book does not tell. Fewer than %s jobs tell no share."
                    .formatted(FirstCures.LEAST_JOBS)));
  }

  private ShopTable time() {
    List<List<String>> rows = new ArrayList<>();
    for (TimeShare each : figures.time()) {
      rows.add(
          List.of(
              each.sort() == TimeShare.Sort.DOING ? "all " + each.what() : work(each.what()),
              Integer.toString(each.times()),
              whole(each.minutes() / 60),
              Figures.percent(each.share()),
              each.interval().map(FigureCells::percents).orElse(TOO_FEW)));
    }
    return new ShopTable(
        "time",
        "Where time goes",
        List.of("what", "times", "hours", "share", ROWS_95),
        rows,
        figures.time().isEmpty()
            ? List.of("No work and no reading tells its minutes.")
            : List.of("Of the minutes that the book tells: what tells none is not in it."));
  }

  private ShopTable causes() {
    List<List<String>> rows = new ArrayList<>();
    for (ModelRecord each : figures.models()) {
      rows.add(
          List.of(
              each.model() + ", " + kind(each.kind()),
              Integer.toString(each.jobs()),
              each.cause().orElse(NONE),
              each.cause().isPresent()
                  ? each.ofCause().cases() + " of " + each.ofCause().of()
                  : NONE,
              each.cause().isPresent() ? percents(each.ofCause().interval()) : NONE));
    }
    return new ShopTable(
        "causes",
        "What fails in which model",
        List.of("model", "jobs", "cause met most", "jobs with it", ROWS_95),
        rows,
        fewer());
  }

  private List<String> fewer() {
    List<String> notes = new ArrayList<>();
    if (figures.fewer() > 0) {
      notes.add(
          "Models with fewer than %s jobs, which tell nothing yet: %s."
              .formatted(ModelRecord.LEAST_JOBS, figures.fewer()));
    } else if (figures.models().isEmpty()) {
      notes.add("No job tells the model of its machine.");
    }
    return notes;
  }

  private ShopTable running() {
    List<List<String>> rows = new ArrayList<>();
    for (ModelRecord each : figures.models()) {
      rows.add(
          List.of(
              each.model() + ", " + kind(each.kind()),
              each.failures() + " of " + (each.failures() + each.lasted()),
              each.afterAYear()
                  .map(year -> with(Figures.percent(year.share()), percents(year.interval())))
                  .orElse(TOO_FEW),
              each.life()
                  .map(
                      life ->
                          with(whole(life.scale()), between(life.ofScale(), FigureCells::whole)))
                  .orElse(TOO_FEW),
              each.life()
                  .map(
                      life ->
                          with(whole(life.shape()), between(life.ofShape(), FigureCells::whole)))
                  .orElse(TOO_FEW)));
    }
    return new ShopTable(
        "models",
        "How long a model runs after a job",
        List.of(
            "model",
            "failed again",
            "runs a year later (95\u00a0%)",
            "life, years (95\u00a0%)",
            "shape (95\u00a0%)"),
        rows,
        figures.models().isEmpty()
            ? List.of("No model has enough jobs.")
            : List.of(
                "Machines that are told apart by serial number, from one job to the next that is no call-back. Whoever calls another shop, or scraps the machine, counts as running: this is rather told too long. Life: Weibull, which 63\u00a0% do not reach. Fewer than 5 failures tell nothing."));
  }

  /**
   * How many rows of a kind a table shows where it has no room for all.
   *
   * @param table the table
   * @param figures what it was made of
   * @param most so many
   * @return the rows; of those on time the most of each sort
   */
  public static List<List<String>> first(ShopTable table, ShopFigures figures, int most) {
    if (!table.id().equals("time")) {
      return table.rows().stream().limit(most).toList();
    }
    Map<TimeShare.Sort, Integer> shown = new TreeMap<>();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      TimeShare.Sort sort = figures.time().get(i).sort();
      if (shown.merge(sort, 1, Integer::sum) <= most / 2) {
        rows.add(table.rows().get(i));
      }
    }
    return rows;
  }
}
