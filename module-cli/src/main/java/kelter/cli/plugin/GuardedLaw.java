package kelter.cli.plugin;

import kelter.core.module.Calculation;

/** The law of a calculation of a plugin. */
record GuardedLaw(Guard guard, Calculation calculation) implements Calculation.Law {

  @Override
  public double[] apply(double[] parameters) {
    String call = "calculation '" + calculation.id() + "'";
    try {
      return guard.ask(call, () -> sound(call, parameters));
    } catch (Guard.Failed failed) {
      // The contract lets a law refuse values that do not go together.
      if (failed.getCause() instanceof IllegalArgumentException refused
          && refused.getMessage() != null) {
        throw refused;
      }
      throw guard.fault(failed, false);
    }
  }

  private double[] sound(String call, double... parameters) {
    double[] results = calculation.law().apply(parameters);
    int outputs = calculation.outputs().size();
    if (results != null && results.length != outputs) {
      throw new Guard.Failed(
          call, "gives " + results.length + " values for " + outputs + " outputs", null);
    }
    for (int i = 0; results != null && i < outputs; i++) {
      if (!Double.isFinite(results[i])) {
        String output = calculation.outputs().get(i).id();
        throw new Guard.Failed(call, "gives " + results[i] + " for '" + output + "'", null);
      }
    }
    return results;
  }
}
