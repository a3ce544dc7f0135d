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
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;

/**
 * Parts of steam boilers. Figures, minutes and chances of cure are judgement: common practice, no
 * source; chances of symptoms are from memory.
 */
public final class BoilerParts {

  private static final double BAR = 1e5; // Pa
  private static final double SET_PRESSURE = 1.2 * BAR; // Pa; from memory
  private static final Accuracy GAUGE = new Accuracy(0.025, 0.04 * BAR);
  private static final Accuracy OHMMETER = new Accuracy(0.01, 0.2);

  private BoilerParts() {}

  /**
   * The switch that holds the pressure. It opens at its set pressure and closes 0.15 bar below; a
   * worn one closes far too late and opens late, so that the steam swings between hot and weak.
   *
   * @return the part
   */
  public static OneFault pressureSwitch() {
    Characteristic set =
        new Characteristic(
                "set-pressure", "pressure at which it opens", QuantityKind.GAUGE_PRESSURE)
            .within(new Span(0.1 * BAR, 20 * BAR));
    Observable opens =
        Observable.named("opens-at", "pressure at which it opens")
            .quantity(QuantityKind.GAUGE_PRESSURE, 0, 20 * BAR)
            .how("Machine closed and warming: read the gauge of the boiler when heating stops.")
            .by(Procedure.running(8, GAUGE, HydraulicCautions.BOILER_STEAM));
    Observable closes =
        Observable.named("closes-at", "pressure at which it closes again")
            .quantity(QuantityKind.GAUGE_PRESSURE, 0, 20 * BAR)
            .how("Let steam off at the wand and read the gauge when heating starts again.")
            .by(Procedure.running(6, GAUGE, HydraulicCautions.BOILER_STEAM));
    return OneFault.of(
            "pressure-switch",
            "pressure switch",
            fault("drifts", "pressure switch acts at the wrong pressure", 0.02)
                .wears(Wear.RUBBER)
                .makes(Symptoms.TEMPERATURE_SWINGS, chance(0.03, 0.57, 0.9))
                .makes(Symptoms.WEAK_STEAM, chance(0.02, 0.42, 0.8))
                .makes(Symptoms.TOO_HOT, chance(0.02, 0.34, 0.7))
                .makes(Symptoms.POOR_RESULT, 0, 0.5)
                .curedBy(
                    Work.byHand(
                        "set-pressure-switch",
                        "set the pressure switch",
                        20,
                        0.5,
                        HydraulicCautions.BOILER_STEAM),
                    Work.renewing(
                        "renew-pressure-switch",
                        "renew the pressure switch",
                        35,
                        0.95,
                        Caution.UNPLUG,
                        HydraulicCautions.BOILER_STEAM)),
            Sign.of(opens, set, SET_PRESSURE, line(1, 1.35), Spread.constant(0.08 * BAR)),
            Sign.of(closes, set, SET_PRESSURE, line(0.875, 0.2), Spread.constant(0.08 * BAR)))
        .within(
            new OneFault.Limit(
                "boiler-pressure",
                "Does the boiler stop at the right pressure?",
                opens,
                Allowed.of(
                    "pressure at which heating stops",
                    Source.commonPractice(
                        "0.8 bar to 1.5 bar, which is 117 °C to 127 °C by IAPWS R7-97"),
                    new Limits(0.8 * BAR, 1.5 * BAR))),
            new OneFault.Limit(
                "boiler-pressure-again",
                "Does the boiler heat again in time?",
                closes,
                Allowed.of(
                    "pressure at which heating starts again",
                    Source.commonPractice("0.7 bar or more"),
                    Limits.atLeast(0.7 * BAR))));
  }

  /**
   * The probe that feels water by its conductivity. Scale on it keeps the water from it.
   *
   * @return the part
   */
  public static OneFault levelProbe() {
    Span span = new Span(10, 1e8);
    Observable wet =
        Observable.named("in-water", "resistance from probe to body in water")
            .logarithmic(QuantityKind.RESISTANCE, span)
            .provingFrom(1e6)
            .how("Boiler full. Take the wire off the probe, measure to the body at once.")
            .by(Procedure.dead(5, OHMMETER, HydraulicCautions.BOILER_STEAM));
    Observable dry =
        Observable.named("dry", "resistance from probe to body out of water")
            .logarithmic(QuantityKind.RESISTANCE, span)
            .how("Take the wire off, lift the probe out, dry its seal, measure to its thread.")
            .by(Procedure.dead(10, OHMMETER, HydraulicCautions.BOILER_STEAM));
    Observable scale =
        Observable.named("scale", "scale on the probe")
            .graded("clean", "film", "crust")
            .how("Let the boiler cool and vent it. Unscrew the probe and look at it.")
            .by(Procedure.inside(10, HydraulicCautions.BOILER_STEAM));
    return OneFault.of(
            "level-probe",
            "level probe",
            fault("scaled", "level probe scaled", 0.03)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.FILLS_WITHOUT_END, chance(0.03, 0.45, 0.9))
                .makes(Symptoms.WEAK_STEAM, chance(0.03, 0.4, 0.8))
                .makes(Symptoms.DOES_NOT_FILL, 0, 0.5)
                .makes(Symptoms.LEAKS, 0, 0.4)
                .makes(Meaning.FILL.symptom(), 0, 0.5)
                .curedBy(
                    Work.byHand(
                        "clean-level-probe",
                        "descale the probe",
                        20,
                        0.9,
                        Caution.UNPLUG,
                        HydraulicCautions.BOILER_STEAM)),
            Sign.value(wet, power(1e4, 1e4), Spread.constant(0.6)),
            Sign.word(scale, early(0.1, 0.95)),
            Sign.value(dry, power(1e7, 1), Spread.constant(1)))
        .within(
            new OneFault.Limit(
                "level-probe-in-water",
                "Does the level probe feel the water?",
                wet,
                Allowed.of(
                    "resistance from probe to body in water",
                    Source.fromMemory("2 kohm to 50 kohm in tap water"),
                    new Limits(500, 5e4))),
            new OneFault.Limit(
                "level-probe-dry",
                "Is the level probe open when dry?",
                dry,
                Allowed.of(
                    "resistance from probe to body out of water",
                    Source.fromMemory("more than 500 kohm"),
                    Limits.atLeast(5e5))));
  }

  /**
   * The valve that lets air out of a boiler as it warms and into it as it cools.
   *
   * @return the part
   */
  public static OneFault vacuumBreaker() {
    Observable hisses =
        Observable.named("hisses", "steam or water comes from it once the pressure is up")
            .how("Closed machine at pressure: listen at it and hold a cold spoon over it.")
            .by(Procedure.running(4, Procedure.BY_EYE, HydraulicCautions.BOILER_STEAM));
    Observable hangs =
        Observable.named("pin-hangs", "its pin does not fall by itself when cold")
            .how("Boiler cold and vented. Push the pin up and let it go.")
            .by(WaterSide.behindCovers(4));
    return OneFault.of(
        "vacuum-breaker",
        "vacuum breaker",
        fault("stuck", "vacuum breaker stuck or leaking", 0.015)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.WEAK_STEAM, chance(0.03, 0.51, 0.85))
            .makes(Symptoms.LEAKS, chance(0.03, 0.42, 0.8))
            .curedBy(
                Work.byHand(
                    "free-vacuum-breaker",
                    "descale and free it",
                    20,
                    0.7,
                    HydraulicCautions.BOILER_STEAM),
                Work.renewing(
                    "renew-vacuum-breaker",
                    "renew the vacuum breaker",
                    20,
                    0.95,
                    HydraulicCautions.BOILER_STEAM)),
        Sign.word(hisses, chance(0.04, 0.6, 0.9)),
        Sign.word(hangs, chance(0.03, 0.75, 0.95)));
  }

  /**
   * The wand with the holes in its tip.
   *
   * @return the part
   */
  public static OneFault steamWand() {
    Observable holes =
        Observable.named("holes", "the holes of the tip")
            .graded("open", "some shut", "shut")
            .asked(2, "Wand cold. Unscrew the tip and hold it against the light.");
    Observable without =
        Observable.named("steams-without-tip", "it steams well with the tip off only")
            .how("Wand cold: tip off. Then open the valve a little into a jug.")
            .by(Procedure.running(4, Procedure.BY_EYE, HydraulicCautions.BOILER_STEAM));
    return OneFault.of(
        "steam-wand",
        "steam wand",
        fault("blocked", "steam wand blocked", 0.02)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.WEAK_STEAM, chance(0.1, 0.95, 0.98))
            .curedBy(
                Work.byHand(
                    "clear-wand",
                    "soak and clear the tip and wand",
                    12,
                    0.95,
                    HydraulicCautions.BOILER_STEAM)),
        Sign.word(holes, early(0.08, 0.95)),
        Sign.word(without, chance(0.05, 0.8, 0.92)));
  }
}
