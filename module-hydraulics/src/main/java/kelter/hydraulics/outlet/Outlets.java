package kelter.hydraulics.outlet;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.onefault.OneFault;
import kelter.hydraulics.onefault.Sign;
import kelter.hydraulics.part.FigureRule;
import kelter.hydraulics.part.WaterSide;

/**
 * Parts through which water leaves. What is seen, minutes and chances of cure are judgement: common
 * practice, no source; chances of symptoms are from memory.
 */
public final class Outlets {

  private static final double L_PER_MIN = 1e-3 / 60; // m3/s

  private Outlets() {}

  /**
   * A spray arm that gets its water from elsewhere than the wash pump, such as that of the rinse.
   *
   * @return the part
   */
  public static OneFault sprayArm() {
    Observable jets =
        Observable.named("jets", "the jets of the arm")
            .graded("open", "some shut", "shut")
            .how("Take the arm out and hold it against the light.")
            .by(Procedure.inside(4, HydraulicCautions.SPLINTERS));
    Observable rattles =
        Observable.named("rattles", "something rattles in the arm when it is shaken")
            .how("Take the arm out, hold it upright, and shake it.")
            .by(Procedure.inside(3, HydraulicCautions.SPLINTERS));
    Observable still =
        Observable.named("does-not-turn", "the arm did not turn during a run")
            .asked(4, "Turn the arm to the door, run a minute, open, and look where it stands.");
    return OneFault.of(
        "spray-arm",
        "spray arm",
        fault("clogged", "spray arm clogged", 0.04)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.WEAK_FLOW, chance(0.05, 0.7, 0.95))
            .makes(Symptoms.POOR_RESULT, chance(0.05, 0.8, 0.95))
            .curedBy(
                Work.byHand(
                    "clean-arm",
                    "clean the arm and its jets",
                    12,
                    0.95,
                    HydraulicCautions.SPLINTERS)),
        Sign.word(jets, early(0.1, 0.95)),
        Sign.word(still, chance(0.06, 0.6, 0.9)),
        Sign.word(rattles, chance(0.05, 0.35, 0.5)));
  }

  /**
   * The diverter that sends the water to one spray arm after the other.
   *
   * @return the part
   */
  public static OneFault diverter() {
    Observable oneArm =
        Observable.named("one-arm-only", "only one of the arms gets water")
            .how("Turn all arms to the door, run ten minutes, open, and look which have moved.")
            .by(WaterSide.running(12));
    Observable hangs =
        Observable.named("turns", "how its disc turns by hand")
            .graded("easily", "stiff", "not at all")
            .how("Take the lower arm or the strainer out and turn the disc.")
            .by(WaterSide.opened(8));
    return OneFault.of(
        "diverter",
        "diverter",
        fault("stuck", "diverter of the spray arms stuck", 0.012)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.POOR_RESULT, chance(0.1, 0.92, 0.97))
            .makes(Meaning.MOTOR.symptom(), 0, 0.2)
            .curedBy(
                Work.byHand("free-diverter", "clean and free the disc", 30, 0.6, Caution.UNPLUG),
                Work.renewing("renew-diverter", "renew the diverter", 45, 0.95, Caution.UNPLUG)),
        Sign.word(oneArm, chance(0.05, 0.85, 0.95)),
        Sign.word(hangs, early(0.1, 0.9)));
  }

  /**
   * The drawer through which the water takes the detergent along.
   *
   * @return the part
   */
  public static OneFault dispenserDrawer() {
    Observable crust =
        Observable.named("crust", "crust in the drawer, its siphon and the jets above it")
            .graded("clean", "some", "blocked")
            .asked(2, "Pull the drawer out. Look at its siphon and up at the jets with a lamp.");
    Observable runsOver =
        Observable.named("runs-over", "water comes out at the drawer while it fills")
            .how("Watch the front of the drawer while the machine fills.")
            .by(WaterSide.running(4));
    return OneFault.of(
        "dispenser-drawer",
        "dispenser drawer",
        fault("blocked", "dispenser drawer blocked, water runs over", 0.01)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.LEAKS, chance(0.1, 0.86, 0.95))
            .makes(Symptoms.POOR_RESULT, 0, 0.15)
            .curedBy(Work.byHand("clean-drawer", "clean drawer, siphon and jets", 15, 0.95)),
        Sign.word(crust, early(0.12, 0.95)),
        Sign.word(runsOver, chance(0.04, 0.85, 0.95)));
  }

  /**
   * The sensor that looks how cloudy the water is.
   *
   * @return the part
   */
  public static OneFault turbiditySensor() {
    Observable window =
        Observable.named("window", "the window of the sensor")
            .graded("clear", "film", "coated")
            .how("Take it out of the sump and look through its window.")
            .by(WaterSide.opened(6));
    return OneFault.of(
        "turbidity-sensor",
        "turbidity sensor",
        fault("dirty", "turbidity sensor dirty", 0.006)
            .wears(Wear.DEPOSIT)
            .makes(Meaning.SENSOR.symptom(), chance(0.03, 0.5, 0.8))
            .makes(Symptoms.POOR_RESULT, chance(0.03, 0.34, 0.5))
            .curedBy(
                Work.byHand("clean-turbidity-sensor", "clean its window", 15, 0.9, Caution.UNPLUG)),
        Sign.word(window, early(0.12, 0.95)));
  }

  /**
   * The valve that lets cooling water into the condenser of a washer-dryer.
   *
   * @return the part
   */
  public static OneFault condenserValve() {
    Characteristic rated =
        new Characteristic("rated-flow", "cooling water that it lets in", QuantityKind.FLOW)
            .within(new Span(0.01 * L_PER_MIN, 10 * L_PER_MIN));
    Observable flow =
        Observable.named("flow", "cooling water while it dries")
            .quantity(QuantityKind.FLOW, 0, 10 * L_PER_MIN)
            .how("Drying, drain hose in a bucket: time what comes out in five minutes.")
            .by(Procedure.running(8, new Accuracy(0.05, 0.02 * L_PER_MIN), Caution.HOT_WATER));
    return OneFault.of(
            "condenser-valve",
            "cooling water valve",
            fault("stuck", "cooling water valve does not open", 0.02)
                .wears(Wear.DEPOSIT)
                .makes(Symptoms.STAYS_WET, chance(0.05, 0.68, 0.9))
                .makes(Symptoms.DOES_NOT_DRY, chance(0.05, 0.68, 0.9))
                .makes(Symptoms.TOO_HOT, 0, 0.4)
                .curedBy(
                    Work.byHand(
                        "clean-condenser-valve",
                        "clean its screen and jet",
                        25,
                        0.5,
                        Caution.UNPLUG),
                    Work.renewing(
                        "renew-condenser-valve", "renew the valve", 30, 0.95, Caution.UNPLUG)),
            Sign.of(
                flow,
                rated,
                0.4 * L_PER_MIN,
                line(1, 0),
                Spread.relative(0.15).atLeast(0.02 * L_PER_MIN)))
        .within(
            new OneFault.Limit(
                "condenser-flow",
                "Does the condenser get its cooling water?",
                flow,
                new FigureRule(
                    "cooling water against what the valve lets in",
                    Source.commonPractice("at least 60 % of it"),
                    rated,
                    Limits.atLeast(0.6))));
  }

  /**
   * The pump that rinses out of a break tank.
   *
   * @return the part
   */
  public static OneFault rinsePump() {
    Observable silent =
        Observable.named("silent", "it does not run when the machine should rinse")
            .how("Listen and feel at its place during the rinse.")
            .by(WaterSide.running(4));
    Observable open =
        Observable.named("winding-open", "its winding does not conduct")
            .how("Plug off the pump and measure its winding.")
            .by(WaterSide.behindCovers(5));
    return OneFault.of(
        "rinse-pump",
        "rinse pump",
        fault("dead", "rinse pump dead", 0.01)
            .wears(Wear.WINDING)
            .changes(Sign.Bad.SEVERITY.becomes(1))
            .makes(Symptoms.POOR_RESULT, 0.76)
            .makes(Symptoms.WEAK_FLOW, 0.33)
            .curedBy(
                Work.renewing(
                    "renew-rinse-pump", "renew the rinse pump", 40, 0.95, Caution.UNPLUG)),
        Sign.word(silent, line(0.05, 0.95)),
        Sign.word(open, line(0.03, 0.6)));
  }
}
