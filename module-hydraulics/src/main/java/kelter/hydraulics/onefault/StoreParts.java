package kelter.hydraulics.onefault;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.law.Celsius;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.hotwater.MixedWater;
import kelter.hydraulics.hotwater.StirredStore;

/**
 * Parts of storage water heaters. What is read is forecast for a store of 60 °C and cold water of
 * 10 °C. Minutes and chances of cure are judgement: common practice, no source; chances of symptoms
 * are from memory.
 */
public final class StoreParts {

  private static final double HOT = Celsius.ZERO + 60; // K
  private static final double COLD = Celsius.ZERO + 10; // K
  private static final double A_FIFTH = 0.2; // ratio
  private static final double KEPT = 0.5; // K that a store in order loses by then; from memory
  private static final double ONE_STOP = 0.9; // share of hot water; from memory
  private static final double OTHER_STOP = 0.4; // share of hot water; from memory
  private static final Accuracy THERMOMETER = new Accuracy(0, 0.7);

  private StoreParts() {}

  /**
   * The tube that leads cold water to the bottom. Where it is broken off at the top, cold water
   * mixes with all the rest ({@link StirredStore}).
   *
   * @return the part
   */
  public static OneFault dipTube() {
    double mixed = HOT - StirredStore.outlet(A_FIFTH, HOT, COLD);
    Observable drop =
        Observable.named("early-drop", "fall of the outlet once a fifth has been drawn")
            .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, 0, 60)
            .how(
                "Store hot, heating off. Run the hot tap, note its steady temperature, and note it again"
                    + " once a fifth of the volume has run into a bucket.")
            .by(Procedure.running(10, THERMOMETER, HydraulicCautions.HOT_STREAM));
    Observable tube =
        Observable.named("broken", "the dip tube is short, holed or in pieces")
            .how("Take the cold connection off and pull the tube out.")
            .by(Procedure.inside(25, HydraulicCautions.STORE_SHUT_OFF));
    return OneFault.of(
            "dip-tube",
            "dip tube",
            fault("broken", "dip tube broken", 0.03)
                .wears(Wear.RUBBER)
                .makes(Symptoms.RUNS_OUT_EARLY, chance(0.1, 0.9, 0.97))
                .makes(Symptoms.DISCOLOURED_WATER, 0, 0.2)
                .curedBy(
                    Work.renewing(
                        "renew-dip-tube",
                        "renew the dip tube",
                        60,
                        0.95,
                        HydraulicCautions.STORE_SHUT_OFF)),
            Sign.value(drop, early(KEPT, mixed), Spread.constant(1)),
            Sign.word(tube, chance(0.03, 0.93, 0.97)))
        .within(
            new OneFault.Limit(
                "store-keeps-layers",
                "Does cold water stay below the hot?",
                drop,
                Allowed.of(
                    "fall of the outlet once a fifth has been drawn",
                    Source.commonPractice("at most 4 K; a store that mixes loses about 9 K"),
                    Limits.atMost(4))));
  }

  /**
   * The valve that mixes hot with cold water. In order it goes from 0.4 to 0.9 of hot water from
   * stop to stop ({@link MixedWater}); a stuck one goes nowhere.
   *
   * @return the part
   */
  public static OneFault mixingValve() {
    double range = MixedWater.of(ONE_STOP, HOT, COLD) - MixedWater.of(OTHER_STOP, HOT, COLD);
    Observable reach =
        Observable.named("range", "change of the outlet from one stop of its knob to the other")
            .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, 0, 80)
            .how("Run the outlet, turn the knob to one stop, wait a minute, read; then the other.")
            .by(Procedure.running(6, THERMOMETER, HydraulicCautions.HOT_STREAM));
    Observable stiff =
        Observable.named("stiff", "its knob does not turn, or turns without resistance")
            .asked(2, "Mark the position of the knob and turn it from stop to stop.");
    return OneFault.of(
            "mixing-valve",
            "mixing valve",
            fault("stuck", "mixing valve stuck", 0.02)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.TEMPERATURE_SWINGS, chance(0.05, 0.6, 0.8))
                .makes(Symptoms.WEAK_FLOW, 0, 0.6)
                .makes(Symptoms.STAYS_COLD, 0, 0.4)
                .makes(Symptoms.TOO_HOT, 0, 0.2)
                .curedBy(
                    Work.byHand(
                        "descale-mixing-valve",
                        "descale and free it",
                        40,
                        0.6,
                        HydraulicCautions.HOT_STREAM),
                    Work.renewing(
                        "renew-mixing-valve",
                        "renew the mixing valve",
                        45,
                        0.95,
                        HydraulicCautions.STORE_SHUT_OFF)),
            Sign.value(reach, early(range, 1), Spread.constant(3)),
            Sign.word(stiff, chance(0.04, 0.6, 0.85)))
        .within(
            new OneFault.Limit(
                "mixing-valve-range",
                "Does the mixing valve mix?",
                reach,
                Allowed.of(
                    "change of the outlet from stop to stop",
                    Source.commonPractice("at least 10 K with a store of 50 °C or more"),
                    Limits.atLeast(10))));
  }

  /**
   * The anode that is spent in place of the tank.
   *
   * @return the part
   */
  public static OneFault anode() {
    Observable current =
        Observable.named("current", "current between anode and tank")
            .logarithmic(QuantityKind.CURRENT, new Span(1e-6, 0.1))
            .how(
                "Store full, every supply locked off. Take the lead of an insulated anode off and put a"
                    + " meter on its mA range between lead and tank.")
            .by(Procedure.dead(6, new Accuracy(0.02, 2e-5)));
    Observable core =
        Observable.named("left", "what is left of its thickness")
            .quantity(QuantityKind.PERCENT, 0, 1)
            .how("Let the store cool, let the pressure off, unscrew the anode and measure it.")
            .by(Procedure.dead(20, new Accuracy(0, 0.05), HydraulicCautions.STORE_SHUT_OFF));
    return OneFault.of(
            "anode",
            "anode",
            fault("spent", "anode spent", 0.02)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.SMELLS_FOUL, chance(0.05, 0.6, 0.8))
                .makes(Symptoms.DISCOLOURED_WATER, chance(0.05, 0.5, 0.8))
                .curedBy(
                    Work.renewing(
                        "renew-anode",
                        "renew the anode",
                        40,
                        0.9,
                        HydraulicCautions.STORE_SHUT_OFF)),
            Sign.value(current, power(1e-3, 0.01), Spread.constant(0.6)),
            Sign.value(core, line(0.7, 0.03), Spread.constant(0.12)))
        .within(
            new OneFault.Limit(
                "anode-current",
                "Does the anode still protect the tank?",
                current,
                Allowed.of(
                    "current between anode and tank",
                    Source.fromMemory("0.3 mA to 5 mA"),
                    Limits.atLeast(3e-4))),
            new OneFault.Limit(
                "anode-left",
                "Is enough of the anode left?",
                core,
                Allowed.of(
                    "what is left of the thickness of the anode",
                    Source.fromMemory("it is changed below a third"),
                    Limits.atLeast(1.0 / 3))));
  }
}
