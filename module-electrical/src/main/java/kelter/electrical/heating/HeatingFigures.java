package kelter.electrical.heating;

import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

/** What faults can change of a heating circuit and of the parts in it. */
final class HeatingFigures {

  /** What an open circuit measures, Ohm. */
  static final double OPEN = Electrical.RESISTANCE.high();

  /** The circuit as a whole. */
  enum Circuit implements Figure {
    /** Voltage at the outlet without load over the usual one, as a ratio. */
    MAINS(1),
    /** Share of it that is left under load. */
    REACHING(1),
    /** Cold resistance of the heater over that of its kind in order, as a ratio. */
    RESISTANCE(1),
    /** Resistance of this very heater over that of its kind, within its tolerance, as a ratio. */
    TOLERANCE(1),
    /** Above 0 where the heater itself is open. */
    HEATER_OPEN(0),
    /** Above 0 where no current can flow for another reason. */
    INTERRUPTED(0),
    /** What the heater conducts to earth beside its own insulation, S. */
    LEAK(0),
    /** What leaks elsewhere in the appliance, S. */
    OTHER_LEAK(0),
    /** Share of the time in which it heats while it should. */
    DUTY(1),
    /** Share of the wanted rise of temperature that is reached. */
    REACHED(1),
    /** Flow of air over the one in order, as a ratio. */
    AIRFLOW(1),
    /** Scale or lint, from 0 to 1. */
    DEPOSIT(0.15),
    /** Burnt look of the plug, from 0 to 1. */
    PLUG_BURNS(0.1),
    /** Probability that plug or cord get hot. */
    PLUG_HOT(0.03),
    /** Probability that the sheath of the heater is damaged. */
    SHEATH_DAMAGED(0.02),
    /** Probability that the marking of the heater differs. */
    MARKING_DIFFERS(0.02),
    /** Probability that it gets too hot. */
    OVERHEATS(0.02);

    private final double inOrder;

    Circuit(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  /** A thermal link. */
  enum Link implements Figure {
    /** Resistance of a whole link on an ordinary meter, Ohm; from memory. */
    RESISTANCE;

    @Override
    public double inOrder() {
      return 0.1;
    }
  }

  /** A relay. */
  enum Relay implements Figure {
    /** Resistance of the closed contact, Ohm; from memory. */
    CONTACT(0.02),
    /** Above 0 where the contact is welded. */
    WELDED(0),
    /** Above 0 where the coil is open. */
    COIL_OPEN(0),
    /** Burnt look of contact and board, from 0 to 1. */
    BURNS(0.1),
    /** Probability that it smells burnt. */
    BURNT_SMELL(0.02),
    /** Probability that the contact is found closed though it should be open. */
    CLOSED_WHEN_OFF(0.01);

    private final double inOrder;

    Relay(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  /** A temperature sensor. */
  enum Sensor implements Figure {
    /** Resistance over the one at its temperature in order, as a ratio. */
    RESISTANCE(1),
    /** By how much it reads too warm, K. */
    TOO_WARM(0),
    /** By how much it is warmer than what it should sense, K. */
    OFF_BY(0),
    /** Probability that it is found off its seat. */
    OFF_SEAT(0.01);

    private final double inOrder;

    Sensor(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  private HeatingFigures() {}
}
