package kelter.core.vocabulary;

import java.util.List;
import java.util.Locale;

/**
 * A phrase by which something is known in what somebody said: beginnings of words that follow each
 * other within a clause, with few other words between them.
 *
 * @param beginnings the beginnings, in lower case; one that ends with a full stop is a whole word
 */
public record Phrase(List<String> beginnings) {

  /** Ends what is a whole word, and not the beginning of one. */
  private static final String WHOLE = ".";

  /** So many other words may stand between two words. */
  private static final int BETWEEN = 3;

  public Phrase {
    beginnings = List.copyOf(beginnings);
  }

  /**
   * A phrase.
   *
   * @param text the beginnings with a space between them
   * @return the phrase
   */
  public static Phrase of(String text) {
    return new Phrase(List.of(text.toLowerCase(Locale.ROOT).split(" ")));
  }

  /**
   * Whether the phrase stands in a clause from a place on.
   *
   * @param clause the words of a clause, in lower case
   * @param start the place of the first
   * @return true if it does
   */
  public boolean startsAt(List<String> clause, int start) {
    int at = start;
    int found = 0;
    for (int k = start; k < clause.size() && k <= at + BETWEEN; k++) {
      if (isMeant(clause.get(k), beginnings.get(found))) {
        found++;
        at = k;
      } else if (found == 0) {
        return false;
      }
      if (found == beginnings.size()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isMeant(String said, String beginning) {
    return beginning.endsWith(WHOLE)
        ? said.length() == beginning.length() - 1 && beginning.startsWith(said)
        : said.startsWith(beginning);
  }

  /**
   * The phrase as it is written.
   *
   * @return the beginnings with a space between them
   */
  public String text() {
    return String.join(" ", beginnings);
  }
}
