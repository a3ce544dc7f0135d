package kelter.hydraulics.outlet;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.check.Allowed;
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

/**
 * Parts around an instantaneous water heater. What is seen, minutes and chances of cure are
 * judgement: common practice, no source; chances of symptoms are from memory.
 */
public final class ShowerParts {

  private static final double L_PER_MIN = 1e-3 / 60; // m3/s

  private ShowerParts() {}

  /**
   * The shower head of an instantaneous water heater.
   *
   * @return the part
   */
  public static OneFault showerHead() {
    Characteristic usual =
        new Characteristic("usual-flow", "usual flow rate with the head on", QuantityKind.FLOW)
            .within(new Span(0.1 * L_PER_MIN, 100 * L_PER_MIN));
    Observable with =
        Observable.named("flow-with", "flow rate with the shower head on")
            .quantity(QuantityKind.FLOW, 0, 60 * L_PER_MIN)
            .how("Heater off, tap wide open: time a bucket.")
            .by(Procedure.running(3, new Accuracy(0.05, 0.1 * L_PER_MIN), Caution.HOT_WATER));
    Observable share =
        Observable.named("share", "flow rate with the shower head as a share of that without")
            .quantity(QuantityKind.PERCENT, 0, 1.2)
            .how("Heater off: time a bucket with the head on, then with hose and head off.")
            .by(Procedure.running(6, new Accuracy(0.05, 0.02), Caution.HOT_WATER));
    Observable jets =
        Observable.named("jets", "the jets of the shower head")
            .graded("open", "some shut", "shut")
            .asked(1, "Look at the jets and at the screen in the nut of the head.");
    return OneFault.of(
            "shower-head",
            "shower head",
            fault("clogged", "shower head or outlet clogged", 0.06)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.WEAK_FLOW, chance(0.05, 0.82, 0.97))
                .makes(Symptoms.TEMPERATURE_SWINGS, chance(0.05, 0.58, 0.8))
                .makes(Symptoms.TOO_HOT, 0, 0.36)
                .curedBy(
                    Work.byHand("descale-head", "descale the shower head", 15, 0.9),
                    Work.withPart("renew-head", "renew the shower head", 8, 0.97)),
            Sign.word(jets, early(0.12, 0.95)),
            Sign.of(
                with,
                usual,
                8 * L_PER_MIN,
                early(1, 0.1),
                Spread.relative(0.2).atLeast(0.3 * L_PER_MIN)),
            Sign.value(share, early(0.88, 0.08), Spread.constant(0.06)))
        .within(
            new OneFault.Limit(
                "shower-head-share",
                "Does the shower head let the water through?",
                share,
                Allowed.of(
                    "flow rate with the shower head against that without",
                    Source.commonPractice("at least 60 %"),
                    Limits.atLeast(0.6))));
  }

  /**
   * The cold water of an instantaneous heater: too cold, or too much for its power. What is needed
   * follows from the balance of {@link kelter.hydraulics.hotwater.FlowHeater}.
   *
   * @return the part
   */
  public static OneFault coldFeed() {
    Observable needed =
        Observable.named("needed", "power that flow and rise need, as a share of the rated power")
            .quantity(QuantityKind.PERCENT, 0, 5)
            .how(
                "Time a bucket and measure the cold water. Needed kW = L/min times (set minus cold) in K /"
                    + " 14.3; divide by the kW of the nameplate.")
            .by(Procedure.running(8, new Accuracy(0.06, 0.02), Caution.HOT_WATER));
    return OneFault.of(
            "cold-feed",
            "cold water feed",
            fault("too-cold", "feed too cold or unit too small for the flow", 0.02)
                .makes(Symptoms.HEATS_SLOWLY, chance(0.1, 0.87, 0.95))
                .curedBy(Work.byHand("throttle", "fit a flow limiter or set less flow", 15, 0.85)),
            Sign.value(needed, early(0.8, 1.9), Spread.relative(0.12)))
        .within(
            new OneFault.Limit(
                "feed-needs",
                "Is the heater large enough for this flow and cold water?",
                needed,
                Allowed.of(
                    "power that flow and rise need against the rated power",
                    Source.fromMemory("heat balance: at most the rated power"),
                    Limits.atMost(1))));
  }
}
