package kelter.core.law;

/** Temperatures on which figures are stated, in K. ITS-90: 0 °C is 273.15 K by definition. */
public final class Celsius {

  /** 0 °C, K. */
  public static final double ZERO = 273.15;

  /** 20 °C, K: the temperature of a room, and that on which resistances are stated. */
  public static final double TWENTY = ZERO + 20;

  private Celsius() {}
}
