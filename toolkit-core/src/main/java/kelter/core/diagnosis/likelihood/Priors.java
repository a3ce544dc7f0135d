package kelter.core.diagnosis.likelihood;

import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.Wear;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.source.Source;

/**
 * The chance of each fault before anything is measured: that of the catalogue, scaled by the age of
 * the machine, and mixed with what the shop has found before.
 *
 * @param appliance the machine
 * @param history what the shop has found before
 */
public record Priors(Appliance appliance, FaultHistory history) {

  /** The Julian year of UCUM ({@code a_j}), s. */
  private static final double SECONDS_IN_A_YEAR = 365.25 * 86_400;

  /** The chance of a fault, above 0 and below 1. */
  public double of(Fault fault) {
    double aged = aged(fault);
    Optional<Component> component = appliance.component(fault.component());
    return component.isPresent()
        ? history.probability(component.get().kind(), fault.id(), aged)
        : aged;
  }

  private double aged(Fault fault) {
    if (fault.wear().isEmpty() || appliance.age().isEmpty()) {
      return fault.prior();
    }
    double odds = fault.prior() / (1 - fault.prior()) * factor(fault.wear().get());
    return odds / (1 + odds);
  }

  private double factor(Wear wear) {
    return wear.factor(appliance.age().get().si() / SECONDS_IN_A_YEAR);
  }

  /** Where the chance of a fault comes from. */
  public Source source(Fault fault) {
    Source source = fault.source();
    boolean scaled = fault.wear().isPresent() && appliance.age().isPresent();
    Optional<Component> component = appliance.component(fault.component());
    double weight = component.isPresent() ? history.weight(component.get().kind()) : 0;
    if (!scaled && weight == 0) {
      return source;
    }
    String document =
        source.document()
            + (scaled ? ", scaled by the age of the machine" : "")
            + (weight > 0
                ? ", mixed with the shop's own jobs, which count for "
                    + Math.round(100 * weight)
                    + " %"
                : "");
    return new Source(document, source.standing());
  }
}
