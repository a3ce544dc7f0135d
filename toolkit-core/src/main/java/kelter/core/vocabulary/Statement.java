package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Something that is told to a person, with the word by which a program knows what it is about.
 *
 * @param id what it is about, lower-case letters, digits and hyphens; it stays the same when the
 *     text changes
 * @param text the words for a person
 */
public record Statement(String id, String text) {

  /**
   * Checks the id.
   *
   * @throws IllegalArgumentException if it has another form
   */
  public Statement {
    Ids.require(id);
    Objects.requireNonNull(text);
  }

  /**
   * The words alone.
   *
   * @param statements statements
   * @return their texts, in the same order
   */
  public static List<String> texts(List<Statement> statements) {
    List<String> texts = new ArrayList<>();
    for (Statement each : statements) {
      texts.add(each.text());
    }
    return texts;
  }
}
