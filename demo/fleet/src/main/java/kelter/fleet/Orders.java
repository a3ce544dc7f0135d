package kelter.fleet;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.book.learning.LearningRule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * What the program is asked for.
 *
 * @param isLearning whether to learn; else to diagnose
 * @param from a file or a folder of lines
 * @param to the file to write what was learned to, or the new folder for the results
 * @param rule how entries count
 * @param learned what was learned before, to diagnose with
 * @param parts into how many parts the data is put
 */
record Orders(
    boolean isLearning,
    String from,
    String to,
    LearningRule rule,
    Optional<Path> learned,
    int parts) {

  static final String USAGE =
      """
      learn FROM TO [--as-of=DAY] [--kept-per-year=RATIO] [--parts=NUMBER]
      diagnose FROM TO [--learned=FILE] [--parts=NUMBER]\
      """;

  private static final int MOST_PARTS = 1_000_000;

  /**
   * Reads the words of a command line.
   *
   * @param words the words
   * @param today the day for which is learned where no other is named
   * @param usualParts the number of parts where no other is named
   * @throws InputException with every mistake
   */
  static Orders of(String[] words, LocalDate today, int usualParts) {
    List<Problem> problems = new ArrayList<>();
    List<String> plain = new ArrayList<>();
    Map<String, String> options = new HashMap<>();
    for (String word : words) {
      String[] sides = word.split("=", 2);
      if (!word.startsWith("--")) {
        plain.add(word);
      } else if (sides.length < 2 || options.put(sides[0], sides[1]) != null) {
        problems.add(new Problem(sides[0], "needs one value", "write " + sides[0] + "=VALUE once"));
      }
    }
    boolean isLearning = !plain.isEmpty() && plain.get(0).equals("learn");
    if (plain.size() != 3 || !(isLearning || plain.get(0).equals("diagnose"))) {
      problems.add(new Problem("arguments", "say not what to do", "write one of:\n" + USAGE));
    }
    LocalDate asOf = day(options, today, problems);
    LearningRule rule = rule(asOf, options, problems);
    int parts = parts(options, usualParts, problems);
    Optional<Path> learned = Optional.ofNullable(options.remove("--learned")).map(Path::of);
    options.keySet().forEach(each -> problems.add(new Problem(each, "is no option", USAGE)));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new Orders(isLearning, plain.get(1), plain.get(2), rule, learned, parts);
  }

  private static LocalDate day(
      Map<String, String> options, LocalDate today, List<Problem> problems) {
    String text = options.remove("--as-of");
    try {
      return text == null ? today : LocalDate.parse(text);
    } catch (DateTimeParseException noDay) {
      problems.add(
          new Problem("--as-of", "'" + text + "' is no day", "write one such as 2026-11-30"));
      return today;
    }
  }

  private static LearningRule rule(
      LocalDate asOf, Map<String, String> options, List<Problem> problems) {
    String text = options.remove("--kept-per-year");
    try {
      return new LearningRule(
          asOf, text == null ? LearningRule.USUALLY_KEPT : Double.parseDouble(text));
    } catch (IllegalArgumentException refused) {
      problems.add(
          new Problem(
              "--kept-per-year", "is '" + text + "'", "a number above 0 and up to 1 is allowed"));
      return new LearningRule(asOf, LearningRule.USUALLY_KEPT);
    }
  }

  private static int parts(Map<String, String> options, int usual, List<Problem> problems) {
    String text = options.remove("--parts");
    if (text == null) {
      return usual;
    }
    if (!text.matches("[0-9]{1,7}")
        || Integer.parseInt(text) < 1
        || Integer.parseInt(text) > MOST_PARTS) {
      problems.add(
          new Problem("--parts", "is '" + text + "'", "1 to " + MOST_PARTS + " is allowed"));
      return usual;
    }
    return Integer.parseInt(text);
  }
}
