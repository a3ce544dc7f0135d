package kelter.hydraulics.fault;

import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Wear;
import kelter.core.source.Source;

/**
 * How the chances of faults on the water side change with the age of a machine. The shapes are
 * those of Weibull lives that maintenance handbooks of process plant list for such parts, rounded;
 * from memory. What happens to a machine of any age, such as something in the pump, a kinked hose
 * or a weak supply, has none.
 */
public enum Ageing {
  /** It does not depend on age. */
  NONE(1, "mishaps"),
  /** Vanes and the fit of an impeller on its shaft. */
  IMPELLER(2, "impellers"),
  /** Clearances that the water wears. */
  CLEARANCE(1.5, "wearing clearances of pumps"),
  /** Bearings and shaft seals. */
  BEARING(1.5, "bearings and shaft seals"),
  /** Capacitors of motors. */
  CAPACITOR(2.5, "capacitors"),
  /** Rubber that hardens and tears: diaphragms, hoses, tubes. */
  RUBBER(1.5, "diaphragms, hoses and tubes"),
  /** What settles year by year: scale, grease, grit. */
  DEPOSIT(2, "deposits, which grow with the years"),
  /** Windings of small motors. */
  WINDING(1.2, "windings of small motors"),
  /** Sensors that drift. */
  SENSOR(1.3, "sensors");

  /** The age of machines when they are brought for repair, years; from memory. */
  private static final double USUAL_AGE = 7;

  private final Wear wear;

  Ageing(double shape, String part) {
    this.wear =
        new Wear(shape, usualAge(), Source.fromMemory("shape of the Weibull life of " + part));
  }

  private static double usualAge() {
    return USUAL_AGE;
  }

  /**
   * A fault that ages so.
   *
   * @param fault the fault
   * @return the fault with its wear, if it has any
   */
  public Fault of(Fault fault) {
    return this == NONE ? fault : fault.wearing(wear);
  }
}
