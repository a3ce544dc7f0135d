package kelter.hydraulics.pumppart;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.square;

import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;

/**
 * The faults of any centrifugal pump. What they change at severity 1 is judgement (common practice,
 * no source): about as bad as it is met before the machine is given up. A pump that is jammed or
 * gets no power does not turn at any severity. The chances of the symptoms that a pump makes
 * wherever it sits are from memory; what a machine does without the water that it should move, its
 * part says.
 *
 * <p>Of every fault the part says the prior and what differs from pump to pump: how much louder it
 * makes the pump, on the scale of its noise, and how much stiffer, from 0 to 1.
 *
 * @param pump what the pump is called, for a person
 */
public record PumpFaults(String pump) {

  /** The drag on a rotor that is held fast, by the rated torque: beyond what any motor pulls. */
  static final double LOCKED = 100;

  /** The share of the head that blocked vanes cost at most. */
  private static final double MOST_HEAD_LOST = 1;

  /** Minutes and chances of cure of this and the next: common practice, no source. */
  private static final Work MEND_WIRE =
      Work.byHand(
          "mend-wire",
          "find where the voltage for the pump stays away (connector, wire, control) and mend the"
              + " connection",
          35,
          0.6,
          Caution.UNPLUG,
          HydraulicCautions.LIVE_PUMP);

  private static final Work RENEW_CONTROL =
      Work.withPart(
          "renew-control",
          "renew the control that switches the pump",
          45,
          0.9,
          Caution.UNPLUG,
          HydraulicCautions.LIVE_PUMP);

  /**
   * Something is wound round or stuck between the vanes: at worst 95 % of the passages are closed.
   * How much head that costs depends on where it sits, and shows late: at worst anything up to all
   * of it, where it is wound round every vane, one as likely as the other, which is half on the
   * mean.
   *
   * @param prior the prior
   * @param louder how much louder at worst
   * @param stiffer how much stiffer at worst
   * @return the row, without a cure
   */
  public FaultRow passagesBlocked(double prior, double louder, double stiffer) {
    return FaultRow.fault("passages-blocked", "vane passages of the " + pump + " blocked", prior)
        .changes(
            PumpFigure.OPEN_PASSAGES.times(0.05),
            PumpFigure.HEAD.times(square(1, 1 - MOST_HEAD_LOST / 2)),
            PumpFigure.HEAD_OPEN.plus(square(0, MOST_HEAD_LOST / Math.sqrt(12))),
            PumpFigure.LOUDNESS.plus(louder),
            PumpFigure.DEBRIS.plus(0.85),
            PumpFigure.STIFFNESS.plus(stiffer))
        .makes(Symptoms.LOUD, chance(0.05, 0.4, 0.7));
  }

  /**
   * The impeller slips on its shaft, or its vanes are worn away: at worst four fifths of the speed
   * slip away.
   *
   * @param prior the prior
   * @param louder how much louder at worst
   * @return the row, without a cure
   */
  public FaultRow impellerSlips(double prior, double louder) {
    return FaultRow.fault(
            "impeller-slips", "impeller of the " + pump + " worn or slipping on its shaft", prior)
        .wears(Wear.IMPELLER)
        .changes(PumpFigure.SLIP.plus(0.8), PumpFigure.LOUDNESS.plus(louder))
        .makes(Symptoms.LOUD, chance(0.02, 0.2, 0.4));
  }

  /**
   * Water runs back inside the pump past a worn clearance or cover: at worst one and a half times
   * the rated flow at the rated head.
   *
   * @param prior the prior
   * @return the row, without a cure
   */
  public FaultRow internalLeak(double prior) {
    return FaultRow.fault(
            "internal-leak", "water runs back inside the " + pump + " (clearance or cover)", prior)
        .wears(Wear.CLEARANCE)
        .changes(PumpFigure.LEAK.plus(1.5));
  }

  /**
   * A bearing or the shaft seal drags.
   *
   * @param prior the prior
   * @param torque the drag at worst as a ratio of the rated torque
   * @param louder how much louder at worst
   * @param stiffer how much stiffer at worst
   * @return the row, without a cure
   */
  public FaultRow drag(double prior, double torque, double louder, double stiffer) {
    return FaultRow.fault("drag", "bearing or seal of the " + pump + " drags", prior)
        .wears(Wear.BEARING)
        .changes(
            PumpFigure.DRAG.plus(torque),
            PumpFigure.LOUDNESS.plus(louder),
            PumpFigure.STIFFNESS.plus(stiffer))
        .makes(Symptoms.LOUD, chance(0.05, 0.5, 0.8))
        .makes(Symptoms.LEAKS, chance(0.02, 0.15, 0.4))
        .makes(Symptoms.TRIPS_BREAKER, chance(0.01, 0.05, 0.2));
  }

  /**
   * Something holds the rotor or the impeller fast. It is there or not, whatever its severity.
   *
   * @param how what is said of it behind the name of the pump, for a person
   * @param prior the prior
   * @return the row, without a cure
   */
  public FaultRow jammed(String how, double prior) {
    return FaultRow.fault("jammed", pump + " jammed" + how, prior)
        .changes(
            PumpFigure.DRAG.atLeast(LOCKED),
            PumpFigure.DEBRIS.atLeast(0.6),
            PumpFigure.STIFFNESS.becomes(0.95))
        .makes(Symptoms.HUMS_ONLY, 0.3)
        .makes(Symptoms.LOUD, 0.35);
  }

  /**
   * The winding or its thermal protector is open. It is there or not, whatever its severity.
   *
   * @param winding what the winding is called, for a person
   * @param prior the prior
   * @return the row, without a cure
   */
  public FaultRow windingOpen(String winding, double prior) {
    return FaultRow.fault(
            "winding-open", winding + " of the " + pump + " open, or its protector", prior)
        .wears(Wear.WINDING)
        .changes(PumpFigure.OPEN_WINDING.becomes(1));
  }

  /**
   * The pump gets no voltage. It is there or not, whatever its severity.
   *
   * @param prior the prior
   * @return the row with its cures
   */
  public FaultRow noVoltage(double prior) {
    return FaultRow.fault(
            "no-voltage", "no voltage at the " + pump + " (connector, wire, control)", prior)
        .changes(PumpFigure.NO_VOLTAGE.becomes(1))
        .curedBy(MEND_WIRE, RENEW_CONTROL);
  }
}
