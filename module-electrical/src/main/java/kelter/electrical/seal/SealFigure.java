package kelter.electrical.seal;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What a leak changes of a gasket, a seal or a body. */
final class SealFigure {

  static final FigureSet ALL = new FigureSet("seal");
  static final Figure CONDITION = ALL.figure("how bad it looks, from 0 to 1", 0.15);
  static final Figure TRACES = ALL.figure("chance that traces are seen beside it", 0.06);
  static final Figure PAPER =
      ALL.figure("chance that dry paper below gets wet, or a strip in the gap slips", 0.04);

  private SealFigure() {}
}
