package kelter.hydraulics.circuit;

import java.util.List;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pipe.TorricelliJet;

/**
 * What a pump works against: a lift, hoses in a row, and jets at their end.
 *
 * @param lift the height of the outlet above the water from which the pump draws, in m, not
 *     negative; a lower outlet siphons and is not covered
 * @param hoses the hoses and passages, in the order of the flow; may be empty
 * @param jetArea the discharge coefficient times the open area of all jets, in m2, above 0;
 *     infinite for an open end, whose velocity head is lost in the last hose's coefficient
 */
public record Circuit(double lift, List<Hose> hoses, double jetArea) {

  /** What the lift may be. */
  public static final Parameter LIFT =
      Parameter.required("lift", "outlet above the water drawn from", QuantityKind.HEAD, 0, 20);

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the lift is negative or not finite, or the area not above
   *     zero
   */
  public Circuit {
    hoses = List.copyOf(hoses);
    if (!(lift >= 0 && Double.isFinite(lift))) {
      throw new IllegalArgumentException(
          "lift: %s m is not a height from 0 upward; with the outlet below the water it siphons"
              .formatted(QuantityFormat.plain(lift)));
    }
    if (!(jetArea > 0)) {
      throw new IllegalArgumentException("the open area of the jets is above 0 m2, not " + jetArea);
    }
  }

  /**
   * The head that it takes to drive a flow through.
   *
   * @param flow the flow rate in m3/s; at or below 0 only the lift is left
   * @param kinematicViscosity the kinematic viscosity in m2/s
   * @return the head in m
   */
  public double head(double flow, double kinematicViscosity) {
    if (flow <= 0) {
      return lift;
    }
    double head = lift;
    for (Hose hose : hoses) {
      head += hose.headLoss(flow, kinematicViscosity);
    }
    return jetArea == Double.POSITIVE_INFINITY ? head : head + TorricelliJet.head(jetArea, flow);
  }
}
