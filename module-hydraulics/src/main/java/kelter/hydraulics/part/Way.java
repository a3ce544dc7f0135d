package kelter.hydraulics.part;

import java.util.ArrayList;
import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/**
 * What the ways of observing a pump have in common. Minutes and accuracies are those of a practised
 * person with ordinary instruments: common practice, no source.
 */
final class Way {

  /** The flow rate at which a head is read. */
  static final Characteristic AT_FLOW =
      new Characteristic("flow", "flow rate while it is read", QuantityKind.FLOW);

  /** The temperature of the water. */
  static final Characteristic AT_TEMPERATURE =
      new Characteristic("temperature", "temperature of the water", QuantityKind.TEMPERATURE)
          .within(new Span(268.15, 393.15));

  /** The frequency of the supply. */
  static final Characteristic AT_FREQUENCY =
      new Characteristic(RatedSupply.FREQUENCY, "frequency of the supply", QuantityKind.FREQUENCY);

  /** The voltage of the supply. */
  static final Characteristic AT_VOLTAGE =
      new Characteristic(
          RatedSupply.VOLTAGE, "voltage at the pump while it runs", QuantityKind.VOLTAGE);

  /** What may be stated about a pump that runs. */
  static final List<Characteristic> RUNNING = List.of(AT_TEMPERATURE, AT_FREQUENCY, AT_VOLTAGE);

  /** What may be stated about a head. */
  static final List<Characteristic> RUNNING_AT_FLOW =
      List.of(AT_FLOW, AT_TEMPERATURE, AT_FREQUENCY, AT_VOLTAGE);

  /** The temperature of the winding. */
  static final Characteristic OF_WINDING =
      new Characteristic("temperature", "temperature of the winding", QuantityKind.TEMPERATURE);

  /** An ordinary meter on its resistance ranges: 1 % and 0.2 ohm for leads and contacts. */
  static final Accuracy OHMMETER = new Accuracy(0.01, 0.2);

  /** From the least that an ordinary meter tells to an open circuit, ohm. */
  static final Span RESISTANCE = new Span(0.05, DrainPumpKind.OPEN_CIRCUIT);

  /** Parts that turn behind an opening. */
  static final Caution TURNING =
      new Caution(
          Signal.WARNING,
          "Moving parts. Keep fingers, hair and cloth away from the pump while it can start.");

  /** A capacitor beside a motor. */
  static final Caution CHARGED =
      new Caution(
          Signal.DANGER,
          "Stored charge. A run capacitor can hold its charge after the plug is out: discharge it through"
              + " a resistor and prove it dead before you touch.");

  /** A sump that is opened. */
  static final Caution SPILL =
      new Caution(
          Signal.CAUTION,
          "Water runs out of the sump, perhaps hot and with lye or broken glass in it. Let it cool, wear"
              + " gloves and eye protection, put a tray under it.");

  /** An outlet that is held by hand. */
  static final Caution HOSE_END =
      new Caution(
          Signal.CAUTION,
          "A loose hose end can jump and flood the floor. Fix it before you start the pump.");

  /** Electric parts near water. */
  static final Caution WET_MAINS =
      new Caution(
          Signal.DANGER,
          "Electric shock. Keep the meter, the plug and your hands dry, and use a socket with a residual"
              + " current device.");

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

  static Observable winding(String title, String text, Caution... more) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(Caution.UNPLUG);
    cautions.addAll(List.of(more));
    return Observable.logarithmic(
        "winding-resistance",
        title,
        QuantityKind.RESISTANCE,
        RESISTANCE,
        List.of(OF_WINDING),
        new Procedure(text, 4, Hazard.DEAD, OHMMETER, cautions));
  }

  static Procedure running(String text, double minutes, Accuracy accuracy, Caution... cautions) {
    return new Procedure(text, minutes, Hazard.RUNNING, accuracy, List.of(cautions));
  }
}
