package kelter.fleet;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.core.book.BookEntry;
import kelter.core.book.learning.BookLearning;
import kelter.core.file.book.EntryLine;
import kelter.core.problem.InputException;
import scala.Tuple2;

/**
 * An entry of a book as it travels between machines, or why a line is none.
 *
 * @param job its job; the place of the line if it is refused
 * @param closed the day of closing, year first, so that days sort as texts
 * @param ties what it is tied to others by
 * @param text the entry as a line, always in the same spelling
 * @param refused what is wrong with it; empty if it is used
 */
record Entry(String job, String closed, List<String> ties, String text, String refused)
    implements Serializable {

  static Entry of(Line line) {
    try {
      BookEntry entry = EntryLine.read(line.text());
      return new Entry(
          entry.job(),
          entry.closed().toString(),
          new ArrayList<>(BookLearning.ties(entry)),
          EntryLine.write(entry),
          "");
    } catch (InputException mistakes) {
      return refused(
          line.place(),
          mistakes.problems().stream().map(line::told).collect(Collectors.joining("\n")));
    }
  }

  private static Entry refused(String job, String why) {
    return new Entry(job, "", List.of(), "", why);
  }

  Tuple2<String, Entry> keyed() {
    return new Tuple2<>(job, this);
  }

  boolean isUsed() {
    return refused.isEmpty();
  }

  /** A job that is told twice counts once; which of two different ones holds, nobody knows. */
  Entry or(Entry same) {
    return text.equals(same.text)
        ? this
        : refused(
            job,
            "job '"
                + job
                + "' is told in different ways; no job of that id was used: give each its own id,"
                + " for instance with the name of the shop before it");
  }
}
