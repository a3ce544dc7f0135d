package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
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
    double voltage = Stated.voltage(appliance, heater);
    double power = Stated.si(heater.nameplate().power());
    double cold = Stated.si(heater.figure(HeaterKinds.COLD_RESISTANCE.id()));
    boolean coldStated = !Double.isNaN(cold);
    if (Double.isNaN(voltage) || !((coldStated ? cold : power) > 0)) {
      return Optional.empty();
    }
    if (!coldStated) {
      cold = HeaterResistance.resistance(power, voltage) / HOT_OVER_COLD;
    }
    if (Double.isNaN(power)) {
      power = voltage * voltage / (cold * HOT_OVER_COLD);
    }
    double elements = Stated.si(heater.figure(HeaterKinds.ELEMENTS.id()));
    int parallel = (int) Math.max(1, Math.round(elements)); // one if it is not stated
    return Optional.of(new HeaterRating(voltage, power, cold, coldStated, parallel));
  }
}
