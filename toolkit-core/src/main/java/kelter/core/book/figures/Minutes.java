package kelter.core.book.figures;

import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;

/** The minutes of a job. */
final class Minutes {

  private Minutes() {}

  /**
   * Those of all its work, and of the readings that tell theirs.
   *
   * @return above 0; empty where a work does not tell its minutes, or there is none
   */
  static OptionalDouble of(BookEntry entry) {
    double sum = 0;
    for (WorkDone work : entry.work()) {
      if (work.minutes().isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += work.minutes().getAsDouble();
    }
    if (!(sum > 0)) {
      return OptionalDouble.empty();
    }
    for (ReadingTaken reading : entry.readings()) {
      sum += reading.minutes().orElse(0);
    }
    return OptionalDouble.of(sum);
  }
}
