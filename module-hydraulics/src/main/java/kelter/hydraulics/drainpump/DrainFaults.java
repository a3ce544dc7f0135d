package kelter.hydraulics.drainpump;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.hydraulics.pumppart.PumpFaults;
import kelter.hydraulics.pumppart.PumpFigure;

/**
 * What can be wrong on the way of the water out.
 *
 * <p>At severity 1 the drag is twice the rated torque, so that the motor cannot turn; the hose, the
 * check valve and the strainer leave 3 % of the bore; the outlet is 1.2 m too high; nine tenths of
 * the flow escape near the end of a leaking hose, which the pump does not notice. All that is
 * judgement, and so are minutes and chances of cure: common practice, no source.
 */
final class DrainFaults {

  private static final double CLOSED_BORE = 0.97; // ratio

  private static final Caution SHARP =
      new Caution(
          Signal.CAUTION,
          "Glass, pins and sharp sheet edges in pump and sump. Wear cut-proof gloves.");
  private static final Caution FLOOD =
      new Caution(
          Signal.CAUTION,
          "Flood. Close the tap, empty the sump first, and watch every joint during a test run.");
  private static final Caution HEAVY =
      new Caution(
          Signal.WARNING,
          "Crushing. A machine with water in it is heavy: empty it before you tilt it, and prop it.");

  private static final Work CLEAN_STRAINER =
      byHand("clean-strainer", "clean the strainer and the trap", 12, 0.95, SHARP);
  private static final Work CLEAN_PUMP =
      byHand("clean-pump", "clear the pump chamber and the vanes", 25, 0.9, SHARP);
  private static final Work RENEW_PUMP =
      Work.renewing("renew-pump", "renew the drain pump", 40, 0.97, Caution.UNPLUG, HEAVY, FLOOD);
  private static final Work CLEAR_HOSE =
      byHand("clear-hose", "clear the drain hose, take out kinks", 20, 0.85, FLOOD);
  private static final Work TIGHTEN_HOSE =
      byHand("tighten-hose", "seat the drain hose and tighten its clips", 15, 0.7, FLOOD);
  private static final Work RENEW_HOSE = withPart("renew-hose", "renew the drain hose");
  private static final Work LOWER_HOSE =
      byHand("lower-hose", "lay the hose and its outlet lower", 20, 0.9, FLOOD);
  private static final Work CLEAN_VALVE =
      byHand("clean-valve", "clean the check valve and free its flap", 20, 0.8, FLOOD);
  private static final Work RENEW_VALVE = withPart("renew-valve", "renew the check valve");

  private static final PumpFaults PUMP = new PumpFaults("drain pump");

  static final List<FaultRow> ALL =
      List.of(
          PUMP.passagesBlocked(0.09, 0.55, 0.25).curedBy(CLEAN_PUMP, RENEW_PUMP),
          PUMP.impellerSlips(0.03, 0.25).curedBy(RENEW_PUMP),
          PUMP.internalLeak(0.015).curedBy(RENEW_PUMP),
          PUMP.drag(0.03, 2, 0.45, 0.85).curedBy(RENEW_PUMP),
          fault("strainer-clogged", "strainer before the drain pump clogged", 0.08)
              .changes(
                  DrainFigure.STRAINER_CLOSED.plus(CLOSED_BORE),
                  DrainFigure.STRAINER.plus(0.85),
                  PumpFigure.LOUDNESS.plus(0.25))
              .curedBy(CLEAN_STRAINER),
          fault("hose-clogged", "drain hose clogged or kinked", 0.07)
              .changes(DrainFigure.HOSE_CLOSED.plus(CLOSED_BORE))
              .curedBy(CLEAR_HOSE, RENEW_HOSE),
          fault("lift-too-high", "drain hose laid too high", 0.02)
              .changes(DrainFigure.TOO_HIGH.plus(1.2))
              .curedBy(LOWER_HOSE),
          fault("valve-shut", "check valve stuck shut", 0.02)
              .changes(DrainFigure.VALVE_CLOSED.plus(CLOSED_BORE), DrainFigure.VALVE_HANGS.plus(1))
              .apartFrom("valve-open")
              .curedBy(CLEAN_VALVE, RENEW_VALVE),
          fault("valve-open", "check valve stuck open", 0.02)
              .changes(DrainFigure.VALVE_OPEN.plus(1), DrainFigure.VALVE_HANGS.plus(1))
              .curedBy(CLEAN_VALVE, RENEW_VALVE),
          fault("hose-leaks", "drain hose off its nozzle, split or leaking", 0.02)
              .wears(Wear.RUBBER)
              .changes(DrainFigure.ESCAPING.plus(0.9))
              .curedBy(TIGHTEN_HOSE, RENEW_HOSE),
          PUMP.jammed(" by something that holds its rotor fast", 0.03)
              .curedBy(CLEAN_PUMP, RENEW_PUMP),
          PUMP.windingOpen("winding", 0.02).curedBy(RENEW_PUMP),
          PUMP.noVoltage(0.02));

  private DrainFaults() {}

  private static Work byHand(String id, String title, double minutes, double cure, Caution own) {
    return Work.byHand(id, title, minutes, cure, Caution.UNPLUG, Caution.HOT_WATER, own);
  }

  private static Work withPart(String id, String title) {
    return Work.withPart(id, title, 25, 0.95, Caution.UNPLUG, Caution.HOT_WATER, FLOOD);
  }
}
