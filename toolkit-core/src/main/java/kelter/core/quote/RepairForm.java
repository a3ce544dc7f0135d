package kelter.core.quote;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.shop.Repairer;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/**
 * Data for the fields of the European Repair Information Form (Directive (EU) 2024/1799, Article
 * 4(4) and Annex I; contents cited second-hand, labels and order from memory). It is not the form:
 * what a person has to fill in is said to be missing.
 *
 * @param fields the fields in their order
 */
public record RepairForm(List<Field> fields) {

  /** Why a field is empty or not complete. */
  private enum Missing {
    SHOP("not-in-shop", "not in the profile of the shop"),
    BY_HAND("repairer-states", "the repairer has to state it"),
    JOB("not-in-job", "not in the job: "),
    DECISION("not-decided", "not decided yet: "),
    WORK("mends-nothing", "this option mends nothing"),
    RATE("no-tax-rate", "the tax rate is not stated"),
    PRICE("no-price", "no price is stated for: ");

    private final String id;
    private final String text;

    Missing(String id, String text) {
      this.id = id;
      this.text = text;
    }

    Optional<Statement> told() {
      return told("");
    }

    Optional<Statement> told(String more) {
      return Optional.of(new Statement(id, text + more));
    }
  }

  private static final Optional<Statement> NOTHING = Optional.empty();

  /**
   * All that may be missing, so that programs know the ids beforehand.
   *
   * @return ids with the words that begin a sentence
   */
  public static List<Statement> vocabulary() {
    return Arrays.stream(Missing.values()).flatMap(each -> each.told().stream()).toList();
  }

  /**
   * A field.
   *
   * @param id its word in results
   * @param title what it asks for
   * @param value what goes in; empty if it is not known
   * @param missing why there is nothing, or what is still to be added; empty if nothing is missing
   */
  public record Field(
      String id, String title, Optional<String> value, Optional<Statement> missing) {

    /** Checks that nothing is null. */
    public Field {
      Required.value(id, "id of a field");
      Required.value(title, "title of a field");
      Required.optional(value, "value of a field");
      Required.optional(missing, "what is missing in a field");
    }
  }

  /** Copies the list. */
  public RepairForm {
    fields = Required.list(fields, "fields of a form");
  }

  /**
   * The data for one offer of a quotation.
   *
   * @param machine the case
   * @param quote its quotation
   * @param offer the offer that the form is for
   * @return the data
   */
  public static RepairForm of(Case machine, Quote quote, Offer offer) {
    Repairer repairer = quote.offering().repairer();
    List<Field> fields = new ArrayList<>();
    fields.add(field("repairer", "Repairer", repairer.name(), Missing.SHOP.told()));
    fields.add(field("address", "Geographical address", repairer.address(), Missing.SHOP.told()));
    fields.add(field("telephone", "Telephone", repairer.telephone(), Missing.SHOP.told()));
    fields.add(field("e-mail", "E-mail", repairer.email(), Missing.SHOP.told()));
    fields.add(
        field(
            "online", "Other contact online, if offered", repairer.online(), Missing.SHOP.told()));
    fields.add(good(machine.job()));
    fields.add(defect(quote.cause()));
    fields.add(repair(offer));
    fields.add(price(offer));
    fields.add(method(offer));
    fields.add(
        field(
            "time-to-complete",
            "Time to complete the repair",
            "",
            Missing.BY_HAND.told(" in workdays, and from when they count")));
    fields.add(
        field(
            "temporary-replacement",
            "Temporary replacement, and its cost",
            "",
            Missing.BY_HAND.told("; blank does not mean no")));
    fields.add(field("place", "Where the good is handed over", "", Missing.BY_HAND.told()));
    fields.add(ancillary(quote));
    fields.add(field("valid-until", "Period of validity", "until " + quote.validUntil(), NOTHING));
    fields.add(
        field(
            "additional",
            "Additional information",
            String.join(" ", Statement.texts(quote.terms())),
            Missing.BY_HAND.told()));
    return new RepairForm(fields);
  }

  private static Field field(String id, String title, String value, Optional<Statement> missing) {
    return value.isBlank()
        ? new Field(id, title, Optional.empty(), missing)
        : new Field(id, title, Optional.of(value), NOTHING);
  }

  private static Field good(Job job) {
    Appliance appliance = job.appliance();
    List<String> words = new ArrayList<>();
    words.add(appliance.kind().replace('-', ' '));
    List<String> missing = new ArrayList<>();
    add("maker", appliance.maker(), words, missing);
    add("model", appliance.model(), words, missing);
    add("serial number", appliance.serial(), words, missing);
    return new Field(
        "good",
        "Good to be repaired",
        Optional.of(String.join(", ", words)),
        missing.isEmpty() ? NOTHING : Missing.JOB.told(String.join(", ", missing)));
  }

  private static void add(String name, String value, List<String> words, List<String> missing) {
    if (value.isBlank()) {
      missing.add(name);
    } else {
      words.add(name + " " + value);
    }
  }

  /** An undecided defect is not filled in. */
  private static Field defect(Quote.Cause cause) {
    boolean told = cause.decided() && !cause.faults().isEmpty();
    return new Field(
        "defect",
        "Nature of the defect",
        told ? Optional.of(String.join("; and ", cause.faults())) : Optional.empty(),
        told ? NOTHING : Missing.DECISION.told(cause.action()));
  }

  private static Field repair(Offer offer) {
    return new Field(
        "repair",
        "Type of repair suggested",
        Optional.of(offer.title()),
        offer.work().isEmpty() ? Missing.WORK.told() : NOTHING);
  }

  private static Field price(Offer offer) {
    Bill bill = offer.bill();
    String title = offer.maximum() ? "Maximum price" : "Price";
    Optional<Money> total = bill.total();
    if (total.isPresent()) {
      String tax =
          bill.tax().map(amount -> ", tax of %s included".formatted(amount.format())).orElse("");
      return new Field("price", title, Optional.of(total.get().format() + tax), NOTHING);
    }
    Optional<Statement> missing =
        bill.open().isEmpty()
            ? Missing.RATE.told()
            : Missing.PRICE.told(String.join("; ", bill.open()));
    return new Field("price", title, Optional.empty(), missing);
  }

  private static Field method(Offer offer) {
    String method =
        offer.maximum()
            ? "Work by the minute at the price for an hour, parts at list price; a maximum is the"
                + " sum of all work that may be needed, with room for prices that turn out higher"
                + " where their spread is known."
            : "Fixed.";
    return field("price-method", "How the price is calculated", method, NOTHING);
  }

  private static Field ancillary(Quote quote) {
    return new Field(
        "ancillary",
        "Ancillary services such as removal, installation, transport, each with its cost",
        quote.ifDeclined().flatMap(bill -> coming(bill, quote.credited().orElse(false))),
        Missing.BY_HAND.told(" for services beyond coming to the machine, or 'none'"));
  }

  private static Optional<String> coming(Bill bill, boolean credited) {
    String before = bill.total().isPresent() ? "" : " before tax";
    return bill.total()
        .or(bill::net)
        .map(
            amount ->
                "Coming to the machine: %s%s, %s"
                    .formatted(
                        amount.format(),
                        before,
                        credited ? "taken off if the machine is mended" : "in the price above"));
  }
}
