package kelter.hydraulics.pumppart;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;

/**
 * What is observed alike on every pump, and the words for it. Minutes and accuracies are those of a
 * practised person with ordinary instruments: common practice, no source.
 *
 * @param head its head
 * @param power its electric power
 * @param current its current
 * @param winding the resistance of its winding
 * @param noise its noise
 * @param debris what lies in it
 * @param turns how it turns by hand
 * @param loose whether its impeller has come loose
 */
public record PumpWords(
    Observable head,
    Observable power,
    Observable current,
    Observable winding,
    Observable noise,
    Observable debris,
    Observable turns,
    Observable loose) {

  /** What an ordinary meter tells of an open circuit at most, ohm; judgement. */
  static final double OPEN_CIRCUIT = 1e8;

  /** The curve of head over flow rate. */
  public static final CurveKind HEAD_CURVE =
      new CurveKind("head", "head over flow rate", QuantityKind.FLOW, QuantityKind.HEAD);

  /** What the winding, or the main one, should have. */
  public static final Characteristic WINDING =
      new Characteristic(
              "winding-resistance", "resistance of the winding at 20 °C", QuantityKind.RESISTANCE)
          .within(new Span(0.01, 1e5));

  /** The greatest torque of a motor behind an inverter; without it the motor runs off the mains. */
  public static final Characteristic TORQUE_LIMIT =
      new Characteristic(
              "torque-limit",
              "greatest torque of a motor behind an inverter, by its rated torque",
              QuantityKind.PERCENT)
          .within(new Span(0.01, 10));

  static final Characteristic AT_FLOW =
      new Characteristic("flow", "flow rate while it is read", QuantityKind.FLOW)
          .within(new Span(0, 0.1));

  static final Characteristic AT_FREQUENCY =
      new Characteristic("frequency", "frequency of the supply", QuantityKind.FREQUENCY)
          .within(new Span(0, 1000));

  static final Characteristic AT_VOLTAGE =
      new Characteristic("voltage", "voltage at the pump while it runs", QuantityKind.VOLTAGE)
          .within(new Span(0, 1000));

  static final Characteristic OF_WINDING =
      new Characteristic("temperature", "temperature of the winding", QuantityKind.TEMPERATURE);

  /** What may be stated about a pump that runs. */
  public static final List<Characteristic> RUNNING =
      List.of(WaterSide.AT_TEMPERATURE, AT_FREQUENCY, AT_VOLTAGE);

  private static final List<Characteristic> RUNNING_AT_FLOW =
      List.of(AT_FLOW, WaterSide.AT_TEMPERATURE, AT_FREQUENCY, AT_VOLTAGE);

  /** An ordinary meter on its resistance ranges: 1 % and 0.2 ohm for leads and contacts. */
  private static final Accuracy OHMMETER = new Accuracy(0.01, 0.2);

  /** From the least that an ordinary meter tells to an open circuit, ohm. */
  private static final Span RESISTANCE = new Span(0.05, OPEN_CIRCUIT);

  /**
   * The head, at no flow unless a flow rate is stated.
   *
   * @param pump what the pump is called, for a person
   * @param most the greatest head, m
   * @param how how it is measured
   * @param minutes how long that takes
   * @param accuracy how accurate that is
   * @return the word
   */
  public static Observable head(
      String pump, double most, String how, double minutes, Accuracy accuracy) {
    return Observable.named("head", "head of the " + pump + ", at no flow unless stated")
        .quantity(QuantityKind.HEAD, 0, most)
        .at(RUNNING_AT_FLOW)
        .how(how)
        .by(
            Procedure.running(
                minutes, accuracy, Caution.HOT_WATER, HydraulicCautions.LOOSE_HOSE_END));
  }

  /**
   * The electric power.
   *
   * @param pump what the pump is called, and while it does what
   * @param most the greatest power, W
   * @param how how it is measured
   * @param floor the least error of that, W
   * @return the word
   */
  public static Observable power(String pump, double most, String how, double floor) {
    return Observable.named("power", "electric power of the " + pump)
        .quantity(QuantityKind.POWER, 0, most)
        .at(RUNNING)
        .how(how)
        .by(Procedure.running(4, new Accuracy(0.015, floor), HydraulicCautions.WET_MAINS));
  }

  /**
   * The current of the motor.
   *
   * @param pump what the pump is called, and while it does what
   * @param most the greatest current, A
   * @param how how it is measured
   * @return the word
   */
  public static Observable current(String pump, double most, String how) {
    return Observable.named("current", "current of the " + pump)
        .quantity(QuantityKind.CURRENT, 0, most)
        .at(RUNNING)
        .how(how)
        .by(Procedure.running(4, new Accuracy(0.015, 0.01), HydraulicCautions.WET_MAINS));
  }

  /**
   * The resistance of the winding.
   *
   * @param winding what the winding is called
   * @param how how it is measured
   * @param more what to mind beside pulling the plug
   * @return the word
   */
  public static Observable winding(String winding, String how, Caution... more) {
    return Observable.named("winding-resistance", "resistance of the " + winding)
        .logarithmic(QuantityKind.RESISTANCE, RESISTANCE)
        .provingFrom(1e6)
        .at(OF_WINDING)
        .how(how)
        .by(Procedure.dead(4, OHMMETER, more));
  }

  /**
   * What it sounds like; it hums if it has voltage and does not turn.
   *
   * @param pump what the pump is called
   * @param how how it is heard
   * @return the word
   */
  public static Observable noise(String pump, String how) {
    return Observable.named("noise", "noise of the " + pump + " with water in it")
        .graded("silent", "hums", "usual", "louder", "rattles")
        .how(how)
        .by(Procedure.running(1, Procedure.BY_EYE, HydraulicCautions.WET_MAINS));
  }

  /**
   * What is found in the pump.
   *
   * @param how how to look
   * @param minutes how long that takes
   * @return the word
   */
  public static Observable debris(String how, double minutes) {
    return Observable.named("debris", "debris in the pump chamber and between the vanes")
        .graded("none", "some", "full")
        .how(how)
        .by(WaterSide.opened(minutes));
  }

  /**
   * How the rotor turns by hand.
   *
   * @param how how to try
   * @param minutes how long that takes
   * @return the word
   */
  public static Observable turns(String how, double minutes) {
    return Observable.named("turns", "how the impeller turns by hand")
        .graded("freely", "stiffly", "stuck")
        .how(how)
        .by(WaterSide.opened(minutes));
  }

  /**
   * Whether the impeller has come loose.
   *
   * @param how how to try
   * @param minutes how long that takes
   * @return the word
   */
  public static Observable loose(String how, double minutes) {
    return Observable.named(
            "impeller-loose", "the impeller slips on its shaft or its vanes are worn away")
        .how(how)
        .by(WaterSide.opened(minutes));
  }
}
