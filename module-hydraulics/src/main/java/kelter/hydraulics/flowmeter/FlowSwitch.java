package kelter.hydraulics.flowmeter;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.check.Limits;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.onefault.OneFault;
import kelter.hydraulics.onefault.Sign;
import kelter.hydraulics.part.FigureRule;
import kelter.hydraulics.part.WaterSide;

/**
 * The switch that lets an instantaneous heater heat once enough water runs. Figures and chances are
 * from memory, minutes judgement: common practice, no source.
 */
public final class FlowSwitch {

  private static final double L_PER_MIN = 1e-3 / 60; // m3/s

  private FlowSwitch() {}

  /**
   * The switch; one that is stuck wants ever more flow, at its worst more than any tap gives.
   *
   * @return the part
   */
  public static OneFault part() {
    Characteristic rated =
        new Characteristic("start-flow", "flow rate at which it closes", QuantityKind.FLOW)
            .within(new Span(0.1 * L_PER_MIN, 30 * L_PER_MIN));
    Observable start =
        Observable.named("start-flow", "flow rate at which it closes")
            .quantity(QuantityKind.FLOW, 0, 30 * L_PER_MIN)
            .how(
                "Open the tap slowly until the heater starts, then time a jug; never starts: 30 L/min.")
            .by(Procedure.running(5, new Accuracy(0.05, 0.1 * L_PER_MIN), Caution.HOT_WATER));
    Observable piston =
        Observable.named("piston", "how its piston or flap moves by hand")
            .graded("easily", "stiff", "not at all")
            .how("Take it out and push the piston with a stick; it must spring back.")
            .by(WaterSide.behindCovers(6));
    Observable open =
        Observable.named("stays-open", "its contact stays open with the piston pushed home")
            .how("Wires off, ohmmeter on its contact, push the piston home with a stick.")
            .by(WaterSide.behindCovers(6));
    return OneFault.of(
            "flow-switch",
            "flow switch",
            fault("stuck", "flow switch stuck or its magnet lost", 0.05)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.STAYS_COLD, chance(0.05, 0.69, 0.95))
                .makes(Symptoms.TEMPERATURE_SWINGS, chance(0.03, 0.33, 0.4))
                .curedBy(
                    Work.byHand("free-flow-switch", "descale and free it", 25, 0.7, Caution.UNPLUG),
                    Work.renewing(
                        "renew-flow-switch", "renew the flow switch", 30, 0.95, Caution.UNPLUG)),
            Sign.of(
                start,
                rated,
                2.5 * L_PER_MIN,
                early(1, 12),
                Spread.relative(0.12).atLeast(0.2 * L_PER_MIN)),
            Sign.word(piston, early(0.1, 0.85)),
            Sign.word(open, chance(0.04, 0.3, 0.6)))
        .within(
            new OneFault.Limit(
                "flow-switch-start",
                "Does the heater start early enough?",
                start,
                new FigureRule(
                    "flow rate at which the heater starts against its figure",
                    Source.commonPractice("at most 1.4 times the start flow of the heater"),
                    rated,
                    Limits.atMost(1.4))));
  }
}
