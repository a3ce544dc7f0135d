package kelter.core.diagnosis.model;

/**
 * A fault model forecasts what cannot be: a value or spread that is not finite, a spread that is
 * not above zero, a chance outside 0 to 1. The message names model, faults with their severities,
 * component and observable.
 */
public final class ModelDefect extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  ModelDefect(String message) {
    super(message);
  }
}
