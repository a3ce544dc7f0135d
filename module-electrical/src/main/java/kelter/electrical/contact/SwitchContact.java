package kelter.electrical.contact;

import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.electrical.component.Electrical;

/** What faults change of a contact beside what it conducts when closed; in order as from memory. */
public final class SwitchContact {

  public static final FigureSet ALL = new FigureSet("switch-contact");
  public static final Figure OPENED =
      ALL.figure(
          "resistance while it should be open, on an ordinary meter, Ohm",
          Electrical.RESISTANCE.high());
  public static final Figure MARKS = ALL.figure("how burnt or damaged it looks, from 0 to 1", 0.1);

  /** What a welded contact reads, Ohm; from memory. */
  private static final double WELDED = 0.1;

  private SwitchContact() {}

  /**
   * A contact that stays closed.
   *
   * @return what such a fault changes
   */
  public static Effect welded() {
    return OPENED.becomes(WELDED);
  }
}
