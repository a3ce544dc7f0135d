package kelter.cli.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the databases do not say alike. */
enum Dialect {
  /**
   * One file. The plus keeps it from looking up every entry that has the words, of which there may
   * be half the book, to learn its day: it goes from the last day back until there are enough.
   */
  SQLITE(
      "without rowid",
      "select number from entry where +number in"
          + " (select rowid from entry_text where entry_text match ?)"
          + " order by closed desc, number desc limit ?"),
  /** A server. */
  POSTGRESQL(
      "",
      "select number from entry where words @@ to_tsquery('simple', ?)"
          + " order by closed desc, number desc limit ?");

  private final String clustered;
  private final String search;

  Dialect(String clustered, String search) {
    this.clustered = clustered;
    this.search = search;
  }

  /** What keeps the rows of a table in the order of its key, if anything. */
  String clustered() {
    return clustered;
  }

  /** Finds the numbers of entries by {@link #terms}; the second parameter is how many. */
  String search() {
    return search;
  }

  /** The word in the names of its own migrations. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Words that all begin a word of an entry, as the database wants them; empty if there is none.
   */
  String terms(String words) {
    List<String> terms = new ArrayList<>();
    for (String word : words.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
      if (!word.isEmpty()) {
        terms.add(this == SQLITE ? '"' + word + "\"*" : word + ":*");
      }
    }
    return String.join(this == SQLITE ? " " : " & ", terms);
  }
}
