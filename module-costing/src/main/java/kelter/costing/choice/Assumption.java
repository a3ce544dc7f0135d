package kelter.costing.choice;

import java.util.Arrays;
import java.util.List;
import kelter.core.vocabulary.Statement;

/** What a comparison takes for granted, in words that leave open what depends on the job. */
public enum Assumption {
  UNDER_WARRANTY(
      "under-warranty",
      "The machine is younger than the warranty on a new one lasts: its own warranty is"
          + " not counted. Ask who pays before anything is done."),
  LIFE_LEARNED(
      "life-learned",
      "Beside the studies, the life of such machines was learned: %s. It counts as %s "
          + "of them."),
  COMPONENT_LIFE_LEARNED(
      "component-life-learned", "The life of the component '%s' was learned: %s."),
  COMPONENT_LIVES_REMEMBERED(
      "component-lives-remembered",
      "Mean lives of components, from memory, at this use: %s. They count half, and "
          + "half counts that a component lasts as long as its machine."),
  NO_RUNNING_COSTS(
      "no-running-costs",
      "The job states no running costs; energy, water and detergent were taken to cost "
          + "the same for the old and the new machine and were left out."),
  NO_RUNNING_COST_NEW(
      "no-running-cost-new",
      "The job states no running cost of the new machine; that of the old one was " + "taken."),
  NO_RUNNING_COST_OLD(
      "no-running-cost-old",
      "The job states no running cost of the old machine; that of the new one was " + "taken."),
  RUNNING_COST_WORKED_OUT(
      "running-cost-worked-out",
      "The running cost of the %s machine was worked out from its cycles a week and its"
          + " energy%s%s"),
  NO_DISCOUNT_RATE(
      "no-discount-rate",
      "The job states no discount rate; 3 % a year was taken, the least real rate of 10"
          + " CFR 436.14."),
  NO_PRICE_DATE(
      "no-price-date", "The job does not date its prices; they were taken as those of today."),
  KIND_NOT_STUDIED("kind-not-studied", "%s"),
  TAKEN_AS_NOTHING("taken-as-nothing", "Not stated in the job, and taken as nothing: %s."),
  PRICE_DATE("price-date", "Prices are those of %s%s"),
  NO_CYCLES(
      "no-cycles",
      "The job states no cycles a week; use as hard as where the lives were studied was"
          + " taken."),
  BUILT_FOR_CYCLES(
      "built-for-cycles",
      "Such a machine was taken to last the %s cycles on average that it is built for: "
          + "%s years at this use. The spread is that of the studies."),
  CYCLES_DO_NOT_TELL(
      "cycles-do-not-tell",
      "Cycles a week do not tell how long this kind of machine lasts, unless the job "
          + "states how many it is built for; the lives were taken as studied."),
  CYCLES_AGAINST_HOUSEHOLDS(
      "cycles-against-households",
      "Households were taken to run %s cycles a week (%s) and this machine runs %s: its"
          + " life was taken %s times as long, wear counted in cycles%s (common practice, no "
          + "source)."),
  PART_PRICES_GUESSED(
      "part-prices-guessed",
      "Parts that are hardly needed and have no price in the job were taken at a tenth "
          + "of a new machine, from memory: %s."),
  CARBON_OF_ENERGY_AND_MAKING(
      "carbon-of-energy-and-making",
      "Only the energy of its use and the making of the machine are counted: no water, "
          + "no detergent, no parts. Electricity stays as it is over the years."),
  MAKING_SPREAD_OVER_LIFE(
      "making-spread-over-life", "Making a new machine is spread evenly over its mean life."),
  MAKING_NOT_STATED(
      "making-not-stated",
      "The job does not say what making a new machine emits; 300 kg were taken."),
  REAL_PRICES(
      "real-prices",
      "Prices stay as they are but for inflation: the discount rate is taken as a real " + "rate."),
  MENDED_LIKE_OTHERS(
      "mended-like-others",
      "A mended machine lasts as long as any other of its age; the work renews the "
          + "component or part that it is done on and nothing else."),
  COMPONENT_AS_MACHINE(
      "component-as-machine",
      "No study of the life of components is known; where nothing else is said, a "
          + "component is taken to last as long as a machine of its kind. Renewing a part "
          + "takes half of the age off its component, cleaning and setting take none. If it "
          + "fails again before the machine ends, the same work is paid once more."),
  NO_CURE_NEW_MACHINE(
      "no-cure-new-machine",
      "Where the work does not cure, a new machine follows at once; it is in the annual"
          + " cost, not in what is paid now."),
  TAXES_INCLUDED(
      "taxes-included",
      "Work, parts and call-out are counted with their tax, and all other prices as told."),
  BEFORE_TAX(
      "before-tax",
      "No tax rate is stated: work, parts and call-out are counted as told, before tax, and all"
          + " other prices as told."),
  CALL_OUT_PAID(
      "call-out-paid", "The call-out is paid whatever is done, also if the machine is replaced."),
  CALL_OUT_CREDITED(
      "call-out-credited", "The call-out is taken off again where the machine is mended."),
  STANDS_STILL(
      "stands-still",
      "While a part or a new machine is awaited, the machine is taken to stand still; "
          + "steps that need parts wait one after the other. What those days cost is in the "
          + "cost a year and not in the bill."),
  PRICES_DRAWN(
      "prices-drawn",
      "Prices are drawn around those stated, lognormal with the spread that the job "
          + "states, each kind of price by itself and the same over all years."),
  NO_NEW_MACHINE(
      "no-new-machine",
      "The job says that no new machine can be had, so that replacing is no option. The"
          + " years that the machine lasts are still valued at the price stated for one."),
  WAITING_COSTS_CALL_OUT(
      "waiting-costs-call-out",
      "Where nothing is done although there is a fault, the call-out is paid again and "
          + "the best of the repairs follows."),
  STUDIES_DIFFER(
      "studies-differ",
      "The studies of the life of such machines give means from %s to %s years. A study"
          + " counts the more, the more machines reach the age of this one by it, for this "
          + "machine and for a new one: place, care and use stay the same. So an old machine "
          + "speaks for long lives, its own and that of the next."),
  SAME_YEARS(
      "same-years",
      "All options are compared over the same %s years, the mean life of a new machine;"
          + " a machine that ends sooner is followed by a new one at today's price, and years"
          + " beyond are credited."),
  UNEXPLAINED_BEYOND_REPAIR(
      "unexplained-beyond-repair",
      "By %s nothing that is known explains the readings. That counts as beyond repair " + "here."),
  REPAIR_WARRANTY(
      "repair-warranty",
      "What was mended and fails again within %s years of warranty is mended for " + "nothing."),
  NEW_WARRANTY(
      "new-warranty",
      "A new machine that ends within %s years of warranty is replaced for nothing.");

  private final String id;
  private final String text;

  Assumption(String id, String text) {
    this.id = id;
    this.text = text;
  }

  /**
   * The assumption as it is told.
   *
   * @param open what comes in the place of each {@code %s}, in order; none where nothing is open
   * @return id and words
   */
  public Statement with(Object... open) {
    return new Statement(id, open.length == 0 ? text : text.formatted(open));
  }

  /**
   * All there may be.
   *
   * @return each with {@code %s} for what depends on the job
   */
  public static List<Statement> all() {
    return Arrays.stream(values()).map(Assumption::with).toList();
  }
}
