package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.DischargeWait;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;

/** What the words and procedures of all electrical parts share. */
public final class Electrical {

  /** Where the priors of electrical faults come from. */
  public static final Source PRIORS = Source.fromMemory("estimate of how often it is found");

  /** The temperature of the part when it was read. */
  public static final Characteristic TEMPERATURE =
      new Characteristic("temperature", "temperature of the part", QuantityKind.TEMPERATURE);

  /** The temperature of a sensor when it was read: those of ovens are warmer than other parts. */
  public static final Characteristic SENSOR_TEMPERATURE =
      TEMPERATURE.within(new Span(213.15, 673.15));

  /** The voltage that was there. */
  public static final Characteristic VOLTAGE =
      new Characteristic("voltage", "voltage at the part", QuantityKind.VOLTAGE)
          .within(new Span(0, 1000));

  /** The current that flowed. */
  public static final Characteristic CURRENT =
      new Characteristic("current", "current that is drawn", QuantityKind.CURRENT)
          .within(new Span(0, 1000));

  /** More than the filter of an ordinary appliance has, F; common practice, no source. */
  private static final double FILTER = 2.2e-6;

  /** What an ordinary filter is bled through, Ohm; common practice, no source. */
  private static final double BLEED = 1e6;

  /** The highest nominal voltage of a net that appliances have, V. */
  private static final double HIGHEST_NET = 400;

  /**
   * How long the filter takes at worst, s: in every market, and whatever is read at the outlet up
   * to 880 V.
   */
  private static final long FILTER_WAIT =
      DischargeWait.told(
          DischargeWait.seconds(
              FILTER, BLEED, DischargeWait.start(HIGHEST_NET, 0), DischargeWait.PLUG));

  private static final String WAIT =
      "Plug out, or where it is wired isolated and locked off; wait "
          + FILTER_WAIT
          + " s for the filter (2.2 uF bled by 1 MOhm, at worst), read 34 V or less at the plug or the"
          + " supply terminals,";

  /** Before a dead measurement. */
  public static final String DEAD =
      "Dead, by whoever may open appliances. "
          + WAIT
          + " prove dead with a two-pole tester that you have tried on a live point before and after;"
          + " instruments CAT II or higher (IEC 61010-2-030). ";

  /** Before a live measurement. */
  static final String LIVE =
      "Live, only by those competent for live work, where local code allows. "
          + WAIT
          + " prove dead, put the clips on, one hand, instrument CAT III (IEC 61010-2-030) and its leads"
          + " (IEC 61010-031), power on; power off and prove dead again before the clips come off. ";

  /** Before a measurement on the closed running machine. */
  static final String RUNNING =
      "Running, by any technician: the machine closed, nothing opened and so nothing to discharge,"
          + " plug-in instruments CAT II or higher (IEC 61010-2-030). ";

  /** Before a test with 500 V. */
  static final String TESTER =
      "Insulation tester (IEC 61557-2); leave its leads on until it shows that its own 500 V are"
          + " gone. ";

  /** An ordinary meter on its resistance ranges: 1 % and 0.2 ohm for leads and contacts. */
  public static final Accuracy OHMMETER = new Accuracy(0.01, 0.2);

  /** A low-resistance tester with nulled leads. */
  public static final Accuracy LOW_OHMMETER = new Accuracy(0.02, 0.02);

  /** An ordinary insulation tester. */
  public static final Accuracy INSULATION_TESTER = new Accuracy(0.05, 5e3);

  /** An ordinary clamp meter. */
  public static final Accuracy CLAMP = new Accuracy(0.02, 0.05);

  /** An ordinary plug-in power meter. */
  public static final Accuracy POWER_METER = new Accuracy(0.02, 2);

  /** An ordinary meter on its alternating voltage range. */
  public static final Accuracy VOLTMETER = new Accuracy(0.01, 0.5);

  /** A meter that shows the frequency to a tenth. */
  public static final Accuracy FREQUENCY_METER = new Accuracy(0.001, 0.1);

  /**
   * An ordinary meter across a joint under load, on a range that bears the mains, since they lie
   * there once the joint opens.
   */
  public static final Accuracy DROP_METER = new Accuracy(0.01, 0.05);

  /** From what such a meter just tells to the mains of an open joint, V. */
  public static final Span DROP = new Span(0.02, 500);

  /** An ordinary tester of leakage currents. */
  static final Accuracy LEAKAGE_TESTER = new Accuracy(0.05, 2e-5);

  /** Nothing is read from an instrument. */
  public static final Accuracy BY_EYE = new Accuracy(0, 0);

  /** From the least that an ordinary meter tells to an open circuit, Ohm. */
  public static final Span RESISTANCE = new Span(0.05, 1e8);

  /** From the least that a low-resistance tester tells to an open circuit, Ohm. */
  public static final Span LOW_RESISTANCE = new Span(0.02, 1e8);

  /** From the least to the most that an ordinary insulation tester tells, Ohm. */
  public static final Span INSULATION = new Span(5e3, 1e9);

  private Electrical() {}

  /**
   * Measured with the plug out.
   *
   * @param minutes how long it takes
   * @param typical the accuracy of an ordinary instrument for it
   * @param more what to mind beside what all such work asks
   * @return the procedure
   */
  public static Procedure dead(double minutes, Accuracy typical, Caution... more) {
    return new Procedure(
        DEAD, "", minutes, Hazard.DEAD, typical, List.of(withFirst(Caution.UNPLUG, more)));
  }

  /**
   * Measured on live parts.
   *
   * @param minutes how long it takes
   * @param typical the accuracy of an ordinary instrument for it
   * @param more what to mind beside what all such work asks
   * @return the procedure
   */
  public static Procedure live(double minutes, Accuracy typical, Caution... more) {
    return new Procedure(
        LIVE,
        "",
        minutes,
        Hazard.LIVE,
        typical,
        List.of(withFirst(ElectricalCautions.LIVE_PARTS, more)));
  }

  /**
   * Measured with the machine closed and running, whatever it heats.
   *
   * @param minutes how long it takes
   * @param typical the accuracy of an ordinary instrument for it
   * @param more what to mind beside what all such work asks
   * @return the procedure
   */
  public static Procedure running(double minutes, Accuracy typical, Caution... more) {
    return closed(minutes, typical, withFirst(ElectricalCautions.RUNNING, more));
  }

  /**
   * Measured with the machine closed and running with water in it.
   *
   * @param minutes how long it takes
   * @param typical the accuracy of an ordinary instrument for it
   * @return the procedure
   */
  public static Procedure runningWithWater(double minutes, Accuracy typical) {
    return closed(minutes, typical, Caution.HOT_WATER);
  }

  private static Procedure closed(double minutes, Accuracy typical, Caution... cautions) {
    return new Procedure(RUNNING, "", minutes, Hazard.RUNNING, typical, List.of(cautions));
  }

  /**
   * Looked at with the machine opened.
   *
   * @param minutes how long it takes
   * @param more what to mind beside what all such work asks
   * @return the procedure
   */
  public static Procedure inside(double minutes, Caution... more) {
    return dead(minutes, BY_EYE, more);
  }

  /**
   * The insulation of a part against earth.
   *
   * @return the procedure
   */
  public static Procedure insulation() {
    return dead(5, INSULATION_TESTER, ElectricalCautions.TEST_VOLTAGE).then(TESTER);
  }

  private static Caution[] withFirst(Caution first, Caution... more) {
    Caution[] all = new Caution[more.length + 1];
    all[0] = first;
    System.arraycopy(more, 0, all, 1, more.length);
    return all;
  }
}
