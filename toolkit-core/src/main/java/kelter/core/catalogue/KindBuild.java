package kelter.core.catalogue;

import java.util.List;

/**
 * A build of a kind of machine that has a name of its own, such as a heat pump dryer.
 *
 * @param words the names by which it is called, the usual one first
 * @param lacks the ids of parts of the kind that such a machine has not
 */
public record KindBuild(List<String> words, List<String> lacks) {

  /**
   * Checks that it has a name and differs.
   *
   * @throws IllegalArgumentException if it has no name, or lacks nothing
   */
  public KindBuild {
    words = List.copyOf(words);
    lacks = List.copyOf(lacks);
    if (words.isEmpty() || lacks.isEmpty()) {
      throw new IllegalArgumentException("a build has a word and lacks a part");
    }
  }

  /**
   * Its usual name.
   *
   * @return the first of its words
   */
  public String title() {
    return words.get(0);
  }
}
