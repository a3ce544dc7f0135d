package kelter.cli.program;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.book.BookAddCommand;
import kelter.cli.command.book.BookBackupCommand;
import kelter.cli.command.book.BookCheckCommand;
import kelter.cli.command.book.BookExportCommand;
import kelter.cli.command.book.BookImportCommand;
import kelter.cli.command.book.BookLearnCommand;
import kelter.cli.command.book.BookListCommand;
import kelter.cli.command.book.BookSearchCommand;
import kelter.cli.command.book.BookShowCommand;
import kelter.cli.command.book.BookSimilarCommand;
import kelter.cli.command.book.BookStatsCommand;
import kelter.cli.command.call.BenchCommand;
import kelter.cli.command.call.NewCommand;
import kelter.cli.command.call.SheetCommand;
import kelter.cli.command.diagnosis.CheckCommand;
import kelter.cli.command.diagnosis.DiagnoseCommand;
import kelter.cli.command.diagnosis.EnterCommand;
import kelter.cli.command.diagnosis.ReadingsCommand;
import kelter.cli.command.diagnosis.SimulateCommand;
import kelter.cli.command.handover.CloseCommand;
import kelter.cli.command.handover.ReopenCommand;
import kelter.cli.command.handover.ReportCommand;
import kelter.cli.command.shop.ModelLearnCommand;
import kelter.cli.command.shop.ShopForgetCommand;
import kelter.cli.command.shop.ShopInitCommand;
import kelter.cli.command.shop.ShopPersonCommand;
import kelter.cli.command.tool.AnswerCommand;
import kelter.cli.command.tool.ComputeCommand;
import kelter.cli.command.tool.InstrumentsCommand;
import kelter.cli.command.tool.ModulesCommand;
import kelter.cli.command.tool.SchemaCommand;
import kelter.cli.command.work.DoneCommand;
import kelter.cli.command.work.ProveCommand;
import kelter.cli.command.work.QuoteCommand;
import kelter.cli.command.work.WeighCommand;
import kelter.cli.usage.CommandUsage;

/**
 * The commands by name, of one word or two. Only the one that is asked for is made, for a quicker
 * start.
 */
final class Commands {

  /** The names, in the order in which a job goes through them. */
  static final List<String> NAMES =
      List.of(
          "bench",
          "new",
          "enter",
          "check",
          "diagnose",
          "sheet",
          "weigh",
          "quote",
          "done",
          "prove",
          "report",
          "close",
          "reopen",
          "simulate",
          "answer",
          "readings",
          "compute",
          "modules",
          "instruments",
          "schema",
          "shop init",
          "shop person",
          "shop forget",
          "model learn",
          "book add",
          "book list",
          "book show",
          "book search",
          "book similar",
          "book learn",
          "book stats",
          "book export",
          "book import",
          "book backup",
          "book check",
          "completion",
          "man");

  private Commands() {}

  /**
   * The name of the command that a command line begins with.
   *
   * @param words the words of the command line, one or more
   * @return its name; where no command is called so, the words that should have called one
   */
  static String in(String... words) {
    boolean first = NAMES.stream().anyMatch(name -> name.startsWith(words[0] + " "));
    return first && words.length > 1 && !words[1].startsWith("-")
        ? words[0] + " " + words[1]
        : words[0];
  }

  /** What each of them takes, in the same order. */
  static List<CommandUsage> usages() {
    return NAMES.stream().map(name -> named(name).usage()).toList();
  }

  /** The command of this name, one of {@link #NAMES}. */
  static Command named(String name) {
    return switch (name) {
      case "bench" -> new BenchCommand();
      case "new" -> new NewCommand();
      case "enter" -> new EnterCommand();
      case "check" -> new CheckCommand();
      case "diagnose" -> new DiagnoseCommand();
      case "sheet" -> new SheetCommand();
      case "weigh" -> new WeighCommand();
      case "quote" -> new QuoteCommand();
      case "done" -> new DoneCommand();
      case "prove" -> new ProveCommand();
      case "report" -> new ReportCommand();
      case "close" -> new CloseCommand();
      case "reopen" -> new ReopenCommand();
      case "simulate" -> new SimulateCommand();
      case "answer" -> new AnswerCommand();
      case "readings" -> new ReadingsCommand();
      case "compute" -> new ComputeCommand();
      case "modules" -> new ModulesCommand();
      case "instruments" -> new InstrumentsCommand();
      case "schema" -> new SchemaCommand();
      case "shop init" -> new ShopInitCommand();
      case "shop person" -> new ShopPersonCommand();
      case "shop forget" -> new ShopForgetCommand();
      case "model learn" -> new ModelLearnCommand();
      case "book add" -> new BookAddCommand();
      case "book list" -> new BookListCommand();
      case "book show" -> new BookShowCommand();
      case "book search" -> new BookSearchCommand();
      case "book similar" -> new BookSimilarCommand();
      case "book learn" -> new BookLearnCommand();
      case "book stats" -> new BookStatsCommand();
      case "book export" -> new BookExportCommand();
      case "book import" -> new BookImportCommand();
      case "book backup" -> new BookBackupCommand();
      case "book check" -> new BookCheckCommand();
      case "completion" -> new CompletionCommand();
      case "man" -> new ManCommand();
      default -> throw new IllegalArgumentException("no command has the name '" + name + "'");
    };
  }
}
