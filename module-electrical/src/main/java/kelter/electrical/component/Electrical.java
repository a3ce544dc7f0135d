package kelter.electrical.component;

import java.util.ArrayList;
import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.Cautions;

/** What the procedures of all electrical parts share, and all kinds of parts together. */
public final class Electrical {

  /** The temperature of the part when it was read. */
  public static final Characteristic TEMPERATURE =
      new Characteristic("temperature", "temperature of the part", QuantityKind.TEMPERATURE);

  /** The voltage that was there. */
  public static final Characteristic VOLTAGE =
      new Characteristic("voltage", "voltage at the part", QuantityKind.VOLTAGE);

  /** Before a dead measurement. */
  public static final String DEAD =
      "Plug out, wait for capacitors to discharge, prove dead with a two-pole tester that you have"
          + " tried on a live point before and after. ";

  /** Before a live measurement. */
  static final String LIVE =
      "Only if you are competent for live work: instrument and leads of measurement category III"
          + " (IEC 61010-031), one hand, clips put on with the plug out. ";

  /** An ordinary meter on its resistance ranges: 1 % and 0.2 ohm for leads and contacts. */
  static final Accuracy OHMMETER = new Accuracy(0.01, 0.2);

  /** A low-resistance tester with nulled leads. */
  static final Accuracy LOW_OHMMETER = new Accuracy(0.02, 0.02);

  /** An ordinary insulation tester. */
  static final Accuracy INSULATION_TESTER = new Accuracy(0.05, 5e3);

  /** An ordinary clamp meter. */
  static final Accuracy CLAMP = new Accuracy(0.02, 0.05);

  /** An ordinary plug-in power meter. */
  static final Accuracy POWER_METER = new Accuracy(0.02, 2);

  /** An ordinary meter on its alternating voltage range. */
  static final Accuracy VOLTMETER = new Accuracy(0.01, 0.5);

  /** Nothing is read from an instrument. */
  static final Accuracy BY_EYE = new Accuracy(0, 0);

  /** From the least that an ordinary meter tells to an open circuit, Ohm. */
  public static final Span RESISTANCE = new Span(0.05, 1e8);

  /** From the least that a low-resistance tester tells to an open circuit, Ohm. */
  static final Span LOW_RESISTANCE = new Span(0.02, 1e8);

  /** From the least to the most that an ordinary insulation tester tells, Ohm. */
  static final Span INSULATION = new Span(5e3, 1e9);

  private Electrical() {}

  /**
   * All kinds of electrical parts.
   *
   * @return the kinds
   */
  public static List<ComponentKind> kinds() {
    List<ComponentKind> kinds = new ArrayList<>();
    kinds.addAll(HeaterKinds.ALL);
    kinds.addAll(ControlKinds.ALL);
    kinds.addAll(SupplyKinds.ALL);
    kinds.addAll(MotorKinds.ALL);
    return List.copyOf(kinds);
  }

  /** Measured with the plug out. */
  static Procedure dead(String text, double minutes, Accuracy typical, Caution... more) {
    return new Procedure(
        DEAD + text, minutes, Hazard.DEAD, typical, withFirst(Caution.UNPLUG, more));
  }

  /** Measured on live parts. */
  static Procedure live(String text, double minutes, Accuracy typical, Caution... more) {
    return new Procedure(
        LIVE + text, minutes, Hazard.LIVE, typical, withFirst(Cautions.LIVE_PARTS, more));
  }

  /** Measured with the machine closed and running. */
  static Procedure running(String text, double minutes, Accuracy typical, Caution... more) {
    return new Procedure(
        text, minutes, Hazard.RUNNING, typical, withFirst(Caution.HOT_WATER, more));
  }

  /** Asked or looked at, nothing opened. */
  static Procedure look(String text, double minutes) {
    return new Procedure(text, minutes, Hazard.NONE, BY_EYE, List.of());
  }

  /** Looked at with the machine opened. */
  static Procedure inside(String text, double minutes, Caution... more) {
    return dead(text, minutes, BY_EYE, more);
  }

  /** The insulation of a part against earth. */
  static Procedure insulation(String text) {
    return dead(text, 5, INSULATION_TESTER, Cautions.TEST_VOLTAGE);
  }

  private static List<Caution> withFirst(Caution first, Caution... more) {
    List<Caution> all = new ArrayList<>();
    all.add(first);
    all.addAll(List.of(more));
    return all;
  }
}
