package kelter.core.job;

import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.safety.ProtectionClass;

/**
 * What stands on the nameplate of an appliance or a component. What is not there is empty.
 *
 * @param voltage the rated voltage or range of voltages, in V
 * @param frequency the rated frequency or frequencies, in Hz
 * @param power the rated power input, in W; of a range of voltages it may have one for each limit
 * @param current the rated current, in A
 * @param protectionClass how it protects against electric shock
 */
public record Nameplate(
    Optional<RatedRange> voltage,
    Optional<RatedRange> frequency,
    Optional<RatedRange> power,
    Optional<Quantity> current,
    Optional<ProtectionClass> protectionClass) {

  /** A nameplate that is missing or cannot be read. */
  public static final Nameplate UNREADABLE =
      new Nameplate(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a figure is not above zero
   */
  public Nameplate {
    Required.optional(voltage, "voltage of a nameplate");
    Required.optional(frequency, "frequency of a nameplate");
    Required.optional(power, "power of a nameplate");
    Required.optional(current, "current of a nameplate");
    Required.optional(protectionClass, "protection class of a nameplate");
    if (current.isPresent() && !(current.get().value() > 0)) {
      throw new IllegalArgumentException("a rated current is above zero");
    }
  }
}
