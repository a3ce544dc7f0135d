package kelter.core.shop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Models;
import kelter.core.check.DecisionRule;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.safety.Caution;

/**
 * What holds for a shop from job to job.
 *
 * @param instruments its instruments, each id once
 * @param rule how sure a verdict must be
 * @param competentForLiveWork whether those who work there are competent for live work
 * @param columns what the columns of its instrument logs hold
 * @param prices what work and parts cost there, if it is told
 * @param stock the parts that are carried in its van
 * @param models the models of machines that it knows
 * @param kinds its own kinds of machines, which go before those of the same id that come with
 *     Kelter
 * @param offering who offers its work, and on which terms
 * @param learned what its job book taught, if it keeps one
 */
public record Shop(
    List<ShopInstrument> instruments,
    DecisionRule rule,
    boolean competentForLiveWork,
    List<LogColumn> columns,
    Optional<PriceList> prices,
    List<StockPart> stock,
    Models models,
    List<Kind> kinds,
    Offering offering,
    Optional<Learned> learned) {

  /** A shop of which nothing is known: no instruments, the usual rule, no live work. */
  public static final Shop UNKNOWN = new Shop(List.of(), DecisionRule.USUAL, false, List.of());

  private static final Caution NO_DATE =
      new Caution(
          "calibration-without-date",
          Caution.Signal.NOTICE,
          "The calibration of '%s' runs out on %s, and the job has no date to hold that against.");

  private static final Caution RAN_OUT =
      new Caution(
          "calibration-ran-out",
          Caution.Signal.CAUTION,
          "The calibration of '%s' ran out on %s. What it shows may be off by more than its maker"
              + " says: hold it against a known reading before you rely on it, and above all before"
              + " you rely on it to prove dead.");

  /** What there may be to mind about its instruments; instrument and day are filled in. */
  public static final List<Caution> CAUTIONS = List.of(NO_DATE, RAN_OUT);

  public Shop {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(prices);
    Objects.requireNonNull(models);
    Objects.requireNonNull(offering);
    instruments = List.copyOf(instruments);
    columns = List.copyOf(columns);
    stock = List.copyOf(stock);
    kinds = List.copyOf(kinds);
    Objects.requireNonNull(learned);
  }

  /**
   * A shop of which only its profile is known: no prices, stock, models or kinds.
   *
   * @param instruments its instruments, each id once
   * @param rule how sure a verdict must be
   * @param competentForLiveWork whether those who work there are competent for live work
   * @param columns what the columns of its instrument logs hold
   */
  public Shop(
      List<ShopInstrument> instruments,
      DecisionRule rule,
      boolean competentForLiveWork,
      List<LogColumn> columns) {
    this(
        instruments,
        rule,
        competentForLiveWork,
        columns,
        Optional.empty(),
        List.of(),
        Models.NONE,
        List.of(),
        Offering.UNKNOWN,
        Optional.empty());
  }

  /**
   * The same shop with what its folder holds beside the profile.
   *
   * @param itsPrices what work and parts cost there, if it is told
   * @param itsStock the parts that are carried in its van
   * @param itsModels the models of machines that it knows
   * @param itsKinds its own kinds of machines
   * @return the shop
   */
  public Shop with(
      Optional<PriceList> itsPrices,
      List<StockPart> itsStock,
      Models itsModels,
      List<Kind> itsKinds) {
    return new Shop(
        instruments,
        rule,
        competentForLiveWork,
        columns,
        itsPrices,
        itsStock,
        itsModels,
        itsKinds,
        offering,
        learned);
  }

  /**
   * The same shop with who offers its work.
   *
   * @param itsOffering who it is, and on which terms
   * @return the shop
   */
  public Shop with(Offering itsOffering) {
    return new Shop(
        instruments,
        rule,
        competentForLiveWork,
        columns,
        prices,
        stock,
        models,
        kinds,
        itsOffering,
        learned);
  }

  /**
   * The same shop with what its job book taught.
   *
   * @param taught what it taught; empty for the tables of the kinds alone
   * @return the shop
   */
  public Shop with(Optional<Learned> taught) {
    return new Shop(
        instruments,
        rule,
        competentForLiveWork,
        columns,
        prices,
        stock,
        models,
        kinds,
        offering,
        taught);
  }

  /**
   * What the instruments measure, and how well.
   *
   * @return the instruments as a job has them
   */
  public List<Instrument> jobInstruments() {
    return instruments.stream().map(ShopInstrument::instrument).toList();
  }

  /**
   * An instrument by its id.
   *
   * @param id the id
   * @return the instrument, or empty if there is none
   */
  public Optional<ShopInstrument> instrument(String id) {
    return instruments.stream().filter(each -> each.instrument().id().equals(id)).findFirst();
  }

  /**
   * What to mind about the instruments that the readings of a job were taken with: a calibration
   * that had run out on the day of the job.
   *
   * @param job the job
   * @return one caution for each such instrument, in the order of the shop's
   */
  public List<Caution> cautions(Job job) {
    List<Caution> cautions = new ArrayList<>();
    for (ShopInstrument each : instruments) {
      String id = each.instrument().id();
      boolean used =
          job.measurements().stream()
              .anyMatch(measurement -> measurement.instrument().filter(id::equals).isPresent());
      if (used) {
        each.due().flatMap(due -> overdue(id, due, job.date())).ifPresent(cautions::add);
      }
    }
    return cautions;
  }

  private static Optional<Caution> overdue(String id, LocalDate due, String date) {
    if (date.isEmpty()) {
      return Optional.of(NO_DATE.with(id, due));
    }
    return LocalDate.parse(date).isAfter(due)
        ? Optional.of(RAN_OUT.with(id, due))
        : Optional.empty();
  }
}
