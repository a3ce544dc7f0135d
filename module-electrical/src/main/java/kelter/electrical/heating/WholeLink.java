package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Appliance;
import kelter.core.job.Conditions;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;

/**
 * What a whole thermal link may have. Beside a heater that defrosts it may be the thermostat that
 * ends the defrost, which is open in a warm room and in order: only where it was read in the cold
 * an open one tells anything.
 */
enum WholeLink implements LimitRule {
  /** The rule. */
  RULE;

  private static final String DEFROST_SENSOR = "defrost-sensor";

  /** -10 °C, at which any defrost thermostat is closed, K; from memory. */
  private static final double CLOSED = 263.15;

  private static final String MAY_BE_THERMOSTAT =
      "a defrost thermostat is open in a warm room and in order: read it below -10 °C (14 °F), or as"
          + " the defrost sensor, before it is taken for open";

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    Optional<Allowed> whole = Optional.of(ContactLimits.CLOSED);
    return isCold(measured.conditions()) || !opensWarm(measured.appliance())
        ? whole
        : whole.map(
            link ->
                Allowed.of(link.title(), link.source(), Limits.atLeast(0))
                    .orPerhaps(link.limits().orElseThrow())
                    .resting(MAY_BE_THERMOSTAT)
                    .butIfNot(ElectricalCautions.NEVER_BRIDGE_CONTACT));
  }

  /** Whether thermal links of an appliance may be open in a warm room and in order. */
  static boolean opensWarm(Appliance appliance) {
    return Heater.isIn(appliance) && !appliance.componentsOf(DEFROST_SENSOR).isEmpty();
  }

  /** Whether a reading was taken where any defrost thermostat is closed; never if nobody says. */
  static boolean isCold(Conditions conditions) {
    return conditions.si(Electrical.TEMPERATURE, Double.POSITIVE_INFINITY) <= CLOSED;
  }
}
