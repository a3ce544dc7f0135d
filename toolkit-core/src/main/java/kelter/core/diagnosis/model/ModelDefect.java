package kelter.core.diagnosis.model;

/**
 * A fault model forecasts what cannot be: a value or spread that is not finite, a spread that is
 * not above zero, a chance outside 0 to 1; or it is put together of what cannot be. No job can mend
 * that. The message names model, faults with their severities, component and observable, and the
 * module once it is known.
 */
public final class ModelDefect extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  private final String model;

  ModelDefect(String model, String message) {
    super(message);
    this.model = model;
  }

  /**
   * The model.
   *
   * @return its id within the appliance
   */
  public String model() {
    return model;
  }

  /**
   * The same with the module that the model comes from.
   *
   * @param module the id of the module
   * @return a defect that names it first
   */
  public ModelDefect of(String module) {
    ModelDefect named = new ModelDefect(model, "module " + module + ", model " + getMessage());
    named.initCause(this);
    return named;
  }
}
