package kelter.hydraulics.washpump;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults can change in the circuit of the wash water, beside the pump itself. */
final class WashFigure {

  static final FigureSet ALL = new FigureSet("wash");
  static final Figure LEVEL =
      ALL.figure("the height of the water above the pump inlet by its working height, ratio", 1);
  static final Figure OPEN_JETS = ALL.figure("the share of the jets that is open, ratio", 1);
  static final Figure ESCAPE =
      ALL.figure("what lets water escape before the jets by the area of the jets, ratio", 0);
  static final Figure FILTER_CLOSED =
      ALL.figure("the share of the bore of the filter that is closed, ratio", 0);
  static final Figure STARVING =
      ALL.figure(
          "the probability that the spray comes and goes for want of water at the filter", 0);
  static final Figure FILTER =
      ALL.figure("what the filter looks like, place on a scale from 0 to 1; judgement", 0.1);

  private WashFigure() {}
}
