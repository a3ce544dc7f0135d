package kelter.hydraulics.airway;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.air.BlockedAir;

/**
 * The air of a fan on a straight line that moves 60 % of its open flow in a machine in order (from
 * memory), with a part in its way or without it.
 *
 * @param share what the part in order takes of all losses, ratio, 0 to 0.95
 */
record AirThrough(double share)
    implements Circumstances<AirThrough.Air>, Circumstances.Solver<AirThrough.Air> {

  /** What a part takes of the losses; where it is not told, nothing is run without the part. */
  static final Characteristic LOSS_SHARE =
      new Characteristic(
              "loss-share", "share of all air losses that it has in order", QuantityKind.PERCENT)
          .within(new Span(0, 0.95));

  private static final double USED = 0.6; // ratio of the open flow, from memory
  private static final double LOSS = (1 - USED) / (USED * USED); // BlockedAir: K at that flow

  @Override
  public Circumstances.Solver<Air> under(Conditions conditions) {
    return this;
  }

  @Override
  public Air in(State state) {
    double own = state.of(AirwayFigure.LOSS);
    double with = BlockedAir.share(LOSS * (1 - share + share * own));
    double without = BlockedAir.share(LOSS * (1 - share));
    return new Air(with / without, own * (with / USED) * (with / USED));
  }

  /**
   * What comes of it.
   *
   * @param kept the flow with the part in its way by that without it, ratio
   * @param pressure the pressure that the part takes, by that of a part in order, ratio
   */
  record Air(double kept, double pressure) {}
}
