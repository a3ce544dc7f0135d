package kelter.electrical.brushmotor;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change of a motor with brushes and of its tacho. */
final class BrushFigure {

  static final FigureSet ALL = new FigureSet("brush");
  static final Figure ROTOR =
      ALL.figure("resistance of the rotor by way of the brushes, ratio to the one in order", 1);
  static final Figure FIELD =
      ALL.figure("resistance of the field winding, ratio to the one in order", 1);
  static final Figure STIFFNESS = ALL.figure("how hard it turns by hand, from 0 to 1", 0.1);
  static final Figure COMMUTATOR = ALL.figure("how bad the commutator looks, from 0 to 1", 0.2);
  static final Figure LENGTH =
      ALL.figure("length of the brushes: 0 where they are changed, 1 as new", 0.5);
  static final Figure TACHO = ALL.figure("resistance of the tacho, ratio to the one in order", 1);
  static final Figure MAGNET =
      ALL.figure("chance that the magnet of the tacho turns on its shaft", 0.02);

  private BrushFigure() {}
}
