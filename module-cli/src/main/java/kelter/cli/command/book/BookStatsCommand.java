package kelter.cli.command.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.PageName;
import kelter.cli.json.ShopFiguresJson;
import kelter.cli.report.BookPage;
import kelter.cli.text.book.ShopFiguresText;
import kelter.cli.text.book.StatsText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.figures.BookFigures;
import kelter.core.book.figures.Question;
import kelter.core.book.figures.ShopFigures;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kinds;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.quantity.Money;
import kelter.core.shop.Shop;

/** {@code kelter book stats}: what a shop asks its job book. */
public final class BookStatsCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE.html",
              "the answers as one page (default: all tables on the terminal)")
          .or("-o");
  private static final CommandOption HOUR =
      CommandOption.one(
          "--hour-costs",
          ValueKind.TEXT,
          "MONEY",
          "what an hour of work costs you (default: its price in the shop's prices)");
  private static final CommandOption RESTOCK =
      CommandOption.one(
          "--restock-days",
          ValueKind.NUMBER,
          "DAYS",
          "until a part that was used is in the van again (default 7)");
  private static final CommandOption SERVICE =
      CommandOption.one(
          "--service",
          ValueKind.NUMBER,
          "RATIO",
          "the chance that nothing is missing until then (default 0.95)");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book stats",
        "Answer from the job book what a shop asks, in tables or a page.",
        "Spares to carry, what an hour must be asked at, what to lay aside for call-backs, how often"
            + " the first job cures, where time goes, which models fail; then what the book tells of causes and parts. Every figure says from how"
            + " many jobs it is. Nothing is forgotten unless you say so. JSON has the answers; what"
            + " the book taught is in the file that 'kelter book learn -o FILE' writes.",
        List.of(
            HOUR,
            RESTOCK,
            SERVICE,
            OUTPUT,
            BookLearnCommand.KEPT,
            NamedBook.OPTION,
            Invocation.SHOP),
        List.of(),
        List.of(
            "kelter book stats --shop my-shop",
            "kelter book stats --shop my-shop --hour-costs 38EUR -o book.html"));
  }

  @Override
  public void run(Invocation invocation) {
    Optional<Path> file = invocation.given().path(OUTPUT);
    file.ifPresent(PageName::require);
    BookFigures reader = BookFigures.begin(question(invocation));
    Learned learned = BookLearnCommand.learned(invocation, 1, reader::read);
    ShopFigures figures = reader.figures();
    Kinds kinds = BookLearnCommand.kinds(invocation);
    if (file.isPresent()) {
      TextFile.write(file.get(), BookPage.of(figures, kinds));
      invocation.terminal().complain("kelter: written: " + file.get());
    }
    if (file.isEmpty() || invocation.isJson()) {
      Command.show(
          invocation,
          () -> ShopFiguresJson.of(figures),
          () ->
              ShopFiguresText.of(figures, kinds, invocation.terminal())
                  + "\n"
                  + StatsText.of(learned, kinds, invocation.terminal()));
    }
  }

  private static Question question(Invocation invocation) {
    invocation.leaveOutBook();
    Shop shop = invocation.workshop().shop();
    try {
      return new Question(
          LocalDate.now(invocation.clock()),
          invocation.given().number(RESTOCK, Question.USUAL_RESTOCK_DAYS),
          invocation.given().number(SERVICE, Question.USUAL_SERVICE),
          invocation.given().text(HOUR).map(Money::parse),
          shop.prices(),
          shop.stock());
    } catch (IllegalArgumentException refused) {
      throw new InputException("book stats", refused.getMessage(), "");
    }
  }
}
