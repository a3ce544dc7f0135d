package kelter.core.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one most likely meant. */
public final class Nearest {

  private static final int MAX_LENGTH = 60;

  private Nearest() {}

  /**
   * The known word with the fewest changed, added, dropped or swapped letters, case ignored, if
   * there are few enough of them: one in three letters, at least one. Else the only one of which
   * the word is a part, such as {@code air-heater} for heater.
   *
   * @param word the word found
   * @param known the words allowed
   * @return the likeliest of them, or empty if none is near
   */
  public static Optional<String> of(String word, Collection<String> known) {
    if (word.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    int allowed = Math.max(1, word.length() / 3);
    return known.stream()
        .filter(candidate -> distance(word, candidate) <= allowed)
        .min(
            Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                .thenComparing(Comparator.naturalOrder()))
        .or(() -> onlyWith(word.toLowerCase(Locale.ROOT), known));
  }

  private static Optional<String> onlyWith(String part, Collection<String> known) {
    List<String> having =
        known.stream().filter(each -> List.of(each.split("[-. ]")).contains(part)).toList();
    return having.size() == 1 ? Optional.of(having.get(0)) : Optional.empty();
  }

  /** Optimal string alignment distance, case ignored. */
  private static int distance(String left, String right) {
    String a = left.toLowerCase(Locale.ROOT);
    String b = right.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
