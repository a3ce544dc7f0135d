package kelter.core.safety.lockout.table;

import java.util.List;
import kelter.core.vocabulary.Ids;

/**
 * What an owner says that makes a row of the table hold.
 *
 * @param symptom the id of the symptom by which it is asked and answered: a yes or a sometimes
 *     makes the row hold, only a no releases it
 * @param words phrases of a complaint that make the row hold until that is answered, each a row of
 *     beginnings of words, or whole words where a full stop ends them, that follow each other
 *     within a clause; English
 */
public record Told(String symptom, List<String> words) {

  /** Checks the id. */
  public Told {
    Ids.require(symptom);
    words = List.copyOf(words);
  }
}
