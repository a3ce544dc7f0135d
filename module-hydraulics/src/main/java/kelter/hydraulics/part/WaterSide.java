package kelter.hydraulics.part;

import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/** What the parts that water runs through share. */
public final class WaterSide {

  /** Where the priors of their faults come from. */
  public static final Source PRIORS =
      Source.fromMemory(
          "how often each cause is met on machines with a complaint; an order of magnitude, to be"
              + " replaced by the job book");

  /** The temperature of the water. */
  public static final Characteristic AT_TEMPERATURE =
      new Characteristic("temperature", "temperature of the water", QuantityKind.TEMPERATURE)
          .within(new Span(268.15, 393.15));

  private static final Caution SPILL =
      new Caution(
          Signal.CAUTION,
          "Water runs out of the sump, perhaps hot and with lye or broken glass in it. Let it cool, wear"
              + " gloves and eye protection, put a tray under it.");

  private WaterSide() {}

  /**
   * Looked at once the way of the water is open.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure opened(double minutes) {
    return Procedure.inside(minutes, SPILL);
  }
}
