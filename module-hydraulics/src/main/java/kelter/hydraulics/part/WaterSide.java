package kelter.hydraulics.part;

import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.caution.HydraulicCautions;

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

  private WaterSide() {}

  /**
   * Looked at once the way of the water is open.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure opened(double minutes) {
    return Procedure.inside(minutes, HydraulicCautions.SUMP_SPILL);
  }

  /**
   * Looked at where condensate or waste water runs off.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure runOff(double minutes) {
    return Procedure.inside(minutes, HydraulicCautions.RUN_OFF);
  }

  /**
   * Looked at or measured behind covers with the plug out.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure behindCovers(double minutes) {
    return Procedure.inside(minutes, HydraulicCautions.WATER_UNDER_COVERS);
  }

  /**
   * Seen on the closed machine while it runs.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure running(double minutes) {
    return Procedure.running(minutes, Procedure.BY_EYE, Caution.HOT_WATER);
  }

  /**
   * Caught in a measuring beaker for a known time on the closed machine while it runs: 5 % and 10
   * mL/min.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure
   */
  public static Procedure caught(double minutes) {
    return Procedure.running(minutes, new Accuracy(0.05, 0.01 / 60_000), Caution.HOT_WATER);
  }
}
