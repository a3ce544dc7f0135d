package kelter.hydraulics.onefault;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.check.Limits;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.FigureRule;

/**
 * Relief valve and expansion of a store. Water that warms grows; where it has nowhere to go the
 * pressure climbs from that of the supply to that of the relief valve, which then drips while the
 * store heats. A valve that does not seat drips at any pressure. Spreads, minutes and chances of
 * cure are common practice, no source; chances of symptoms are from memory.
 */
public final class SafetyGroup {

  private static final double BAR = 1e5; // Pa
  private static final double RELIEF = 7 * BAR; // Pa; from memory
  private static final double SUPPLY = 3.0 / 7; // ratio of that; from memory

  private SafetyGroup() {}

  /**
   * The relief valve.
   *
   * @return the part
   */
  public static OneFault reliefValve() {
    Observable drips =
        Observable.named("drips-below", "it drips although the pressure is below its stamp")
            .how(
                "Heating off for an hour, or at its usual pressure: read the gauge, watch its outlet.")
            .by(Procedure.running(5, Procedure.BY_EYE, HydraulicCautions.NEVER_PLUG_RELIEF));
    return OneFault.of(
        "relief-valve",
        "relief valve",
        fault("leaks", "relief valve does not seat", 0.03)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.RELIEF_DRIPS, chance(0.1, 0.91, 0.97))
            .makes(Symptoms.LEAKS, 0, 0.5)
            .curedBy(
                Work.renewing(
                    "renew-relief-valve",
                    "renew the relief valve",
                    35,
                    0.95,
                    HydraulicCautions.NEVER_PLUG_RELIEF)),
        Sign.word(drips, chance(0.04, 0.92, 0.97)));
  }

  /**
   * The vessel or the free way back to the main.
   *
   * @return the part
   */
  public static OneFault expansion() {
    Characteristic relief =
        new Characteristic(
                "relief-pressure",
                "pressure stamped on the relief valve",
                QuantityKind.GAUGE_PRESSURE)
            .within(new Span(0.5 * BAR, 50 * BAR));
    Observable pressure =
        Observable.named("hot-pressure", "pressure of the store at the end of heating")
            .quantity(QuantityKind.GAUGE_PRESSURE, 0, 20 * BAR)
            .how("Draw nothing while it heats. Read the gauge in the cold feed as heating ends.")
            .by(
                Procedure.running(
                    10, new Accuracy(0.025, 0.2 * BAR), HydraulicCautions.NEVER_PLUG_RELIEF));
    Observable noCushion =
        Observable.named("no-cushion", "the vessel has no air, or a valve shuts the way back")
            .asked(
                4, "Knock on the vessel, press its air valve, follow the cold feed to the main.");
    Observable onlyHot =
        Observable.named("drips-only-hot", "the relief valve drips only while the store heats")
            .asked(
                2, "Ask, or look at its outlet while it heats and an hour after it has stopped.");
    return OneFault.of(
            "expansion",
            "expansion",
            fault("shut-in", "water that expands has nowhere to go", 0.03)
                .makes(Symptoms.RELIEF_DRIPS, chance(0.1, 0.89, 0.97))
                .makes(Symptoms.LEAKS, 0, 0.5)
                .curedBy(
                    Work.byHand(
                        "open-expansion",
                        "charge the vessel or open the way back",
                        25,
                        0.8,
                        HydraulicCautions.NEVER_PLUG_RELIEF)),
            Sign.word(onlyHot, chance(0.04, 0.9, 0.95)),
            Sign.word(noCushion, chance(0.06, 0.85, 0.93)),
            Sign.of(
                pressure,
                relief,
                RELIEF,
                early(SUPPLY, 1),
                Spread.relative(0.12).atLeast(0.3 * BAR)))
        .within(
            new OneFault.Limit(
                "store-pressure",
                "Does the growing water find a way?",
                pressure,
                new FigureRule(
                    "pressure at the end of heating against the relief valve",
                    Source.commonPractice("at most 85 % of what the relief valve is stamped with"),
                    relief,
                    Limits.atMost(0.85))));
  }
}
