package kelter.core.diagnosis;

import java.util.Objects;
import kelter.core.source.Source;

/**
 * How the chance of a fault grows, or shrinks, with the age of the machine: as the hazard of a
 * Weibull lifetime, which is proportional to age^(shape - 1) (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 8.1.6.2).
 *
 * <p>The shapes of parts are those that maintenance handbooks of process plant list for them,
 * rounded; from memory. What happens to a machine of any age, such as something in a pump, a wrong
 * part or a weak supply, has none.
 *
 * @param shape the shape of the lifetime: above 1 for wear, 1 where age does not matter, below 1
 *     for faults of new machines
 * @param usualAge the age in years at which the prior of the fault holds as stated
 * @param source where the figures come from
 */
public record Wear(double shape, double usualAge, Source source) {

  /** The age of machines when they are brought for repair, years; from memory. */
  private static final double AGE_AT_REPAIR = 7;

  /** Vanes and the fit of an impeller on its shaft. */
  public static final Wear IMPELLER = ofPart(2, "impellers");

  /** Clearances that the water wears. */
  public static final Wear CLEARANCE = ofPart(1.5, "wearing clearances of pumps");

  /** Bearings and shaft seals. */
  public static final Wear BEARING = ofPart(1.5, "bearings and shaft seals");

  /** Capacitors, which lose their metal film. */
  public static final Wear CAPACITOR = ofPart(2.5, "capacitors");

  /** Rubber that hardens and tears: diaphragms, hoses, tubes. */
  public static final Wear RUBBER = ofPart(1.5, "diaphragms, hoses and tubes");

  /** What settles year by year: scale, lint, grease, grit. */
  public static final Wear DEPOSIT = ofPart(2, "deposits, which grow with the years");

  /** Windings of small motors. */
  public static final Wear WINDING = ofPart(1.2, "windings of small motors");

  /** Sensors that drift. */
  public static final Wear SENSOR = ofPart(1.3, "sensors");

  /** Heating wire and its insulation. */
  public static final Wear HEATER = ofPart(1.5, "heaters");

  /** Contacts that burn a little each time they switch. */
  public static final Wear CONTACT = ofPart(2, "contacts that switch a load");

  /** Wires and joints that are bent, shaken and warmed. */
  public static final Wear WIRE = ofPart(1.5, "wires and joints");

  /** The odds of a fault are never taken to change by more than this factor. */
  private static final double MOST = 5;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if shape or age is not above zero
   */
  public Wear {
    Objects.requireNonNull(source);
    if (!(shape > 0 && usualAge > 0) || Double.isInfinite(shape + usualAge)) {
      throw new IllegalArgumentException("shape and usual age of a wear lie above zero");
    }
  }

  private static Wear ofPart(double shape, String part) {
    return new Wear(
        shape, AGE_AT_REPAIR, Source.fromMemory("shape of the Weibull life of " + part));
  }

  /**
   * By what the prior odds of the fault change at an age.
   *
   * @param age the age of the machine in years, not negative
   * @return the factor, from 1/5 to 5
   */
  public double factor(double age) {
    double ratio = Math.pow(age / usualAge, shape - 1);
    return Math.max(1 / MOST, Math.min(MOST, ratio));
  }
}
