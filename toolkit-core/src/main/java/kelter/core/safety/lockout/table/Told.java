package kelter.core.safety.lockout.table;

import java.util.List;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Phrase;

/**
 * What an owner says that makes a row of the table hold.
 *
 * @param symptom the id of the symptom by which it is asked and answered: a yes or a sometimes
 *     makes the row hold, only a no releases it
 * @param phrases phrases of a complaint that make the row hold until that is answered; English
 */
public record Told(String symptom, List<Phrase> phrases) {

  /** Checks the id. */
  public Told {
    Ids.require(symptom);
    phrases = List.copyOf(phrases);
  }
}
