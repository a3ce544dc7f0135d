package kelter.hydraulics.air;

/** Air of a room, as appliances move it: figures of handbooks, from memory. */
public final class Air {

  /** Density at 20 °C and sea level, kg/m3. */
  public static final double DENSITY = 1.2;

  /** Specific heat at constant pressure, J/(kg K). */
  public static final double HEAT = 1006;

  private Air() {}
}
