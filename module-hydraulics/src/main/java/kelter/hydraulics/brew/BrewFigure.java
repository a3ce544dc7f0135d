package kelter.hydraulics.brew;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the way of the brewing water. */
enum BrewFigure implements Figure {
  /** Flow rate of the pump without pressure, ratio. */
  FLOW(1),
  /** Pressure of the pump without flow, ratio. */
  PRESSURE(1),
  /** Sound of the pump, place on the scale from silent to rattling. */
  SOUND(0.62),
  /** Chance that its coil conducts in neither direction. */
  COIL_OPEN(0.03),
  /** Chance that it pumps only once water is pushed into it. */
  WANTS_PRIMING(0.04),
  /** What the valve of the tank lets through, ratio. */
  SUCTION(1),
  /** Pressure at which the over-pressure valve opens, ratio. */
  OPENS_AT(1),
  /** Open bore of the brew jet, ratio. */
  JET(1),
  /** Open area of the group screen, ratio. */
  SCREEN(1),
  /** Share that the three-way valve lets into the tray while it brews, 0 to 1. */
  EXHAUST(0);

  private final double inOrder;

  BrewFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}
