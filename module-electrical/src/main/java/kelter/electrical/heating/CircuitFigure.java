package kelter.electrical.heating;

import kelter.core.diagnosis.model.Figure;
import kelter.core.vocabulary.Proof;

/** What faults change of a heating circuit as a whole. */
enum CircuitFigure implements Figure {
  /** Voltage at the outlet without load over the usual one, as a ratio. */
  MAINS(1),
  /** Above 0 where one of several conductors of the supply is without voltage. */
  LEG_LOST(0),
  /** How much of its fuses or breakers is out, from 0 to 1. */
  FUSES_OUT(0.03),
  /** Frequency at the outlet over the rated one, as a ratio. */
  FREQUENCY(1),
  /** Share of it that is left under load. */
  REACHING(1),
  /** Cold resistance of the heater over that of its kind in order, as a ratio. */
  RESISTANCE(1),
  /** Resistance of this very heater over that of its kind, within its tolerance, as a ratio. */
  TOLERANCE(1),
  /** Above 0 where the heater itself is open. */
  HEATER_OPEN(0),
  /** Highest over lowest resistance between two of the terminals of three elements, as a ratio. */
  UNEQUAL(1),
  /** Above 0 where no current can flow for another reason. */
  INTERRUPTED(0),
  /** What the heater conducts to earth beside its own insulation while it is warm, S. */
  LEAK(0),
  /** The same while it is cold, S. */
  COLD_LEAK(0),
  /** What leaks elsewhere in the appliance, S. */
  OTHER_LEAK(0),
  /** Heat of the worst joint at the heater over that of a glowing one, as a ratio. */
  TERMINAL_JOINT(HeatingCircuit.SOUND_JOINT),
  /** The same of the worst joint from outlet to cord. */
  PLUG_JOINT(HeatingCircuit.SOUND_JOINT),
  /** Share of the time in which it heats while it should. */
  DUTY(1),
  /** Flow of air over the one in order, as a ratio. */
  AIRFLOW(1),
  /** Scale or lint, from 0 to 1. */
  DEPOSIT(0.15),
  /** Burnt look of terminals and connectors at the heater, from 0 to 1. */
  TERMINAL_BURNS(0.1),
  /** Burnt look of the plug, from 0 to 1. */
  PLUG_BURNS(0.1),
  /** Probability that plug or cord get hot. */
  PLUG_HOT(Proof.FALSE_ALARM),
  /** Probability that the sheath of the heater is damaged. */
  SHEATH_DAMAGED(Proof.FALSE_ALARM),
  /** Probability that the marking of the heater differs. */
  MARKING_DIFFERS(0.02);

  private final double inOrder;

  CircuitFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}
