package kelter.core.quantity;

/** Where the zero of a quantity lies, and so what may be added to what. */
public enum Scale {
  /** A quantity with a zero of its own: a resistance, a flow. */
  RATIO,
  /** A temperature: its zero is the absolute one, values in Cel are shifted. */
  TEMPERATURE,
  /** A difference of temperatures: 1 Cel is 1 K. */
  TEMPERATURE_DIFFERENCE,
  /** A pressure against the surrounding air. */
  GAUGE_PRESSURE,
  /** A pressure against vacuum. */
  ABSOLUTE_PRESSURE
}
