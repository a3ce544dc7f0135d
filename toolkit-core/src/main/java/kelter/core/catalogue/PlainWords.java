package kelter.core.catalogue;

import java.util.List;
import java.util.Locale;

/** Names of machines as people type them: in any case, with blanks or hyphens. */
final class PlainWords {

  private PlainWords() {}

  /** Words in lower case, with one blank between them. */
  static String of(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  /** Whether a name has all the words, each in full or from its start. */
  static boolean hasAll(String name, String told) {
    String plain = " " + of(name);
    for (String word : of(told).split(" ")) {
      if (!plain.contains(" " + word)) {
        return false;
      }
    }
    return true;
  }

  /** Whether one of some names has all the words. */
  static boolean anyHasAll(List<String> names, String told) {
    for (String name : names) {
      if (hasAll(name, told)) {
        return true;
      }
    }
    return false;
  }
}
