package kelter.cli.quote;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.terminal.MarketWords;
import kelter.core.job.Job;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.quote.RepairForm;
import kelter.core.shop.Repairer;
import kelter.core.text.HarmlessText;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/**
 * Quotations, data of invoices and data for the repair form as pages of HTML to be printed. They
 * load nothing and run nothing, and what a job or a profile says is escaped.
 */
public final class QuotePage {

  private static final String TEMPLATE = "quote.html.mustache";

  private static final String NO_FORM =
      "This is not the form. A person puts it into the layout of the Official Journal, in the"
          + " language of the consumer, and adds what is missing.";

  private final UnaryOperator<String> words;
  private final List<Map<String, Object>> sections = new ArrayList<>();
  private String advice = QuoteWords.NOT_ADVICE;

  private final Case machine;
  private final Repairer repairer;
  private final List<String> customer;

  private QuotePage(Case machine, Repairer repairer, List<String> customer) {
    UnaryOperator<String> market = MarketWords.of(machine.market());
    this.words = text -> HarmlessText.of(market.apply(text));
    this.machine = machine;
    this.repairer = repairer;
    this.customer = customer;
  }

  /**
   * The page of a quotation.
   *
   * @param machine the case
   * @param quote the quotation
   * @param customer name and address of the customer, a line each; none if nobody tells
   * @return the page
   */
  public static String of(Case machine, Quote quote, List<String> customer) {
    QuotePage page = new QuotePage(machine, quote.offering().repairer(), customer);
    boolean all = quote.stop().all();
    List<String> wrong = new ArrayList<>();
    if (!all) {
      wrong.add(QuoteWords.cause(quote.cause()));
    }
    wrong.addAll(QuoteWords.stop(quote));
    QuoteWords.nothing(quote).ifPresent(wrong::add);
    page.section(all ? "What to do" : "What is wrong", wrong, Optional.empty(), List.of());
    int number = 0;
    for (Offer offer : quote.offers()) {
      number++;
      page.section(
          number + ". " + QuoteWords.above(offer),
          List.of(BillWords.price(offer, quote.market())),
          Optional.of(offer.bill()),
          List.of());
    }
    List<String> besides = new ArrayList<>();
    QuoteWords.declined(quote).ifPresent(besides::add);
    besides.addAll(Statement.texts(quote.terms()));
    if (!besides.isEmpty()) {
      page.section("What holds besides", besides, Optional.empty(), List.of());
    }
    return page.page(
        all ? "No quotation" : "Quotation",
        all ? List.of() : List.of(QuoteWords.stands(quote)),
        quote.offers().isEmpty()
            ? List.of()
            : List.of("I accept option", "Name", "Date", "Signature"));
  }

  /**
   * The page with the data of an invoice.
   *
   * @param machine the case
   * @param invoice the data
   * @param customer name and address of the customer, a line each; none if nobody tells
   * @return the page
   */
  public static String of(Case machine, Invoice invoice, List<String> customer) {
    QuotePage page = new QuotePage(machine, invoice.offering().repairer(), customer);
    page.section(
        "To pay",
        List.of(BillWords.amount(invoice.bill(), invoice.market()) + "."),
        Optional.of(invoice.bill()),
        List.of());
    List<String> besides = QuoteWords.besides(invoice);
    if (!besides.isEmpty()) {
      page.section("What holds besides", besides, Optional.empty(), List.of());
    }
    page.advice = QuoteWords.INVOICE_NOT_ADVICE;
    return page.page(
        "Data for the invoice",
        List.of(QuoteWords.issued(invoice)),
        customer.isEmpty() ? List.of("Customer", "Address") : List.of());
  }

  /**
   * The page with the data for the repair form.
   *
   * @param machine the case
   * @param form the data
   * @param quote the quotation it was made of
   * @return the page
   */
  public static String of(Case machine, RepairForm form, Quote quote) {
    QuotePage page = new QuotePage(machine, quote.offering().repairer(), List.of());
    page.section("Fields", List.of(), Optional.empty(), form.fields());
    return page.page("Data for the form", List.of(NO_FORM), List.of());
  }

  private void section(
      String heading, List<String> said, Optional<Bill> bill, List<RepairForm.Field> fields) {
    sections.add(
        Map.of(
            "heading", words.apply(heading),
            "said", told(said),
            "bill", bill.map(this::bill).stream().toList(),
            "hasfields", !fields.isEmpty(),
            "fields", fields.stream().map(this::field).toList()));
  }

  private List<String> told(List<String> said) {
    return said.stream().map(words).toList();
  }

  private Map<String, Object> bill(Bill bill) {
    return Map.of(
        "lines", BillWords.lines(bill).stream().map(this::row).toList(),
        "hassums", !BillWords.sums(bill).isEmpty(),
        "sums", BillWords.sums(bill).stream().map(this::row).toList(),
        "rounding", words.apply(BillWords.rounding(bill)));
  }

  private Map<String, Object> row(BillWords.Row row) {
    return Map.of(
        "title", words.apply(row.title()),
        "count", words.apply(row.count()),
        "amount", words.apply(row.amount()));
  }

  private Map<String, Object> field(RepairForm.Field field) {
    return Map.of(
        "title", words.apply(field.title()),
        "value", told(field.value().stream().toList()),
        "missing",
            field.missing().isEmpty()
                ? List.of()
                : told(
                    List.of(
                        (field.value().isEmpty() ? "Missing: " : "To add: ")
                            + field.missing().get().text())));
  }

  private String page(String title, List<String> head, List<String> sign) {
    Job job = machine.job();
    String danger = machine.lockOut().text();
    return template()
        .execute(
            Map.of(
                "title",
                title,
                "job",
                words.apply("Job " + job.id()),
                "danger",
                danger.isEmpty() ? List.of() : told(List.of(danger)),
                "machine",
                words.apply(QuoteWords.machine(job)),
                "repairer",
                told(QuoteWords.repairer(repairer)),
                "customer",
                told(QuoteWords.customer(customer).stream().toList()),
                "head",
                told(head),
                "sections",
                sections,
                "advice",
                advice,
                "sign",
                sign));
  }

  private static Template template() {
    try (InputStream in = QuotePage.class.getResourceAsStream(TEMPLATE)) {
      return Mustache.compiler()
          .escapeHTML(true)
          .compile(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
