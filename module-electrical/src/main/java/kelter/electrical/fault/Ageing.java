package kelter.electrical.fault;

import kelter.core.diagnosis.Wear;
import kelter.core.source.Source;

/**
 * How the chances of faults that come with age grow. The shapes are those of Weibull lives that
 * maintenance handbooks of process plant list for such parts, rounded to a half; from memory. A
 * fault that has no age (a wrong part, a sensor off its seat) has none of these.
 */
public final class Ageing {

  /** The age of machines when they are brought for repair, years; from memory. */
  private static final double USUAL_AGE = 7;

  /** Windings of small motors. */
  public static final Wear WINDING = wear(1.2, "windings of small motors");

  /** Ball bearings, by wear and by water that gets past a seal. */
  public static final Wear BEARING = wear(1.5, "ball bearings");

  /** Heating wire and its insulation. */
  public static final Wear HEATER = wear(1.5, "heaters");

  /** Contacts that burn a little each time they switch. */
  public static final Wear CONTACT = wear(2, "contacts that switch a load");

  /** What settles year by year: scale, lint. */
  public static final Wear DEPOSIT = wear(2, "deposits, which grow with the years");

  /** Capacitors, which lose their metal film. */
  public static final Wear CAPACITOR = wear(2.5, "capacitors");

  /** Wires and joints that are bent, shaken and warmed. */
  public static final Wear WIRE = wear(1.5, "wires and joints");

  /** Sensors that drift. */
  public static final Wear SENSOR = wear(1.3, "sensors");

  private Ageing() {}

  private static Wear wear(double shape, String part) {
    return new Wear(shape, USUAL_AGE, Source.fromMemory("shape of the Weibull life of " + part));
  }
}
