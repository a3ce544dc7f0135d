package kelter.core.job;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Ids;

/**
 * What a reading was taken with.
 *
 * @param id its name within the job
 * @param title what it is, may be empty
 * @param functions what it measures, and how well
 */
public record Instrument(String id, String title, List<Function> functions) {

  /** Checks the id. */
  public Instrument {
    Ids.require(id);
    Objects.requireNonNull(title);
    functions = List.copyOf(functions);
  }

  /**
   * One thing that an instrument measures.
   *
   * @param kind what it measures
   * @param accuracy how well
   */
  public record Function(QuantityKind kind, Accuracy accuracy) {}

  /**
   * How well the instrument measures a kind of quantity.
   *
   * @param kind what is measured
   * @return the accuracy of its first function for that dimension, or empty if it has none
   */
  public Optional<Accuracy> accuracy(QuantityKind kind) {
    return functions.stream()
        .filter(function -> function.kind().accepts(kind.unit()))
        .map(Function::accuracy)
        .findFirst();
  }
}
