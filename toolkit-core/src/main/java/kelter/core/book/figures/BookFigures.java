package kelter.core.book.figures;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.book.BookEntry;

/** Goes through the entries of a book, in the order of their closing, and answers a shop. */
public final class BookFigures {

  private final Question question;
  private final Purse purse;
  private final SpareTally spares;
  private final JobTally jobTimes;
  private final CureTally cures;
  private final TimeTally time = new TimeTally();
  private final Map<String, ModelTally> models = new TreeMap<>();
  private Optional<LocalDate> first = Optional.empty();
  private int jobs;

  private BookFigures(Question question) {
    this.question = question;
    this.purse = new Purse(question);
    this.spares = new SpareTally(question, purse);
    this.jobTimes = new JobTally(purse);
    this.cures = new CureTally(question, purse);
  }

  /**
   * Begins.
   *
   * @param question what the shop asks
   * @return to be given entries
   */
  public static BookFigures begin(Question question) {
    return new BookFigures(question);
  }

  /**
   * The figures of entries.
   *
   * @param entries the entries, in the order of their closing
   * @param question what the shop asks
   * @return the figures
   */
  public static ShopFigures of(Iterable<BookEntry> entries, Question question) {
    BookFigures figures = begin(question);
    entries.forEach(figures::read);
    return figures.figures();
  }

  /**
   * Takes the next entry; one of a later day than that of the question is left out.
   *
   * @param entry the entry
   */
  public void read(BookEntry entry) {
    if (entry.closed().isAfter(question.asOf())) {
      return;
    }
    jobs++;
    if (first.isEmpty()) {
      first = Optional.of(entry.closed());
    }
    purse.look(entry);
    spares.add(entry);
    jobTimes.add(entry);
    cures.add(entry);
    time.add(entry);
    String model = entry.machine().sameModel();
    if (!model.isEmpty()) {
      models
          .computeIfAbsent(entry.machine().kind() + " " + model, any -> new ModelTally(entry))
          .add(entry);
    }
  }

  /**
   * What was found.
   *
   * @return the figures
   */
  public ShopFigures figures() {
    double years = first.map(spares::years).orElse(0.0);
    int enough =
        (int)
            models.values().stream().filter(each -> each.jobs() >= ModelRecord.LEAST_JOBS).count();
    return new ShopFigures(
        question,
        jobs,
        first,
        purse.currency(),
        purse.others(),
        years,
        spares.spares(years),
        jobTimes.times(),
        cures.callBacks(),
        cures.firstCures(),
        time.shares(),
        ModelTally.told(models.values(), question.asOf()),
        models.size() - enough);
  }
}
