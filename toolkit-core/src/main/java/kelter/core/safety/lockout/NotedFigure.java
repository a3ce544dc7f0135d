package kelter.core.safety.lockout;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.safety.lockout.ReleaseTest.Result;
import kelter.core.vocabulary.Observable;

/**
 * A figure that was read at the connection of a machine of which the job lists no part there, such
 * as one without a cord: it stands at the beginning of the note of a test, before a semicolon. It
 * is held against rows 6 to 8 of the table, the error of the instrument left out.
 *
 * @param reading what was read
 * @param limits what it may be, in the coherent SI unit
 */
record NotedFigure(Reading reading, Limits limits) {

  /** The figure of a note; empty if it has none. */
  static Optional<NotedFigure> of(
      String note, Optional<Observable> observable, Optional<Limits> limits) {
    if (observable.isEmpty() || limits.isEmpty() || note.isBlank()) {
      return Optional.empty();
    }
    try {
      Reading reading = ReadingParser.parse(note.split(";", 2)[0], observable.get());
      return Optional.of(new NotedFigure(reading, limits.get()));
    } catch (QuantityFormatException words) {
      return Optional.empty();
    }
  }

  /** How it came out; what is only known to lie above or below a figure may be undecided. */
  Result result() {
    if (reading instanceof Reading.OverRange) {
      return limits.high() < Double.POSITIVE_INFINITY ? Result.NOT_MET : Result.UNDECIDED;
    }
    if (reading.least() >= limits.low() && reading.most() <= limits.high()) {
      return Result.MET;
    }
    boolean beyond = reading.most() < limits.low() || reading.least() > limits.high();
    return beyond ? Result.NOT_MET : Result.UNDECIDED;
  }
}
