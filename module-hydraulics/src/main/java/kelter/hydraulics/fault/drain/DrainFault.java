package kelter.hydraulics.fault.drain;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.source.Source;
import kelter.hydraulics.fault.Ageing;

/**
 * What can be wrong on the way of the water out. The severity of each runs from 0 to 1; what a
 * severity means in figures stands with {@link DrainState}.
 */
enum DrainFault {
  /** Something is wound round or stuck between the vanes, or lies in the pump's inlet. */
  PASSAGES_BLOCKED(
      "passages-blocked", "vane passages of the drain pump blocked", 0.09, Ageing.NONE),
  /** The impeller slips on its shaft, or its vanes are worn away. */
  IMPELLER_SLIPS(
      "impeller-slips",
      "impeller of the drain pump worn or slipping on its shaft",
      0.03,
      Ageing.IMPELLER),
  /** Water runs back inside the pump past a worn clearance or cover. */
  INTERNAL_LEAK(
      "internal-leak",
      "water runs back inside the drain pump (clearance or cover)",
      0.015,
      Ageing.CLEARANCE),
  /** A bearing or the shaft seal drags. */
  DRAG("drag", "bearing or seal of the drain pump drags", 0.03, Ageing.BEARING),
  /** The strainer or trap before the pump is clogged. */
  STRAINER_CLOGGED("strainer-clogged", "strainer before the drain pump clogged", 0.08, Ageing.NONE),
  /** The hose is clogged, kinked or squeezed. */
  HOSE_CLOGGED("hose-clogged", "drain hose clogged or kinked", 0.07, Ageing.NONE),
  /** The outlet is higher than it should be. */
  LIFT_TOO_HIGH("lift-too-high", "drain hose laid too high", 0.02, Ageing.NONE),
  /** The check valve does not open. */
  VALVE_SHUT("valve-shut", "check valve stuck shut", 0.02, Ageing.NONE),
  /** The check valve does not close. */
  VALVE_OPEN("valve-open", "check valve stuck open", 0.02, Ageing.NONE),
  /** The hose is off, split or leaks. */
  HOSE_LEAKS("hose-leaks", "drain hose off its nozzle, split or leaking", 0.02, Ageing.RUBBER),
  /** Something holds the rotor or the impeller fast. It is there or not, whatever its severity. */
  JAMMED("jammed", "drain pump jammed by something that holds its rotor fast", 0.03, Ageing.NONE),
  /** The winding or its thermal protector is open. It is there or not, whatever its severity. */
  WINDING_OPEN(
      "winding-open", "winding of the drain pump open, or its protector", 0.02, Ageing.WINDING),
  /** The pump gets no voltage. It is there or not, whatever its severity. */
  NO_VOLTAGE(
      "no-voltage", "no voltage at the drain pump (connector, wire, control)", 0.02, Ageing.NONE);

  private static final Source PRIOR =
      Source.fromMemory(
          "how often each cause is met on machines with a complaint; an order of magnitude, to be"
              + " replaced by the job book");

  private static final Source PRIOR_OF_A_TYPICAL_PUMP =
      Source.fromMemory(
          PRIOR.document() + "; the pump's curve is not known, that of a typical pump is taken");

  private final String id;
  private final String title;
  private final double prior;
  private final Ageing ageing;

  DrainFault(String id, String title, double prior, Ageing ageing) {
    this.id = id;
    this.title = title;
    this.prior = prior;
    this.ageing = ageing;
  }

  /**
   * The fault on a component.
   *
   * @param component the id of the drain pump
   * @param curveKnown whether the pump's own curve is known
   * @return the fault
   */
  Fault on(String component, boolean curveKnown) {
    return ageing.of(
        new Fault(
            id,
            component,
            title,
            prior,
            curveKnown ? PRIOR : PRIOR_OF_A_TYPICAL_PUMP,
            remedies(new DrainRemedies(component))));
  }

  private List<Remedy> remedies(DrainRemedies remedies) {
    return switch (this) {
      case PASSAGES_BLOCKED -> List.of(remedies.cleanPump(), remedies.renewPump());
      case JAMMED -> List.of(remedies.cleanPump(), remedies.renewPump());
      case IMPELLER_SLIPS, INTERNAL_LEAK, DRAG, WINDING_OPEN -> List.of(remedies.renewPump());
      case NO_VOLTAGE -> List.of(remedies.power().mendWire(), remedies.power().renewControl());
      case STRAINER_CLOGGED -> List.of(remedies.cleanStrainer());
      case HOSE_CLOGGED -> List.of(remedies.clearHose(), remedies.renewHose());
      case LIFT_TOO_HIGH -> List.of(remedies.lowerHose());
      case VALVE_SHUT, VALVE_OPEN -> List.of(remedies.cleanValve(), remedies.renewValve());
      case HOSE_LEAKS -> List.of(remedies.tightenHose(), remedies.renewHose());
    };
  }

  /** Whether the fault at a place is the way the check valve is stuck. */
  static boolean isOfValve(int place) {
    return place == VALVE_SHUT.ordinal() || place == VALVE_OPEN.ordinal();
  }

  /**
   * Whether this fault is there, however bad.
   *
   * @param severities all severities, in the order of the faults
   * @return whether its severity is above 0
   */
  boolean isThere(double[] severities) {
    return in(severities) > 0;
  }

  /**
   * The severity of this fault in a state.
   *
   * @param severities all severities, in the order of the faults
   * @return from 0 to 1
   */
  double in(double[] severities) {
    return severities[ordinal()];
  }
}
