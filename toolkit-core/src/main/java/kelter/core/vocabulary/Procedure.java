package kelter.core.vocabulary;

import java.util.List;
import java.util.Objects;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;

/**
 * How something is observed.
 *
 * @param text what to do, one or two sentences
 * @param minutes how long it takes a practised person, greater than zero
 * @param hazard how dangerous the way of measuring is
 * @param typical the accuracy of an ordinary instrument, used and told where a job names none
 * @param cautions what to mind, in front of the step
 */
public record Procedure(
    String text, double minutes, Hazard hazard, Accuracy typical, List<Caution> cautions) {

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if the minutes are not above zero
   */
  public Procedure {
    Objects.requireNonNull(text);
    Objects.requireNonNull(hazard);
    Objects.requireNonNull(typical);
    cautions = List.copyOf(cautions);
    if (!(minutes > 0)) {
      throw new IllegalArgumentException("a procedure takes more than 0 minutes");
    }
  }
}
