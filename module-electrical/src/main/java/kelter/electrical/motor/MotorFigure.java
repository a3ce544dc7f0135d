package kelter.electrical.motor;

import kelter.core.diagnosis.model.Figure;
import kelter.core.vocabulary.Proof;

/** What faults change of a motor with its capacitor. */
enum MotorFigure implements Figure {
  /** Resistance of the main winding, ratio to the one in order. */
  MAIN(1),
  /** Resistance of the auxiliary winding, ratio to the one in order. */
  AUXILIARY(1),
  /** Capacitance, ratio to the one marked. */
  CAPACITANCE(1),
  /** Current with both windings fed, ratio to the rated one. */
  CURRENT(1),
  /** What leaks to earth beside the insulation in order, S. */
  LEAK(0),
  /** How hard it turns by hand, from 0 to 1. */
  STIFFNESS(0.1),
  /** Chance of a burnt smell. */
  SMELLS(0.02),
  /** Chance that water marks are seen. */
  WET(0.04),
  /** Chance that the capacitor is swollen. */
  SWOLLEN(Proof.FALSE_ALARM);

  private final double inOrder;

  MotorFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}
