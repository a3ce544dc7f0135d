package kelter.cli.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.job.Job;
import kelter.core.job.work.Accepted;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/** Quotations and data of invoices as text for one screen. */
public final class QuoteText {

  private static final String INDENT = "   ";
  private static final String NOTE = "For you only: ";
  private static final String MORE =
      "More: kelter quote --option 1 JOB (line by line) or -o FILE.html (all of it)";

  private final Terminal terminal;

  /**
   * Texts for a terminal.
   *
   * @param terminal where they will be shown
   */
  public QuoteText(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * A quotation on one screen, or one of its offers line by line.
   *
   * @param job its job
   * @param quote the quotation
   * @param customer name and address of the customer, a line each; none if nobody tells
   * @param option the number of the offer that is told line by line, from 1; empty for none
   * @return the text
   */
  public String quote(Job job, Quote quote, List<String> customer, OptionalInt option) {
    Layout layout = head(job, quote.stop().text(), customer);
    if (!quote.stop().all()) {
      layout.line(QuoteWords.stands(quote)).blank().line(QuoteWords.cause(quote.cause()));
    }
    QuoteWords.stop(quote).forEach(layout::line);
    if (quote.offers().isEmpty()) {
      return layout.toString();
    }
    layout.heading("What you can choose");
    QuoteWords.nothing(quote).ifPresent(layout::line);
    for (int number = 1; number <= quote.offers().size(); number++) {
      Offer offer = quote.offer(number);
      boolean told = option.isPresent() && option.getAsInt() == number;
      layout.hanging(
          number + ". ",
          (told ? QuoteWords.above(offer) : offer.title())
              + ". "
              + BillWords.price(offer, quote.market()));
      if (told) {
        bill(offer.bill(), layout);
      }
    }
    layout.blank();
    QuoteWords.declined(quote).ifPresent(layout::line);
    besides(quote, option.isPresent(), layout);
    return layout.toString();
  }

  /** All that holds besides, or what comes first and where the rest is. */
  private static void besides(Quote quote, boolean all, Layout layout) {
    List<String> terms = Statement.texts(quote.terms());
    layout.line(all ? String.join(" ", terms) : terms.get(0));
    if (all) {
      layout.line(QuoteWords.NOT_ADVICE);
    }
    QuoteWords.note(quote).ifPresent(note -> layout.line(NOTE + note));
    if (!all) {
      layout.line(MORE);
    }
  }

  private Layout head(Job job, String danger, List<String> customer) {
    Layout layout = new Layout(terminal);
    if (!danger.isEmpty()) {
      layout.hanging("! ", terminal.attention("DANGER: " + danger));
    }
    layout.line(job.id() + ": " + QuoteWords.machine(job));
    QuoteWords.customer(customer).ifPresent(words -> layout.hanging("For: ", words));
    return layout;
  }

  /**
   * That an offer was taken.
   *
   * @param accepted what the job records
   * @param offer the offer
   * @param quote its quotation
   * @return the text
   */
  public String accepted(Accepted accepted, Offer offer, Quote quote) {
    Layout layout = new Layout(terminal);
    layout.hanging(
        "Accepted: ",
        "option %d of %s. %s. %s"
            .formatted(
                accepted.option(),
                accepted.date(),
                accepted.title(),
                BillWords.price(offer, quote.market())));
    return layout.line("The invoice will be held against it.").toString();
  }

  /**
   * What the technician has to know of a quotation and the owner has not.
   *
   * @param quote the quotation
   * @return the note; empty if there is nothing
   */
  public static Optional<String> note(Quote quote) {
    return QuoteWords.note(quote).map(NOTE::concat);
  }

  /**
   * What the technician has to know of an invoice and the owner has not.
   *
   * @param invoice the data
   * @param customer name and address of the customer, a line each; none if nobody tells
   * @return the note; empty if there is nothing
   */
  public static Optional<String> note(Invoice invoice, List<String> customer) {
    return QuoteWords.note(invoice, customer).map(NOTE::concat);
  }

  /**
   * The data of an invoice.
   *
   * @param machine the case
   * @param invoice the data
   * @param customer name and address of the customer, a line each; none if nobody tells
   * @return the text
   */
  public String invoice(Case machine, Invoice invoice, List<String> customer) {
    Layout layout = head(machine.job(), machine.lockOut().text(), customer);
    layout.line(QuoteWords.issued(invoice));
    layout.heading("To pay");
    layout.line(sentence(BillWords.amount(invoice.bill(), invoice.market())) + ".");
    bill(invoice.bill(), layout);
    List<String> besides = QuoteWords.besides(invoice);
    if (!besides.isEmpty()) {
      layout.heading("What holds besides");
      besides.forEach(layout::line);
    }
    QuoteWords.note(invoice, customer).ifPresent(note -> layout.blank().line(NOTE + note));
    return layout.toString();
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Lines and sums, the amounts one below the other. */
  private static void bill(Bill bill, Layout layout) {
    List<BillWords.Row> rows = new ArrayList<>(BillWords.lines(bill));
    rows.addAll(BillWords.sums(bill));
    int width = rows.stream().mapToInt(row -> row.amount().length()).max().orElse(0);
    List<List<String>> cells = new ArrayList<>();
    for (BillWords.Row row : rows) {
      String amount = " ".repeat(width - row.amount().length()) + row.amount();
      String count = row.count().isEmpty() ? "" : " [" + row.count() + "]";
      cells.add(List.of(amount, row.title() + count));
    }
    layout.table(INDENT, cells);
    layout.hanging(INDENT, BillWords.rounding(bill));
  }
}
