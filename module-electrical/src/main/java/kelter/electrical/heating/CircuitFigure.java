package kelter.electrical.heating;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.vocabulary.Proof;

/** What faults change of a heating circuit as a whole. */
final class CircuitFigure {

  static final FigureSet ALL = new FigureSet("circuit");
  static final Figure MAINS =
      ALL.figure("voltage at the outlet without load over the usual one, as a ratio", 1);
  static final Figure LEG_LOST =
      ALL.figure("above 0 where one of several conductors of the supply is without voltage", 0);
  static final Figure FUSES_OUT =
      ALL.figure("how much of its fuses or breakers is out, from 0 to 1", 0.03);
  static final Figure FREQUENCY =
      ALL.figure("frequency at the outlet over the rated one, as a ratio", 1);
  static final Figure REACHING =
      ALL.figure("share of the voltage at the outlet that is left under load, as a ratio", 1);
  static final Figure RESISTANCE =
      ALL.figure("cold resistance of the heater over that of its kind in order, as a ratio", 1);
  static final Figure TOLERANCE =
      ALL.figure(
          "resistance of this very heater over that of its kind, within its tolerance, as a ratio",
          1);
  static final Figure HEATER_OPEN = ALL.figure("above 0 where the heater itself is open", 0);
  static final Figure UNEQUAL =
      ALL.figure(
          "highest over lowest resistance between two of the terminals of three elements, as a ratio",
          1);
  static final Figure INTERRUPTED =
      ALL.figure("above 0 where no current can flow for another reason", 0);
  static final Figure LEAK =
      ALL.figure(
          "what the heater conducts to earth beside its own insulation while it is warm, S", 0);
  static final Figure COLD_LEAK =
      ALL.figure(
          "what the heater conducts to earth beside its own insulation while it is cold, S", 0);
  static final Figure OTHER_LEAK = ALL.figure("what leaks elsewhere in the appliance, S", 0);
  static final Figure TERMINAL_JOINT =
      ALL.figure(
          "heat of the worst joint at the heater over that of a glowing one, as a ratio",
          HeatingCircuit.SOUND_JOINT);
  static final Figure PLUG_JOINT =
      ALL.figure(
          "heat of the worst joint from outlet to cord over that of a glowing one, as a ratio",
          HeatingCircuit.SOUND_JOINT);
  static final Figure DUTY = ALL.figure("share of the time in which it heats while it should", 1);
  static final Figure AIRFLOW = ALL.figure("flow of air over the one in order, as a ratio", 1);
  static final Figure DEPOSIT = ALL.figure("scale or lint, from 0 to 1", 0.15);
  static final Figure TERMINAL_BURNS =
      ALL.figure("burnt look of terminals and connectors at the heater, from 0 to 1", 0.1);
  static final Figure PLUG_BURNS = ALL.figure("burnt look of the plug, from 0 to 1", 0.1);
  static final Figure PLUG_HOT =
      ALL.figure("probability that plug or cord get hot", Proof.FALSE_ALARM);
  static final Figure SHEATH_DAMAGED =
      ALL.figure("probability that the sheath of the heater is damaged", Proof.FALSE_ALARM);
  static final Figure MARKING_DIFFERS =
      ALL.figure("probability that the marking of the heater differs", 0.02);

  private CircuitFigure() {}
}
