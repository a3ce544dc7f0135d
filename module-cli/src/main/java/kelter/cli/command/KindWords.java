package kelter.cli.command;

import java.util.List;
import java.util.Optional;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import kelter.core.problem.InputException;

/** Finds a kind of machine by what somebody calls it. */
public final class KindWords {

  /** The kind of a machine of which nothing is known. */
  public static final String OTHER = "other";

  private KindWords() {}

  /**
   * The kind that is meant; empty for {@value #OTHER}.
   *
   * @throws InputException if no kind, or more than one, is meant
   */
  public static Optional<Kind> kind(String words, Kinds kinds) {
    if (words.equals(OTHER)) {
      return Optional.empty();
    }
    List<Kind> meant = kinds.meant(words);
    if (meant.size() == 1) {
      return Optional.of(meant.get(0));
    }
    throw new InputException(
        words,
        meant.isEmpty() ? "is not a known kind of machine" : "may be several kinds of machine",
        meant.isEmpty() ? nearest(words, kinds) : "say which: " + ids(meant));
  }

  private static String nearest(String words, Kinds kinds) {
    return kinds
        .likely(words)
        .map(near -> "did you mean '" + near + "'?")
        .orElse("known: " + String.join(", ", kinds.ids()) + ", " + OTHER);
  }

  private static String ids(List<Kind> kinds) {
    return String.join(", ", kinds.stream().map(Kind::id).toList());
  }
}
