package kelter.electrical.motor;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.heater.CurrentInputBand;

/** What the current of a motor and its capacitor may be. */
final class MotorChecks {

  /** How far a capacitor may lie from its mark, as a ratio. */
  private static final double TOLERANCE = 0.10;

  private MotorChecks() {}

  static Optional<Allowed> current(Measured motor) {
    return motor
        .component()
        .nameplate()
        .current()
        .map(
            rated ->
                Allowed.of(
                        "motor current against rated current",
                        CurrentInputBand.SOURCE,
                        CurrentInputBand.TABLE.motor(rated.si()))
                    .resting("no lower limit: a motor without load takes less"));
  }

  static Optional<Allowed> capacitance(Measured capacitor) {
    double marked = capacitor.component().si(Motor.CAPACITANCE);
    if (!(marked > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        Allowed.of(
                "capacitance against its mark, tolerance 10 % whatever is marked",
                Source.fromMemory("IEC 60252-1, tolerance class of 10 %"),
                new Limits(marked * (1 - TOLERANCE), marked * (1 + TOLERANCE)))
            .resting(
                "through 20 kohm it falls to 34 V within %s s, if that is connected; measure it"
                    .formatted(QuantityFormat.plain(CapacitorDischarge.throughTool(marked)))));
  }
}
