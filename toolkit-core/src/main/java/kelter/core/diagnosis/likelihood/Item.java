package kelter.core.diagnosis.likelihood;

import java.util.Optional;
import kelter.core.diagnosis.Question;

/**
 * A reading that a model forecasts.
 *
 * @param question what was measured
 * @param shown the reading as it is told to a person
 * @param likelihood how likely it is for a forecast
 * @param instrument the id of the instrument, if the error of the reading is that of a named one
 */
public record Item(
    Question question, String shown, Likelihood likelihood, Optional<String> instrument) {

  /** What was measured, as {@code component.observable}. */
  public String key() {
    return question.component() + "." + question.observable().id();
  }
}
