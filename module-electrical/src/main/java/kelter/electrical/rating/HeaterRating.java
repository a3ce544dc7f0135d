package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.quantity.Quantity;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.heater.HeaterResistance;

/**
 * What a heater in good order has.
 *
 * @param voltage its rated voltage, V: of its own nameplate, else of the appliance's
 * @param power its power at that voltage, W: of its own nameplate, else from its service figure of
 *     resistance
 * @param cold its resistance at 20 °C, Ohm
 * @param resistanceStated whether the cold resistance is a service figure
 * @param elements how many like elements lie in parallel, 1 or more
 */
public record HeaterRating(
    double voltage, double power, double cold, boolean resistanceStated, int elements) {

  /**
   * Resistance at working temperature over the one at 20 °C of ordinary heating wire: 1.02, within
   * 0.03. Maker's alloy table (Cr20Ni80 below 600 °C) and other handbooks, from memory.
   */
  public static final double HOT_OVER_COLD = 1.02;

  /**
   * Reads the rating of a heater.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @return the rating, or empty if neither power nor resistance can be had together with a voltage
   */
  public static Optional<HeaterRating> of(Appliance appliance, Component heater) {
    Optional<Double> voltage =
        heater.nameplate().voltage().or(() -> appliance.nameplate().voltage()).map(Quantity::si);
    Optional<Double> stated = heater.figure(HeaterKinds.COLD_RESISTANCE.id()).map(Quantity::si);
    Optional<Double> power = heater.nameplate().power().map(Quantity::si);
    if (voltage.isEmpty() || stated.or(() -> power).filter(x -> x > 0).isEmpty()) {
      return Optional.empty();
    }
    double u = voltage.get();
    double cold =
        stated.orElseGet(() -> HeaterResistance.resistance(power.get(), u) / HOT_OVER_COLD);
    double p = power.orElseGet(() -> u * u / (cold * HOT_OVER_COLD));
    int elements =
        heater
            .figure(HeaterKinds.ELEMENTS.id())
            .map(n -> (int) Math.max(1, Math.round(n.si())))
            .orElse(1);
    return Optional.of(new HeaterRating(u, p, cold, stated.isPresent(), elements));
  }
}
