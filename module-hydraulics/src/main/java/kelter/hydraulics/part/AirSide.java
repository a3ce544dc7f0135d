package kelter.hydraulics.part;

import kelter.core.uncertainty.Accuracy;

/** What the parts that air runs through share. */
public final class AirSide {

  /** Two readings with the same vane at the same place, one by the other. */
  public static final Accuracy TWO_VANE_READINGS = new Accuracy(0.03, 0.01);

  /** A manometer of a few hundred pascals. */
  public static final Accuracy SMALL_MANOMETER = new Accuracy(0.02, 2);

  private AirSide() {}
}
