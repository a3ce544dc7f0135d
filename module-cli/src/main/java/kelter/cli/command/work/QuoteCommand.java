package kelter.cli.command.work;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kelter.cli.advice.PriceAdvice;
import kelter.cli.command.Command;
import kelter.cli.command.FirstJob;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.PageName;
import kelter.cli.command.entry.JobEdits;
import kelter.cli.json.QuoteJson;
import kelter.cli.quote.QuotePage;
import kelter.cli.quote.QuoteText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.disk.TextFile;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.person.Persons;
import kelter.core.file.shop.ShopFolder;
import kelter.core.job.work.Accepted;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.quote.RepairForm;
import kelter.core.shop.Person;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.workshop.Case;

/** {@code kelter quote JOB}: what the owner may choose, and for which price. */
public final class QuoteCommand implements Command {

  private static final CommandOption OPTION =
      CommandOption.one(
          "--option",
          ValueKind.COUNT,
          "N",
          "the option to tell line by line, or that --form is about (default 1)");
  private static final CommandOption ACCEPT =
      CommandOption.one(
          "--accept",
          ValueKind.COUNT,
          "N",
          "write into the job that the owner took this option; the invoice is held against it");
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
  private static final String HTML = "html";
  private static final int LONGEST_NUMBER = 60;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "quote",
        "Quote a fixed or maximum price, or tell the data of the invoice.",
        "A maximum is the sum of all work that may be needed, never an expected cost. Prices and tax come from the job and the shop; what is missing stays"
            + " open. No legal advice: local law comes first.",
        List.of(OPTION, ACCEPT, FINAL, NUMBER, FORM, DAY, OUTPUT, NamedShop.OPTION),
        List.of(Invocation.jobFile("a job file with prices")),
        List.of(
            "kelter quote demo/jobs/dear-heater.json",
            "kelter quote --option 1 demo/jobs/dear-heater.json",
            "kelter quote --accept 1 job.json",
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
    page.ifPresent(PageName::require);
    Optional<String> form = invocation.given().text(FORM);
    requireSense(invocation, form, page);
    LocalDate day = day(invocation);
    if (invocation.given().has(ACCEPT)) {
      accept(invocation, day);
      return;
    }
    Case machine = invocation.open();
    invocation.advise(PriceAdvice.of(machine.job(), machine.remedies()));
    invocation.adviseOnShop(machine);
    if (invocation.given().has(FINAL)) {
      invoice(invocation, machine, day, page);
      return;
    }
    Quote quote = quote(invocation, machine, day);
    int option = invocation.given().count(OPTION, 1);
    boolean named = invocation.given().has(OPTION);
    if (named) {
      quote.offer(option);
    }
    if (form.isPresent()) {
      form(invocation, machine, quote, option, page);
    } else {
      OptionalInt told = named ? OptionalInt.of(option) : OptionalInt.empty();
      quotation(invocation, machine, quote, told, page);
    }
  }

  /** An offer is taken before the work, so that what is read or done later does not change it. */
  private static void accept(Invocation invocation, LocalDate day) {
    JobEdits edits = new JobEdits(invocation);
    Case machine = invocation.open();
    if (machine.job().progress().isWorked()) {
      throw new InputException(
          ACCEPT.name(),
          "comes too late: work is recorded already",
          "an offer is accepted before the work");
    }
    Quote quote = quote(invocation, machine, day);
    int option = invocation.given().count(ACCEPT, 1);
    Offer offer = quote.offer(option);
    Accepted accepted = new Accepted(option, offer.title(), offer.bill().total(), day.toString());
    edits.add(ACCEPT.name(), () -> content -> ProgressEdit.with(content, accepted));
    edits.write();
    QuoteText text = new QuoteText(invocation.terminal());
    Command.show(
        invocation,
        () -> QuoteJson.of(quote, machine),
        () -> text.accepted(accepted, offer, quote));
  }

  private static Quote quote(Invocation invocation, Case machine, LocalDate day) {
    try {
      Quote quote = Quote.of(machine, invocation.workshop().shop().offering(), day);
      return quote.offers().isEmpty()
          ? quote
          : FirstJob.grants(invocation, machine.job()).map(quote::with).orElse(quote);
    } catch (InputException mistakes) {
      throw placed(invocation, mistakes);
    }
  }

  /** The mistakes with their lines; prices that are missing may stand in the shop's file, too. */
  private static InputException placed(Invocation invocation, InputException mistakes) {
    Optional<Path> shop = invocation.shop().folder().map(ShopFolder::path);
    String elsewhere =
        shop.map(folder -> ", there or in " + folder.resolve("prices.json"))
            .orElse(", or name a shop with prices by '--shop'");
    List<Problem> told = new ArrayList<>();
    for (Problem each : mistakes.problems()) {
      told.add(
          each.where().equals("/prices")
              ? new Problem(
                  each.mistake(),
                  each.where(),
                  each.what(),
                  each.remedy() + elsewhere,
                  each.place())
              : each);
    }
    return invocation.placed(new InputException(told));
  }

  /** Name and address of the person whose job it is, where the shop knows. */
  private static List<String> customer(Invocation invocation, Case machine) {
    return invocation
        .shop()
        .folder()
        .flatMap(folder -> new Persons(folder.path()).of(machine.job().id()))
        .map(Person::lines)
        .orElse(List.of());
  }

  private static void write(Invocation invocation, Path page, String text) {
    TextFile.write(page, text);
    invocation.terminal().complain("kelter: written: " + page);
  }

  /** A page is for the owner; what only the technician has to know is told beside it. */
  private static void note(Invocation invocation, Optional<String> note) {
    note.ifPresent(words -> invocation.terminal().complain("kelter: " + words));
  }

  private static void quotation(
      Invocation invocation, Case machine, Quote quote, OptionalInt option, Optional<Path> page) {
    List<String> customer = customer(invocation, machine);
    if (page.isPresent()) {
      write(invocation, page.get(), QuotePage.of(machine, quote, customer));
      note(invocation, QuoteText.note(quote));
      if (!invocation.isJson()) {
        return;
      }
    }
    QuoteText text = new QuoteText(invocation.terminal());
    Command.show(
        invocation,
        () -> QuoteJson.of(quote, machine),
        () -> text.quote(machine.job(), quote, customer, option));
  }

  private static void invoice(
      Invocation invocation, Case machine, LocalDate day, Optional<Path> page) {
    Invoice invoice;
    try {
      Invoice priced =
          Invoice.of(machine, invocation.workshop().shop().offering(), day, number(invocation));
      invoice = FirstJob.grants(invocation, machine.job()).map(priced::with).orElse(priced);
    } catch (InputException mistakes) {
      throw placed(invocation, mistakes);
    }
    List<String> customer = customer(invocation, machine);
    if (page.isPresent()) {
      write(invocation, page.get(), QuotePage.of(machine, invoice, customer));
      note(invocation, QuoteText.note(invoice, customer));
      if (!invocation.isJson()) {
        return;
      }
    }
    QuoteText text = new QuoteText(invocation.terminal());
    Command.show(
        invocation,
        () -> QuoteJson.of(invoice, machine),
        () -> text.invoice(machine, invoice, customer));
  }

  private static void form(
      Invocation invocation, Case machine, Quote quote, int option, Optional<Path> page) {
    RepairForm form = RepairForm.of(machine, quote, quote.offer(option));
    if (page.isPresent()) {
      write(invocation, page.get(), QuotePage.of(machine, form, quote));
    }
    if (page.isEmpty() || invocation.isJson()) {
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

  private static void requireSense(
      Invocation invocation, Optional<String> form, Optional<Path> page) {
    boolean last = invocation.given().has(FINAL);
    if (last && invocation.given().has(OPTION)) {
      throw new InputException(
          OPTION.name(),
          "is for the quotation",
          "an invoice is held against the offer that the job records; 'kelter quote --accept N'"
              + " records it before the work");
    }
    for (CommandOption other : List.of(OPTION, FINAL, FORM, NUMBER, OUTPUT)) {
      if (invocation.given().has(ACCEPT) && invocation.given().has(other)) {
        throw new InputException(
            other.name(), "does not go with " + ACCEPT.name(), "leave one of them away");
      }
    }
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
