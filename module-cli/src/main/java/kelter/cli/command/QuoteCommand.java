package kelter.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import kelter.cli.advice.PriceAdvice;
import kelter.cli.json.QuoteJson;
import kelter.cli.quote.QuotePage;
import kelter.cli.quote.QuoteText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.quote.Invoice;
import kelter.core.quote.Quote;
import kelter.core.quote.RepairForm;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.workshop.Case;

/** {@code kelter quote JOB}: what the owner may choose, and for which price. */
final class QuoteCommand implements Command {

  private static final CommandOption OPTION =
      CommandOption.one(
          "--option",
          ValueKind.COUNT,
          "N",
          "the option to tell line by line, or that --form or --final is about (default 1)");
  private static final CommandOption FINAL =
      CommandOption.flag("--final", "the data of the invoice, from the work that the job records");
  private static final CommandOption NUMBER =
      CommandOption.one(
          "--number", ValueKind.TEXT, "NUMBER", "with --final: the number of the invoice");
  private static final CommandOption FORM =
      CommandOption.one(
          "--form",
          ValueKind.FORM,
          "FORM",
          "data for the European Repair Information Form: json, or html with -o");
  private static final CommandOption DAY =
      CommandOption.one(
          "--day", ValueKind.TEXT, "YYYY-MM-DD", "the day of issue (default today, UTC)");
  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE.html",
              "a page to print, on A4 or Letter (default: the terminal)")
          .or("-o");
  private static final String PAGE = ".html";
  private static final String HTML = "html";
  private static final int LONGEST_NUMBER = 60;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "quote",
        "Quote a fixed or maximum price, or tell the data of the invoice.",
        "A maximum is the sum of all work that may be needed, never an expected cost. Prices and tax come from the job and the shop; what is missing stays"
            + " open. No legal advice: local law comes first.",
        List.of(OPTION, FINAL, NUMBER, FORM, DAY, OUTPUT, NamedShop.OPTION),
        List.of(Invocation.jobFile("a job file with prices")),
        List.of(
            "kelter quote demo/jobs/dear-heater.json",
            "kelter quote --option 1 demo/jobs/dear-heater.json",
            "kelter quote -o quotation.html demo/jobs/dear-heater.json",
            "kelter quote --form json demo/jobs/dear-heater.json"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Optional<Path> page = invocation.given().path(OUTPUT);
    page.ifPresent(QuoteCommand::requirePage);
    Optional<String> form = invocation.given().text(FORM);
    requireSense(invocation, form, page);
    LocalDate day = day(invocation);
    Case machine = invocation.open();
    invocation.advise(PriceAdvice.of(machine.job(), machine.remedies()));
    Quote quote = quote(invocation, machine, day);
    int option = invocation.given().count(OPTION, 1);
    boolean named = invocation.given().has(OPTION);
    if (named) {
      quote.offer(option);
    }
    if (form.isPresent()) {
      form(invocation, machine, quote, option, page);
    } else if (invocation.given().has(FINAL)) {
      invoice(invocation, machine, quote, option, page);
    } else {
      OptionalInt told = named ? OptionalInt.of(option) : OptionalInt.empty();
      quotation(invocation, machine, quote, told, page);
    }
  }

  private static Quote quote(Invocation invocation, Case machine, LocalDate day) {
    try {
      return Quote.of(machine, invocation.workshop().shop().offering(), day);
    } catch (InputException mistakes) {
      throw invocation.placed(mistakes);
    }
  }

  private static void quotation(
      Invocation invocation, Case machine, Quote quote, OptionalInt option, Optional<Path> page) {
    if (page.isPresent()) {
      TextFile.write(page.get(), QuotePage.of(machine.job(), quote));
      return;
    }
    QuoteText text = new QuoteText(invocation.terminal());
    Command.show(
        invocation,
        () -> QuoteJson.of(quote, machine),
        () -> text.quote(machine.job(), quote, option));
  }

  private static void invoice(
      Invocation invocation, Case machine, Quote quote, int option, Optional<Path> page) {
    Invoice invoice;
    try {
      invoice = Invoice.of(machine, quote, option, number(invocation));
    } catch (InputException mistakes) {
      throw invocation.placed(mistakes);
    }
    if (page.isPresent()) {
      TextFile.write(page.get(), QuotePage.of(machine.job(), invoice, quote));
      return;
    }
    QuoteText text = new QuoteText(invocation.terminal());
    Command.show(
        invocation,
        () -> QuoteJson.of(invoice, machine),
        () -> text.invoice(machine.job(), invoice, quote));
  }

  private static void form(
      Invocation invocation, Case machine, Quote quote, int option, Optional<Path> page) {
    RepairForm form = RepairForm.of(machine, quote, quote.offer(option));
    if (page.isPresent()) {
      TextFile.write(page.get(), QuotePage.of(machine.job(), form, quote));
    } else {
      invocation.tell(QuoteJson.of(form, quote, machine));
    }
  }

  private static Optional<String> number(Invocation invocation) {
    Optional<String> number = invocation.given().text(NUMBER);
    if (number.isPresent() && (number.get().isBlank() || number.get().length() > LONGEST_NUMBER)) {
      throw new InputException(
          NUMBER.name(),
          "is no number of an invoice",
          "write 1 to " + LONGEST_NUMBER + " signs, such as 2026-0117");
    }
    return number;
  }

  private static LocalDate day(Invocation invocation) {
    Optional<String> told = invocation.given().text(DAY);
    if (told.isEmpty()) {
      return LocalDate.ofInstant(invocation.clock().instant(), ZoneOffset.UTC);
    }
    try {
      return CalendarDate.require(told.get());
    } catch (IllegalArgumentException refused) {
      throw new InputException(DAY.name(), refused.getMessage(), "");
    }
  }

  /** The page takes the place of an older one, but never of a file of another kind. */
  private static void requirePage(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(PAGE)) {
      throw new InputException(
          file.toString(), "is not the name of a page", "let it end in " + PAGE);
    }
  }

  private static void requireSense(
      Invocation invocation, Optional<String> form, Optional<Path> page) {
    boolean last = invocation.given().has(FINAL);
    if (form.isPresent() && last) {
      throw new InputException(
          FORM.name(), "is for the offer, not for the invoice", "leave " + FINAL.name() + " away");
    }
    if (form.isPresent() && form.get().equals(HTML) != page.isPresent()) {
      throw new InputException(
          FORM.name() + " " + form.get(),
          page.isPresent() ? "is no page" : "is a page",
          page.isPresent() ? "write --form html" : "say where it goes with -o FILE.html");
    }
    if (invocation.given().has(NUMBER) && !last) {
      throw new InputException(
          NUMBER.name(), "is for an invoice", "a quotation has none; add " + FINAL.name());
    }
  }
}
