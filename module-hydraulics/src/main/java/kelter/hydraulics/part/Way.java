package kelter.hydraulics.part;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/**
 * What the ways of observing the water side have in common. Minutes and accuracies are those of a
 * practised person with ordinary instruments: common practice, no source.
 */
public final class Way {

  /** The temperature of the water. */
  public static final Characteristic AT_TEMPERATURE =
      new Characteristic("temperature", "temperature of the water", QuantityKind.TEMPERATURE)
          .within(new Span(268.15, 393.15));

  /** A sump that is opened. */
  private static final Caution SPILL =
      new Caution(
          Signal.CAUTION,
          "Water runs out of the sump, perhaps hot and with lye or broken glass in it. Let it cool, wear"
              + " gloves and eye protection, put a tray under it.");

  private static final Accuracy NONE = new Accuracy(0, 0);

  private Way() {}

  /**
   * What is asked or seen.
   *
   * @param text what to do
   * @param minutes how long that takes
   * @return the way, without a hazard
   */
  public static Procedure look(String text, double minutes) {
    return new Procedure(text, minutes, Hazard.NONE, NONE, List.of());
  }

  /**
   * What is seen once the water side is open.
   *
   * @param text what to do
   * @param minutes how long that takes
   * @return the way, with the plug out
   */
  public static Procedure opened(String text, double minutes) {
    return new Procedure(text, minutes, Hazard.DEAD, NONE, List.of(Caution.UNPLUG, SPILL));
  }

  /**
   * What is measured with the plug out.
   *
   * @param text what to do
   * @param minutes how long that takes
   * @param accuracy how accurate that is
   * @return the way
   */
  public static Procedure dead(String text, double minutes, Accuracy accuracy) {
    return new Procedure(text, minutes, Hazard.DEAD, accuracy, List.of(Caution.UNPLUG));
  }

  /**
   * What is measured while it runs.
   *
   * @param text what to do
   * @param minutes how long that takes
   * @param accuracy how accurate that is
   * @param cautions what to mind
   * @return the way
   */
  public static Procedure running(
      String text, double minutes, Accuracy accuracy, Caution... cautions) {
    return new Procedure(text, minutes, Hazard.RUNNING, accuracy, List.of(cautions));
  }
}
