package kelter.electrical.fault.motor;

/**
 * A motor with its capacitor. Made healthy for each forecast, changed by the faults, and dropped.
 */
final class MotorState {

  /** An open winding, as a factor of its resistance: any number that ends at the span. */
  static final double OPEN = 1e9;

  /** Current of a blocked rotor over the rated one; from memory. */
  static final double BLOCKED = 4;

  /** A motor in order against earth, Ohm; from memory. */
  private static final double HEALTHY_INSULATION = 3e8;

  /** Resistance of the main winding over the one in order. */
  double main = 1;

  /** Resistance of the auxiliary winding over the one in order. */
  double auxiliary = 1;

  /** Capacitance over the one marked. */
  double capacitance = 1;

  /** Current over the rated one. */
  double current = 1;

  /** What leaks to earth beside the insulation in order, Ohm. */
  double leak = Double.POSITIVE_INFINITY;

  /** How hard it turns by hand, from 0 to 1. */
  double stiffness = 0.1;

  /** Probabilities of what is heard, smelt and seen. */
  double hums = 0.02;

  double silent = 0.02;
  double burntSmell = 0.02;
  double swollen = 0.02;
  double wet = 0.04;

  /**
   * Nothing turns the field: it hums at the current of a blocked rotor, or, with the main winding
   * open too, no current flows at all.
   */
  void doesNotStart(double humming) {
    if (main == OPEN) {
      current = 0;
      silent = 0.95;
      hums = 0.02;
    } else {
      current = Math.max(current, BLOCKED);
      hums = humming;
    }
  }

  double insulation() {
    return 1 / (1 / HEALTHY_INSULATION + 1 / leak);
  }

  boolean leaks() {
    return !Double.isInfinite(leak);
  }
}
