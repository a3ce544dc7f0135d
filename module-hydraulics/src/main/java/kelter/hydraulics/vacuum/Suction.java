package kelter.hydraulics.vacuum;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.air.BlockedAir;
import kelter.hydraulics.air.SealedSuction;

/**
 * A fan on a straight line that draws through a hose and through what leaks beside it. The hose has
 * 40 % of the losses, and 60 % of the open flow runs in a machine in order: from memory. With K the
 * loss of the hose and all behind it and c the leak, by {@link SealedSuction}, the fan sees K' =
 * 1/(c + 1/√K)².
 *
 * @param sealed the suction without any flow, Pa, above 0
 * @param open the flow rate without a nozzle, m3/s, above 0
 */
record Suction(double sealed, double open)
    implements Circumstances<Suction.Drawn>, Circumstances.Solver<Suction.Drawn> {

  static final Characteristic SEALED =
      new Characteristic(
              "rated-suction",
              "suction of a machine in order without any flow",
              QuantityKind.PRESSURE_DIFFERENCE)
          .within(new Span(1000, 60_000));

  private static final double USUAL_SEALED = 20_000; // Pa, from memory
  private static final double USUAL_OPEN = 0.033; // m3/s, from memory
  private static final double OF_HOSE = 0.4; // share of all losses
  private static final double USED = 0.6; // ratio of the open flow
  private static final double LOSS = (1 - USED) / (USED * USED); // BlockedAir: K at that flow

  /** The suction of the machine that a part belongs to. */
  static Suction of(Component part) {
    return new Suction(part.si(SEALED, USUAL_SEALED), USUAL_OPEN);
  }

  @Override
  public Circumstances.Solver<Drawn> under(Conditions conditions) {
    return this;
  }

  @Override
  public Drawn in(State state) {
    double area = state.of(SuctionFigure.LEAK);
    double leak = SealedSuction.leak(sealed, open, area);
    double loss = LOSS * (1 - OF_HOSE + OF_HOSE * state.of(SuctionFigure.LOSS));
    double hose = 1 / Math.sqrt(loss);
    double both = leak + hose;
    double atWand = BlockedAir.share(1 / (both * both)) * hose / both;
    double kept = SealedSuction.kept(sealed, open, area);
    return new Drawn(kept, sealed * kept, atWand / BlockedAir.share(LOSS * (1 - OF_HOSE)));
  }

  /**
   * What comes of it.
   *
   * @param kept the suction with the end closed by that without the leak, ratio
   * @param suction the same, Pa
   * @param flow the flow at the wand by that at the body without the hose, ratio
   */
  record Drawn(double kept, double suction, double flow) {}
}
