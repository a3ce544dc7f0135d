package kelter.core.diagnosis;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import kelter.core.vocabulary.Ids;

/**
 * With which chance a fault by itself makes a symptom of the whole machine. Several faults that
 * make one combine by noisy-OR (Pearl, Probabilistic Reasoning in Intelligent Systems, 1988, 4.3.2,
 * from memory).
 *
 * @param symptom the id of the symptom
 * @param chance the chance, 0 to 1, by severity above 0 and up to 1
 */
public record FaultSymptom(String symptom, DoubleUnaryOperator chance) {

  /** The severity at which chances of symptoms are told and asked for. */
  public static final double MIDDLE = 0.5;

  /**
   * Checks the word.
   *
   * @throws IllegalArgumentException if the symptom has no id
   */
  public FaultSymptom {
    Ids.require(symptom);
    Objects.requireNonNull(chance);
  }

  /**
   * The chance at a severity.
   *
   * @param severity above 0, at most 1
   * @return from 0 to 1
   * @throws IllegalArgumentException if the shape gives what is no chance
   */
  public double at(double severity) {
    double value = chance.applyAsDouble(severity);
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(
          symptom + ": a chance of " + value + " at severity " + severity + "; 0 to 1 is allowed");
    }
    return value;
  }

  /**
   * The same shape with another chance in the middle: its log-odds are shifted by as much at every
   * severity.
   *
   * @param middle the chance at severity {@link #MIDDLE}, above 0 and below 1
   * @return the shape through it; the same if the chance there is 0 or 1 and cannot be shifted
   */
  public FaultSymptom through(double middle) {
    double now = at(MIDDLE);
    if (!(now > 0 && now < 1)) {
      return this;
    }
    double factor = middle / (1 - middle) * (1 - now) / now;
    return new FaultSymptom(
        symptom,
        severity -> {
          double usual = at(severity);
          return factor * usual / (1 - usual + factor * usual);
        });
  }
}
