package kelter.cli.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.text.Figures;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.work.Accepted;
import kelter.core.quantity.Money;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.shop.Repairer;
import kelter.core.vocabulary.Likelihood;
import kelter.core.vocabulary.Statement;

/** The sentences that text and page of a quotation share. */
final class QuoteWords {

  /** What stands at the end of a quotation and of a form. */
  static final String NOT_ADVICE =
      "Data for a quotation, no legal advice: local law and licensed advice come first.";

  /** What stands at the end of an invoice. */
  static final String INVOICE_NOT_ADVICE =
      "Data for an invoice, no legal advice: local law and licensed advice come first.";

  /** What is less likely is not named to an owner while nothing is decided; own choice. */
  private static final double WORTH_TELLING = 0.2;

  private static final double HALF = 0.5;

  private QuoteWords() {}

  static String machine(Job job) {
    Appliance appliance = job.appliance();
    String name = (appliance.maker() + " " + appliance.model()).strip();
    String serial = appliance.serial().isBlank() ? "" : ", serial number " + appliance.serial();
    return appliance.kind().replace('-', ' ') + (name.isEmpty() ? "" : ", " + name) + serial;
  }

  static String stands(Quote quote) {
    return "Quotation of %s. It stands until %s.".formatted(quote.day(), quote.validUntil());
  }

  /** What is wrong, and how sure that is. */
  static String cause(Quote.Cause cause) {
    String odds =
        " (%s: %s)"
            .formatted(
                Figures.percent(cause.probability()), Likelihood.of(cause.probability()).words());
    if (cause.faults().isEmpty() && cause.probability() >= HALF) {
      return "Nothing wrong was found" + odds + ".";
    }
    String likely =
        (cause.faults().isEmpty() ? "nothing" : String.join("; and ", cause.faults())) + odds;
    if (cause.decided()) {
      return "Most likely: " + likely + ".";
    }
    return "It is not decided yet what is wrong."
        + (cause.probability() < WORTH_TELLING ? "" : " Likeliest so far: " + likely + ".");
  }

  /** What the lock-out table does to the offers; empty if nothing. */
  static List<String> stop(Quote quote) {
    List<String> told = new ArrayList<>();
    if (quote.stop().all()) {
      told.add("No work on it is for this tool, and so nothing is quoted.");
    } else if (quote.stop().only()) {
      told.add("Only work that ends this is quoted, and what is needed in any case.");
    }
    for (String first : Statement.texts(quote.stop().first())) {
      told.add("First: " + first);
    }
    return told;
  }

  /** Why nothing is mended, where nothing is offered to mend. */
  static Optional<String> nothing(Quote quote) {
    boolean mends = quote.offers().stream().anyMatch(offer -> !offer.work().isEmpty());
    return mends || quote.stop().all() || quote.stop().only()
        ? Optional.empty()
        : Optional.of("No work is likely enough to be worth a price.");
  }

  /** What declining costs, and whether it is taken off. */
  static Optional<String> declined(Quote quote) {
    return quote
        .ifDeclined()
        .map(
            bill ->
                (bill.open().isEmpty()
                        ? "If you decline: %s, for call-out and diagnosis. "
                            .formatted(BillWords.amount(bill, quote.market()))
                        : "If you decline: call-out and diagnosis, whose price is not known yet. ")
                    + credited(quote));
  }

  private static String credited(Quote quote) {
    return quote.credited().orElse(false)
        ? "It is taken off if the machine is mended."
        : "The call-out is charged in any case.";
  }

  /** What is for the technician and not for the owner; empty if there is nothing. */
  static Optional<String> note(Quote quote) {
    List<String> missing = new ArrayList<>();
    if (!quote.stop().all()) {
      missing.addAll(missing(quote.offering().repairer()));
      if (quote.guarantee().isEmpty()) {
        missing.add("guarantee");
      }
    }
    boolean decided = quote.cause().decided() || quote.stop().all();
    String decide = decided ? "" : "To decide it: " + quote.cause().action() + ".";
    return note(decide, told(missing, "in the profile of the shop"));
  }

  /** What is for the technician and not for the owner; empty if there is nothing. */
  static Optional<String> note(Invoice invoice, List<String> customer) {
    List<String> missing = new ArrayList<>();
    if (invoice.number().isEmpty()) {
      missing.add("number of the invoice (--number)");
    }
    if (invoice.done().isEmpty()) {
      missing.add("day of the work");
    }
    missing.addAll(missing(invoice.offering().repairer()));
    if (invoice.offering().repairer().vatNumber().isBlank()) {
      missing.add("VAT number of the repairer");
    }
    if (customer.isEmpty()) {
      missing.add("name and address of the customer");
    }
    return note(
        String.join(" ", beforeItGoesOut(invoice)), told(missing, "in job, profile or command"));
  }

  /** What would make this invoice another one than the job, the book or the owner expects. */
  private static List<String> beforeItGoesOut(Invoice invoice) {
    List<String> told = new ArrayList<>();
    if (invoice.difference().filter(amount -> amount.amount().signum() > 0).isPresent()) {
      told.add(
          "It is above the accepted offer: charge that only if the owner agreed before the work.");
    }
    if (invoice.creditOpen()) {
      told.add(
          "The call-out is taken off only where the machine is mended: close the job before you send"
              + " this.");
    }
    boolean asksMoney =
        invoice.bill().total().filter(total -> total.amount().signum() == 0).isEmpty();
    if (!invoice.callBack().isEmpty() && asksMoney) {
      told.add(
          "Is it the same defect? Then close the job with --charged '0 %s' first."
              .formatted(invoice.bill().currency()));
    }
    invoice
        .charged()
        .ifPresent(
            amount ->
                told.add(
                    "The job was closed with %s charged, and the lines come to something else."
                        .formatted(amount.format())));
    return told;
  }

  private static Optional<String> note(String first, Optional<String> missing) {
    String note = (first + " " + missing.orElse("")).strip();
    return note.isEmpty() ? Optional.empty() : Optional.of(note);
  }

  /** For whom it is; empty if nobody tells. */
  static Optional<String> customer(List<String> customer) {
    return customer.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", customer));
  }

  private static List<String> missing(Repairer repairer) {
    List<String> missing = new ArrayList<>();
    if (repairer.name().isBlank()) {
      missing.add("repairer");
    }
    if (repairer.address().isBlank()) {
      missing.add("address");
    }
    if (repairer.telephone().isBlank() && repairer.email().isBlank()) {
      missing.add("telephone or e-mail");
    }
    return missing;
  }

  private static Optional<String> told(List<String> missing, String where) {
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of("Not told %s: %s.".formatted(where, String.join(", ", missing)));
  }

  /** Who offers it, a line each; none if nobody tells. */
  static List<String> repairer(Repairer repairer) {
    List<String> lines = new ArrayList<>();
    for (String[] line :
        new String[][] {
          {"", repairer.name()},
          {"", repairer.address()},
          {"Telephone ", repairer.telephone()},
          {"E-mail ", repairer.email()},
          {"", repairer.online()},
          {"VAT number ", repairer.vatNumber()},
          {"", repairer.register()}
        }) {
      if (!line[1].isBlank()) {
        lines.add(line[0] + line[1]);
      }
    }
    return lines;
  }

  /** The title of an offer whose work is told line by line below, so that it needs no list. */
  static String above(Offer offer) {
    return offer.work().size() > 1
        ? "Mend it, with as much of the work below as is needed"
        : offer.title();
  }

  /** How the invoice differs from the accepted offer; empty if none is recorded. */
  private static Optional<String> difference(Invoice invoice) {
    return invoice.accepted().map(accepted -> difference(invoice, accepted));
  }

  /** What stands below the bill. */
  static List<String> besides(Invoice invoice) {
    List<String> besides = new ArrayList<>();
    if (!invoice.callBack().isEmpty()) {
      besides.add(invoice.callBack());
    }
    invoice
        .charged()
        .ifPresent(amount -> besides.add("Charged in all: " + amount.format() + ", tax included."));
    difference(invoice).ifPresent(besides::add);
    if (!invoice.guarantee().isEmpty()) {
      besides.add(invoice.guarantee());
    }
    return besides;
  }

  private static String difference(Invoice invoice, Accepted accepted) {
    String against =
        "Accepted on %s: %s%s."
            .formatted(
                accepted.date(),
                accepted.title(),
                accepted.most().map(most -> ", " + most.format()).orElse(""));
    if (invoice.difference().isEmpty()) {
      return against + " The difference is open.";
    }
    Money difference = invoice.difference().get();
    int sign = difference.amount().signum();
    String amount = new Money(difference.amount().abs(), difference.currency()).format();
    if (sign == 0) {
      return against + " It comes to the same.";
    }
    return against + " It comes to %s %s.".formatted(amount, sign < 0 ? "less" : "more");
  }

  static String issued(Invoice invoice) {
    return "Data for the invoice%s, issued %s%s."
        .formatted(
            invoice.number().map(number -> " " + number).orElse(""),
            invoice.day(),
            invoice.done().map(day -> ", work done " + day).orElse(""));
  }
}
