package kelter.core.report;

import java.util.List;
import java.util.Objects;

/**
 * One thing that an owner wants to know.
 *
 * @param question the question, as an owner would ask it
 * @param answers sentences
 * @param warning whether the answer keeps the owner from using the machine
 */
public record Point(String question, List<String> answers, boolean warning) {

  /** Copies the answers. */
  public Point {
    Objects.requireNonNull(question);
    answers = List.copyOf(answers);
  }

  static Point of(String question, List<String> answers) {
    return new Point(question, answers, false);
  }
}
