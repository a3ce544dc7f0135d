package kelter.electrical.component;

import java.util.List;
import java.util.Optional;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.caution.Cautions;

/**
 * Parts at which this toolkit stops: a job may name them, nothing can be measured on them, and the
 * checks answer with a caution.
 */
public final class OutOfReach {

  /** The high-voltage capacitor, transformer and tube of a microwave oven. */
  public static final ComponentKind HIGH_VOLTAGE =
      kind("high-voltage-capacitor", "high-voltage capacitor of a microwave oven");

  /** Burner, valve and pipe of a gas appliance. */
  public static final ComponentKind GAS = kind("gas-part", "gas valve, burner or pipe");

  /** Compressor and pipes with what is in them. */
  public static final ComponentKind REFRIGERANT =
      kind("refrigerant-circuit", "refrigerant circuit");

  /** Outlet, wires in the wall, distribution board. */
  public static final ComponentKind FIXED_WIRING = kind("fixed-wiring", "outlet and fixed wiring");

  static final List<ComponentKind> ALL = List.of(HIGH_VOLTAGE, GAS, REFRIGERANT, FIXED_WIRING);

  private OutOfReach() {}

  private static ComponentKind kind(String id, String title) {
    return new ComponentKind(id, title, List.of(), List.of(), List.of());
  }

  /**
   * The caution of a kind of part.
   *
   * @param kind one of the kinds of this class
   * @return what can happen, and the stop
   * @throws IllegalArgumentException if the kind is none of this class
   */
  public static Caution caution(ComponentKind kind) {
    return switch (kind.id()) {
      case "high-voltage-capacitor" -> Cautions.HIGH_VOLTAGE;
      case "gas-part" -> Cautions.GAS;
      case "refrigerant-circuit" -> Cautions.REFRIGERANT;
      case "fixed-wiring" -> Cautions.FIXED_WIRING;
      default -> throw new IllegalArgumentException("'" + kind.id() + "' is within reach");
    };
  }

  /**
   * The kind of an id.
   *
   * @param id the word in a job file
   * @return the kind, or empty if it is within reach
   */
  public static Optional<ComponentKind> of(String id) {
    for (ComponentKind kind : ALL) {
      if (kind.id().equals(id)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
