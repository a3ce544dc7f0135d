package kelter.cli.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Changes a text by its letters, its numbers, its words and its units.
 *
 * @param words what is put in
 */
record TextMutation(Words words) {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)*([eE][-+]?\\d+)?");
  private static final Pattern WORD = Pattern.compile("[\\p{L}%°µΩ/][\\p{L}\\d%°/-]*");

  String of(String text, Chance chance) {
    return switch (chance.below(9)) {
      case 0, 1 -> replaced(text, NUMBER, words.number(chance), chance);
      case 2 -> replaced(text, WORD, words.unit(chance), chance);
      case 3 -> replaced(text, WORD, words.any(chance), chance);
      case 4 -> inserted(text, words.any(chance), chance);
      case 5 -> cut(text, chance);
      case 6 -> doubled(text, chance);
      case 7 -> letter(text, chance);
      default -> words.quantity(chance);
    };
  }

  /** A text with one of its numbers greater or smaller, up to a hundred times. */
  String scaled(String text, Chance chance) {
    List<MatchResult> found = new ArrayList<>(NUMBER.matcher(text).results().toList());
    if (found.isEmpty()) {
      return text;
    }
    MatchResult one = chance.of(found);
    double number =
        Double.parseDouble(one.group().replace(',', '.').replaceAll("\\.(?=.*\\.)", ""));
    double scaled = number * Math.pow(10, chance.random().nextDouble(-2, 2));
    String written =
        scaled > 2 ? String.valueOf(Math.round(scaled)) : String.valueOf((float) scaled);
    return text.substring(0, one.start()) + written + text.substring(one.end());
  }

  private static String replaced(String text, Pattern pattern, String by, Chance chance) {
    List<MatchResult> found = new ArrayList<>(pattern.matcher(text).results().toList());
    if (found.isEmpty()) {
      return by;
    }
    MatchResult one = chance.of(found);
    return text.substring(0, one.start()) + by + text.substring(one.end());
  }

  private static String inserted(String text, String more, Chance chance) {
    int at = chance.below(text.length() + 1);
    return text.substring(0, at) + more + text.substring(at);
  }

  private static String cut(String text, Chance chance) {
    int from = chance.below(text.length() + 1);
    int to = Math.min(text.length(), from + chance.few());
    return text.substring(0, from) + text.substring(to);
  }

  private static String doubled(String text, Chance chance) {
    int from = chance.below(text.length() + 1);
    int to = from + chance.below(Math.min(64, text.length() - from) + 1);
    return text.substring(0, to) + text.substring(from, to) + text.substring(to);
  }

  private static String letter(String text, Chance chance) {
    int at = chance.below(text.length() + 1);
    char sign = (char) (chance.oneIn(3) ? chance.below(0x10000) : chance.below(0x80));
    return text.substring(0, at) + sign + text.substring(Math.min(text.length(), at + 1));
  }
}
