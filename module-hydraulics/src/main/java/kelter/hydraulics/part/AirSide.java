package kelter.hydraulics.part;

import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.uncertainty.Accuracy;

/** What the parts that air runs through share. */
public final class AirSide {

  /** A running fan. */
  public static final Caution FAN_TURNS =
      new Caution(
          Signal.CAUTION,
          "Moving parts and hot air. Keep hair, sleeves and fingers away from fan and outlet.");

  /** Two readings with the same vane at the same place, one by the other. */
  public static final Accuracy TWO_VANE_READINGS = new Accuracy(0.03, 0.01);

  /** A manometer of a few hundred pascals. */
  public static final Accuracy SMALL_MANOMETER = new Accuracy(0.02, 2);

  private AirSide() {}
}
