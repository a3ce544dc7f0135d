package kelter.hydraulics.fault.wash;

import java.util.List;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpHead;

/**
 * What the severities of the wash faults mean in figures.
 *
 * <p>At severity 1 the drag is 1.4 times the rated torque; the water stands at a quarter of its
 * height and the pump, drawing air, loses 55 % of its head and 35 % of the density; 90 % of the
 * jets are closed; the filter leaves 3 % of the bore; the motor turns at 40 % of its speed; as much
 * water escapes before the jets as one and a half times their area would let out. All that is
 * judgement: common practice, no source. A pump that is jammed or gets no power does not turn at
 * any severity.
 *
 * @param condition the condition of the pump
 * @param circuit what it works against
 * @param inlet the passage from the sump to the pump
 * @param level the height of the water above the inlet, in m
 * @param dead whether the pump takes no power
 */
record WashState(PumpCondition condition, Circuit circuit, Hose inlet, double level, boolean dead) {

  private static final double DRAG = 1.4; // ratio of the rated torque
  private static final double LOST_LEVEL = 0.75; // ratio
  private static final double LOST_HEAD = 0.55; // ratio
  private static final double LOST_DENSITY = 0.35; // ratio
  private static final double CLOSED_JETS = 0.9; // ratio
  private static final double SLOWER = 0.6; // ratio
  private static final double ESCAPE = 1.5; // ratio of the area of the jets

  static WashState of(WashCircuit wash, double[] severity) {
    Hose inlet =
        new Hose(
            0, wash.passage().bore(), 0, PumpFaults.clogged(WashFault.INLET_CLOGGED.in(severity)));
    double area =
        wash.jetArea() * (openJets(severity) + ESCAPE * WashFault.PASSAGE_LEAKS.in(severity));
    double low = WashFault.LOW_WATER.in(severity);
    double level = wash.level() * (1 - LOST_LEVEL * low);
    double lift = wash.lift() + wash.level() - level;
    return new WashState(
        condition(wash, severity),
        new Circuit(lift, List.of(inlet, wash.passage()), area),
        inlet,
        level,
        dead(severity));
  }

  private static boolean dead(double[] severity) {
    return WashFault.WINDING_OPEN.isThere(severity) || WashFault.NO_VOLTAGE.isThere(severity);
  }

  private static PumpCondition condition(WashCircuit wash, double[] severity) {
    double low = WashFault.LOW_WATER.in(severity);
    double blocked = WashFault.PASSAGES_BLOCKED.in(severity);
    boolean held = dead(severity) || WashFault.JAMMED.isThere(severity);
    return new PumpCondition(
        PumpFaults.openPassages(blocked),
        PumpFaults.grip(WashFault.IMPELLER_SLIPS.in(severity)),
        PumpFaults.headShare(blocked) * (1 - LOST_HEAD * low),
        1 - LOST_DENSITY * low,
        PumpFaults.leakArea(
            WashFault.INTERNAL_LEAK.in(severity), wash.point().flow(), wash.point().head()),
        held ? PumpFaults.LOCKED : DRAG * WashFault.DRAG.in(severity),
        1 - SLOWER * WashFault.SLOW.in(severity));
  }

  /** The share of the jets that is open. */
  static double openJets(double[] severity) {
    return 1 - CLOSED_JETS * WashFault.JETS_CLOGGED.in(severity);
  }

  /**
   * The head at the pump inlet above that of the air, in m: water above it, less loss and velocity.
   */
  double inletHead(double flow, double kinematicViscosity) {
    return level
        - inlet.headLoss(flow, kinematicViscosity)
        - PumpHead.velocityHead(flow, inlet.bore());
  }
}
