package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
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
    boolean cold =
        measured.conditions().si(Electrical.TEMPERATURE, Double.POSITIVE_INFINITY) <= CLOSED;
    return cold || !defrosts(measured)
        ? whole
        : whole.map(
            link ->
                Allowed.of(link.title(), link.source(), Limits.atLeast(0))
                    .orPerhaps(link.limits().orElseThrow())
                    .resting(MAY_BE_THERMOSTAT)
                    .butIfNot(ElectricalCautions.NEVER_BRIDGE_CONTACT));
  }

  private static boolean defrosts(Measured measured) {
    return Heater.isIn(measured.appliance())
        && !measured.appliance().componentsOf(DEFROST_SENSOR).isEmpty();
  }
}
