package kelter.core.book;

import kelter.core.problem.Required;

/** Texts of people in an entry. */
final class Texts {

  private Texts() {}

  /** Refuses a text that is too long, or has a character that no database keeps. */
  static void require(String what, String text, int longest) {
    Required.value(text, what);
    if (text.length() > longest) {
      throw new IllegalArgumentException(
          "%s has %s characters; up to %s are allowed".formatted(what, text.length(), longest));
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean half =
          Character.isHighSurrogate(c)
              && !(i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1)));
      boolean rest =
          Character.isLowSurrogate(c) && !(i > 0 && Character.isHighSurrogate(text.charAt(i - 1)));
      if (c == 0 || half || rest) {
        throw new IllegalArgumentException(
            "%s has a character that is none, at place %s".formatted(what, i + 1));
      }
    }
  }
}
