package kelter.cli.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.job.Job;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;

/** Quotations and data of invoices as text for one screen. */
public final class QuoteText {

  private static final String INDENT = "   ";
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
   * @param option the number of the offer that is told line by line, from 1; empty for none
   * @return the text
   */
  public String quote(Job job, Quote quote, OptionalInt option) {
    Layout layout = head(job, quote);
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
    layout.line(all ? String.join(" ", quote.terms()) : quote.terms().get(0));
    QuoteWords.missing(quote).ifPresent(layout::line);
    layout.line(all ? QuoteWords.NOT_ADVICE : MORE);
  }

  private Layout head(Job job, Quote quote) {
    Layout layout = new Layout(terminal);
    if (!quote.stop().text().isEmpty()) {
      layout.hanging("! ", terminal.attention("DANGER: " + quote.stop().text()));
    }
    return layout.line(job.id() + ": " + QuoteWords.machine(job));
  }

  /**
   * The data of an invoice.
   *
   * @param job its job
   * @param invoice the data
   * @param quote the quotation it is held against
   * @return the text
   */
  public String invoice(Job job, Invoice invoice, Quote quote) {
    Layout layout = head(job, quote);
    layout.line(QuoteWords.issued(invoice));
    layout.heading("To pay");
    layout.line(sentence(BillWords.amount(invoice.bill(), invoice.market())) + ".");
    bill(invoice.bill(), layout);
    layout.heading("What holds besides");
    layout.line(QuoteWords.difference(invoice));
    if (!invoice.guarantee().isEmpty()) {
      layout.line(invoice.guarantee());
    }
    QuoteWords.missing(invoice).ifPresent(layout::line);
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
