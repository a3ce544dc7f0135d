package kelter.hydraulics.fault.fill;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.source.Source;
import kelter.hydraulics.fault.Ageing;

/**
 * What can be wrong on the way of the water in. The severity of each runs from 0 to 1; what a
 * severity means in figures stands with {@link FillState}.
 */
enum FillFault {
  /** The screens in hose and valve are clogged. */
  SCREEN_CLOGGED("screen-clogged", "screen of the inlet valve clogged", 0.06, Ageing.DEPOSIT),
  /** The valve does not open wholly. */
  VALVE_WEAK(
      "valve-weak",
      "inlet valve does not open wholly (diaphragm, pilot hole, weak pull)",
      0.04,
      Ageing.RUBBER),
  /** The supply is weak. */
  SUPPLY_WEAK("supply-weak", "supply too weak or tap half shut", 0.05, Ageing.NONE),
  /** The supply is strong. */
  SUPPLY_STRONG("supply-strong", "pressure of the supply too high", 0.02, Ageing.NONE),
  /** The hose is kinked. */
  HOSE_KINKED("hose-kinked", "fill hose kinked or its stop valve tripped", 0.03, Ageing.NONE),
  /** The valve does not close. */
  LEAKS_BY("leaks-by", "inlet valve does not close", 0.02, Ageing.RUBBER);

  private static final Source PRIOR =
      Source.fromMemory(
          "how often each cause is met on machines with a complaint; an order of magnitude, to be"
              + " replaced by the job book");

  private final String id;
  private final String title;
  private final double prior;
  private final Ageing ageing;

  FillFault(String id, String title, double prior, Ageing ageing) {
    this.id = id;
    this.title = title;
    this.prior = prior;
    this.ageing = ageing;
  }

  /**
   * The fault on a component.
   *
   * @param component the id of the inlet valve
   * @return the fault
   */
  Fault on(String component) {
    return ageing.of(
        new Fault(id, component, title, prior, PRIOR, remedies(new FillRemedies(component))));
  }

  private List<Remedy> remedies(FillRemedies remedies) {
    return switch (this) {
      case SCREEN_CLOGGED -> List.of(remedies.cleanScreen());
      case VALVE_WEAK, LEAKS_BY -> List.of(remedies.renewValve());
      case SUPPLY_WEAK -> List.of(remedies.setSupply());
      case SUPPLY_STRONG -> List.of(remedies.reducePressure());
      case HOSE_KINKED -> List.of(remedies.straightenHose(), remedies.renewHose());
    };
  }

  /** Whether the fault at a place is the pressure of the supply. */
  static boolean isOfSupply(int place) {
    return place == SUPPLY_WEAK.ordinal() || place == SUPPLY_STRONG.ordinal();
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
