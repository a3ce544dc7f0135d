package kelter.hydraulics.onefault;

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
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.FigureRule;

/**
 * Parts of steam irons. Minutes, chances of cure and what is seen are judgement: common practice,
 * no source; chances of symptoms are from memory.
 */
public final class IronParts {

  private static final double ML_PER_MIN = 1e-6 / 60; // m3/s
  private static final double STEAM_RATE = 25 * ML_PER_MIN; // m3/s; from memory

  private IronParts() {}

  /**
   * The steam path of the sole.
   *
   * @return the part
   */
  public static OneFault steamPath() {
    Characteristic rated =
        new Characteristic(
                "steam-rate", "water that is steamed off, 1 mL for each gram", QuantityKind.FLOW)
            .within(new Span(ML_PER_MIN, 1000 * ML_PER_MIN));
    Observable rate =
        Observable.named("steam-rate", "water that is steamed off, 1 mL for each gram")
            .quantity(QuantityKind.FLOW, 0, 1000 * ML_PER_MIN)
            .how("Hot and filled: weigh it, steam for two minutes at the most, weigh it again.")
            .by(Procedure.running(8, new Accuracy(0.05, ML_PER_MIN), HydraulicCautions.HOT_SOLE));
    Observable holes =
        Observable.named("holes", "the steam holes of the sole")
            .graded("open", "specks", "scaled shut")
            .asked(2, "Plug out, sole cold: look into each hole with a lamp.");
    return OneFault.of(
            "steam-path",
            "steam path",
            fault("scaled", "scale in the steam path", 0.1)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.POOR_RESULT, chance(0.1, 0.89, 0.97))
                .makes(Symptoms.WEAK_STEAM, chance(0.1, 0.8, 0.97))
                .makes(Symptoms.LEAKS, chance(0.05, 0.48, 0.7))
                .makes(Symptoms.DISCOLOURED_WATER, 0, 0.6)
                .curedBy(
                    Work.byHand(
                        "descale-sole",
                        "descale the steam path",
                        30,
                        0.75,
                        HydraulicCautions.HOT_SOLE)),
            Sign.word(holes, early(0.12, 0.95)),
            Sign.of(
                rate, rated, STEAM_RATE, early(1, 0.08), Spread.relative(0.15).atLeast(ML_PER_MIN)))
        .within(
            new OneFault.Limit(
                "iron-steam-rate",
                "Does the iron give enough steam?",
                rate,
                new FigureRule(
                    "steam against what the iron gave when new",
                    Source.commonPractice("at least 60 % of the steam rate of the iron"),
                    rated,
                    Limits.atLeast(0.6))));
  }

  /**
   * The valve that lets water drip onto the sole.
   *
   * @return the part
   */
  public static OneFault dripValve() {
    Observable drips =
        Observable.named("drips-shut", "it drips with the steam switched off")
            .how("Full, hot, steam off: hold it flat over a cloth for a minute.")
            .by(Procedure.running(4, Procedure.BY_EYE, HydraulicCautions.HOT_SOLE));
    Observable seat =
        Observable.named("needle", "needle and seat of the valve")
            .graded("clean", "scaled", "worn")
            .how("Pull the needle of the steam control out and look at it and at its seat.")
            .by(Procedure.inside(5));
    return OneFault.of(
        "drip-valve",
        "drip valve",
        fault("leaks", "drip valve scaled or worn", 0.06)
            .wears(Wear.RUBBER)
            .makes(Symptoms.LEAKS, chance(0.1, 0.9, 0.97))
            .makes(Symptoms.POOR_RESULT, chance(0.05, 0.53, 0.8))
            .curedBy(
                Work.byHand("clean-drip-valve", "clean needle and seat", 15, 0.6, Caution.UNPLUG),
                Work.renewing("renew-drip-valve", "renew the valve", 25, 0.9, Caution.UNPLUG)),
        Sign.word(drips, chance(0.05, 0.9, 0.97)),
        Sign.word(seat, early(0.12, 0.9)));
  }
}
