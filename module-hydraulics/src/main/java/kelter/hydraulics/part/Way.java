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
final class Way {

  /** The temperature of the water. */
  static final Characteristic AT_TEMPERATURE =
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

  static Procedure look(String text, double minutes) {
    return new Procedure(text, minutes, Hazard.NONE, NONE, List.of());
  }

  static Procedure opened(String text, double minutes) {
    return new Procedure(text, minutes, Hazard.DEAD, NONE, List.of(Caution.UNPLUG, SPILL));
  }

  static Procedure dead(String text, double minutes, Accuracy accuracy) {
    return new Procedure(text, minutes, Hazard.DEAD, accuracy, List.of(Caution.UNPLUG));
  }

  static Procedure running(String text, double minutes, Accuracy accuracy, Caution... cautions) {
    return new Procedure(text, minutes, Hazard.RUNNING, accuracy, List.of(cautions));
  }
}
