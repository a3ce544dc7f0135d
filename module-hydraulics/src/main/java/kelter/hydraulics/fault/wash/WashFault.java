package kelter.hydraulics.fault.wash;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.source.Source;
import kelter.hydraulics.fault.Ageing;

/**
 * What can be wrong in the circuit of the wash water. The severity of each runs from 0 to 1; what a
 * severity means in figures stands with {@link WashState}.
 */
enum WashFault {
  /** Something is wound round or stuck between the vanes. */
  PASSAGES_BLOCKED("passages-blocked", "vane passages of the wash pump blocked", 0.04, Ageing.NONE),
  /** The impeller slips on its shaft, or its vanes are worn away. */
  IMPELLER_SLIPS(
      "impeller-slips",
      "impeller of the wash pump worn or slipping on its shaft",
      0.02,
      Ageing.IMPELLER),
  /** Water runs back inside the pump past a worn clearance. */
  INTERNAL_LEAK(
      "internal-leak",
      "water runs back inside the wash pump (clearance or cover)",
      0.03,
      Ageing.CLEARANCE),
  /** A bearing or the shaft seal drags. */
  DRAG("drag", "bearing or seal of the wash pump drags", 0.04, Ageing.BEARING),
  /** Too little water, so that the pump draws air. */
  LOW_WATER("low-water", "too little water: the wash pump draws air", 0.07, Ageing.NONE),
  /** Jets are closed by scale or debris. */
  JETS_CLOGGED("jets-clogged", "jets clogged", 0.07, Ageing.DEPOSIT),
  /** The filter before the pump is clogged. */
  INLET_CLOGGED("inlet-clogged", "filter or inlet of the wash pump clogged", 0.07, Ageing.NONE),
  /** The motor turns too slowly by itself. */
  SLOW(
      "slow",
      "motor of the wash pump slow (capacitor, winding or control)",
      0.03,
      Ageing.CAPACITOR),
  /** Water escapes before the jets. */
  PASSAGE_LEAKS("passage-leaks", "water escapes between pump and jets", 0.02, Ageing.RUBBER),
  /** Something holds the rotor fast. It is there or not, whatever its severity. */
  JAMMED("jammed", "wash pump jammed, its rotor held fast", 0.02, Ageing.NONE),
  /** The winding or its thermal protector is open. It is there or not, whatever its severity. */
  WINDING_OPEN(
      "winding-open",
      "main winding of the wash pump open, or its protector",
      0.015,
      Ageing.WINDING),
  /** The pump gets no voltage. It is there or not, whatever its severity. */
  NO_VOLTAGE(
      "no-voltage", "no voltage at the wash pump (connector, wire, control)", 0.02, Ageing.NONE);

  private static final Source PRIOR =
      Source.fromMemory(
          "how often each cause is met on machines with a complaint; an order of magnitude, to be"
              + " replaced by the job book");

  private static final Source PRIOR_OF_A_TYPICAL_PUMP =
      Source.fromMemory(
          PRIOR.document() + "; curve or jets are not known, those of a typical machine are taken");

  private final String id;
  private final String title;
  private final double prior;
  private final Ageing ageing;

  WashFault(String id, String title, double prior, Ageing ageing) {
    this.id = id;
    this.title = title;
    this.prior = prior;
    this.ageing = ageing;
  }

  /**
   * The fault on a component.
   *
   * @param component the id of the wash pump
   * @param known whether the machine's own curve and jets are known
   * @return the fault
   */
  Fault on(String component, boolean known) {
    return ageing.of(
        new Fault(
            id,
            component,
            title,
            prior,
            known ? PRIOR : PRIOR_OF_A_TYPICAL_PUMP,
            remedies(new WashRemedies(component))));
  }

  private List<Remedy> remedies(WashRemedies remedies) {
    return switch (this) {
      case PASSAGES_BLOCKED ->
          List.of(remedies.cleanPump(), remedies.renewImpeller(), remedies.renewPump());
      case IMPELLER_SLIPS, INTERNAL_LEAK -> List.of(remedies.renewImpeller(), remedies.renewPump());
      case DRAG -> List.of(remedies.renewSeal(), remedies.renewPump());
      case LOW_WATER -> List.of(remedies.setLevel());
      case JETS_CLOGGED -> List.of(remedies.cleanJets());
      case INLET_CLOGGED -> List.of(remedies.cleanFilter());
      case SLOW -> List.of(remedies.renewCapacitor(), remedies.renewPump());
      case PASSAGE_LEAKS -> List.of(remedies.renewPassage());
      case JAMMED -> List.of(remedies.cleanPump(), remedies.renewPump());
      case WINDING_OPEN -> List.of(remedies.renewPump());
      case NO_VOLTAGE -> List.of(remedies.power().mendWire(), remedies.power().renewControl());
    };
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
