package kelter.core.book;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A store of closed jobs, each once by its id. Where the store cannot be read or written, every
 * method throws {@link kelter.core.problem.InputException}, and what was there before stays.
 */
public interface JobBook extends AutoCloseable {

  /**
   * Adds entries, all or none of them. An entry that is there already is left as it is, so that the
   * same entries may be given again. One without a serial number is the same as one that has it,
   * since entries are given away without it.
   *
   * @param entries the entries, each job once
   * @return what became of each, in the same order
   */
  List<Added> add(List<BookEntry> entries);

  /**
   * The entry of a job.
   *
   * @param job the id of the job
   * @return the entry, or empty if there is none
   */
  Optional<BookEntry> find(String job);

  /**
   * Entries, the latest first.
   *
   * @param selection which
   * @return the entries
   */
  List<BookEntry> list(Selection selection);

  /**
   * Entries that have all of some words, or words that begin so, in complaint, notes, maker, model
   * or serial.
   *
   * @param words words in any case; what is no letter or digit parts them
   * @param most so many at most
   * @return the entries, the latest first; none if there is no word
   */
  List<BookEntry> search(String words, int most);

  /**
   * Entries of the same kind that are like something, the likest first.
   *
   * @param wanted what is looked for
   * @param most so many at most
   * @return the entries with their points
   */
  List<Similar> similar(Likeness wanted, int most);

  /**
   * Which complaints came back.
   *
   * @param jobs the ids of jobs, up to a thousand
   * @return by the id of a job those that were call-backs of it
   */
  Map<String, List<String>> cameBack(Collection<String> jobs);

  /**
   * Goes through all entries by the day of closing, then as they were added, without holding them
   * all.
   *
   * @param reader is given each of them
   */
  void each(Consumer<BookEntry> reader);

  /**
   * Goes through all entries in the same order, with what {@link
   * kelter.core.book.learning.BookLearning} reads of them alone, which is quicker.
   *
   * @param reader is given each of them without complaint and notes, what was displayed, the day of
   *     the call, the market, cycles and hours, charges and the price of parts
   */
  void lessons(Consumer<BookEntry> reader);

  /**
   * Looks whether the store is sound and every entry is as it was added.
   *
   * @return what is wrong, in words for a person; empty if nothing is
   */
  List<String> check();

  /**
   * Copies the whole book as it is now, while others may go on writing to it.
   *
   * @param to where to, a file that is not there yet
   */
  void backUp(Path to);

  /**
   * How many entries there are.
   *
   * @return 0 or more
   */
  long size();

  @Override
  void close();
}
