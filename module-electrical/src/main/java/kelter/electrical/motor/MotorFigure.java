package kelter.electrical.motor;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.vocabulary.Proof;

/** What faults change of a motor with its capacitor. */
final class MotorFigure {

  static final FigureSet ALL = new FigureSet("motor");
  static final Figure MAIN =
      ALL.figure("resistance of the main winding, ratio to the one in order", 1);
  static final Figure AUXILIARY =
      ALL.figure("resistance of the auxiliary winding, ratio to the one in order", 1);
  static final Figure CAPACITANCE = ALL.figure("capacitance, ratio to the one marked", 1);
  static final Figure CURRENT =
      ALL.figure("current with both windings fed, ratio to the rated one", 1);
  static final Figure LEAK = ALL.figure("what leaks to earth beside the insulation in order, S", 0);
  static final Figure STIFFNESS = ALL.figure("how hard it turns by hand, from 0 to 1", 0.1);
  static final Figure SMELLS = ALL.figure("chance of a burnt smell", 0.02);
  static final Figure WET = ALL.figure("chance that water marks are seen", 0.04);
  static final Figure SWOLLEN =
      ALL.figure("chance that the capacitor is swollen", Proof.FALSE_ALARM);

  private MotorFigure() {}
}
