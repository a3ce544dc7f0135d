package kelter.cli.command.book;

import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.text.book.SimilarText;
import kelter.cli.usage.CommandUsage;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.JobBook;
import kelter.core.book.Likeness;
import kelter.core.book.Similar;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.QuantityKind;

/** {@code kelter book similar JOB}: jobs that were like one, what it was, and what came back. */
public final class BookSimilarCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book similar",
        "Show closed jobs like one, and what it was.",
        "How often each cause was behind them, how long it took, what came back. Jobs of the same kind of machine, the likest first by symptoms, model and age.",
        List.of(BookListCommand.MOST, NamedBook.OPTION, Invocation.SHOP),
        List.of(Invocation.jobFile("the id of a job in the book, or a job file")),
        List.of("kelter book similar --shop my-shop marrowby-0412"));
  }

  @Override
  public void run(Invocation invocation) {
    String word = invocation.argument();
    try (JobBook book = NamedBook.of(invocation).open()) {
      Optional<BookEntry> entry = book.find(word);
      String own = entry.isPresent() ? word : id(word, invocation);
      Likeness wanted = entry.isPresent() ? Likeness.of(entry.get()) : likeness(invocation);
      int most = BookListCommand.most(invocation);
      List<Similar> found =
          book.similar(wanted, most + 1).stream()
              .filter(each -> !each.entry().job().equals(own))
              .limit(most)
              .toList();
      Map<String, List<String>> cameBack =
          book.cameBack(found.stream().map(each -> each.entry().job()).limit(1_000).toList());
      Command.show(
          invocation,
          () -> BookJson.similar(word, found, cameBack),
          () -> SimilarText.of(word, found, cameBack, invocation.terminal()));
    }
  }

  /** The id of the job in a file, which may be in the book as well. */
  private static String id(String word, Invocation invocation) {
    if (!Files.exists(invocation.jobFile())) {
      throw BookShowCommand.unknown(word);
    }
    return invocation.job().id();
  }

  private static Likeness likeness(Invocation invocation) {
    Job job = invocation.job();
    Appliance appliance = job.appliance();
    OptionalDouble age =
        appliance.age().isPresent()
            ? OptionalDouble.of(QuantityKind.AGE.unit().fromSi(appliance.age().get().si()))
            : OptionalDouble.empty();
    Map<String, Answer> symptoms = new TreeMap<>();
    for (SymptomReport report : job.complaint().symptoms()) {
      symptoms.put(report.symptom(), report.answer());
    }
    return new Likeness(
        new BookedMachine(
            appliance.kind(),
            appliance.maker(),
            appliance.model(),
            "",
            age,
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        symptoms);
  }
}
