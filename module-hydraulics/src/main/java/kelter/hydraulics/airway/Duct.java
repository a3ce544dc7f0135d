package kelter.hydraulics.airway;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.AirSide;
import kelter.hydraulics.part.WaterSide;

/** The duct that takes the air out of the house, with its grille. */
public final class Duct implements Part {

  static final Characteristic USUAL_PRESSURE =
      new Characteristic(
              "usual-pressure",
              "pressure at the start of a duct in order, machine running",
              QuantityKind.PRESSURE_DIFFERENCE)
          .within(new Span(1, 1000));

  static final Observable INSIDE =
      Observable.named("inside", "how free it is inside")
          .graded("free", "partly", "blocked")
          .how("Take the duct off at the machine and look through it, and at its grille outside.")
          .by(Procedure.inside(6));

  static final Observable THIN =
      Observable.named("thin", "it is thinner than the outlet of the machine, or too long")
          .asked(
              3, "Measure bore and length, count the bends, and compare with the fitting sheet.");

  static final Observable FLOW_KEPT =
      Observable.named("flow-kept", "air with the duct on, by the air with it off")
          .quantity(QuantityKind.PERCENT, 0, 1.1)
          .how(
              "Hold a vane at the same place of the intake with the duct on and with it off. Divide the"
                  + " first reading by the second.")
          .by(Procedure.running(10, AirSide.TWO_VANE_READINGS, HydraulicCautions.TURNING_FAN));

  static final Observable BACK_PRESSURE =
      Observable.named("back-pressure", "pressure at the start of the duct")
          .quantity(QuantityKind.PRESSURE_DIFFERENCE, 0, 1000)
          .how("Read a manometer on a tap in the duct, close to the machine, while it runs.")
          .by(Procedure.running(10, AirSide.SMALL_MANOMETER, HydraulicCautions.TURNING_FAN));

  private static final ComponentKind KIND =
      new ComponentKind(
          "duct",
          "air duct",
          List.of(THIN, INSIDE, FLOW_KEPT, BACK_PRESSURE),
          List.of(AirThrough.LOSS_SHARE, USUAL_PRESSURE),
          List.of());

  private static final double MOST_PRESSURE = 150; // Pa, a running dryer, from memory

  private static final FaultRow BLOCKED =
      fault("blocked", "duct blocked", 0.06)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.LINED.plus(early(0, 0.85)), AirwayFigure.LOSS.times(power(1, 30)))
          .makes(Symptoms.WEAK_AIR, chance(0.05, 0.9, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.LOUD, chance(0.02, 0.4, 0.6))
          .curedBy(
              Work.byHand("clear-duct", "clear the duct and its grille", 30, 0.9, Caution.UNPLUG),
              Work.withPart("renew-duct", "renew the duct", 45, 0.97, Caution.UNPLUG));

  /** From one size to 100 mm in place of 150 mm, which takes 28 Pa for each 3.6 Pa. */
  private static final FaultRow TOO_THIN =
      fault("thin", "duct too thin or too long", 0.04)
          .changes(
              AirwayFigure.THIN.becomes(line(0.6, 0.97)),
              AirwayFigure.LOSS.times(line(1.5, 28 / 3.6)))
          .makes(Symptoms.WEAK_AIR, chance(0.1, 0.7, 0.9))
          .makes(Symptoms.POOR_RESULT, chance(0.1, 0.65, 0.85))
          .makes(Symptoms.LOUD, chance(0.1, 0.45, 0.7))
          .curedBy(
              Work.withPart(
                  "widen-duct", "fit a duct of the bore of the outlet", 60, 0.95, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("duct-flow", "Does the duct let enough air through?")
            .on(
                KIND,
                FLOW_KEPT,
                Allowed.of(
                    "air with the duct on by the air with it off",
                    Source.commonPractice(
                        "a duct in order leaves seven tenths of the flow or more"),
                    Limits.atLeast(0.7))),
        LimitCheck.named("duct-pressure", "Is the pressure at the start of the duct low enough?")
            .on(
                KIND,
                BACK_PRESSURE,
                Allowed.of(
                    "pressure at the start of the duct",
                    Source.fromMemory("more than 150 Pa behind a running dryer is a fault"),
                    Limits.atMost(MOST_PRESSURE))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component duct) {
    PartModel model =
        PartModel.of(duct, KIND, WaterSide.PRIORS, AirwayFigure.ALL)
            .faults(BLOCKED, TOO_THIN)
            .looks(THIN, AirwayFigure.THIN)
            .looks(INSIDE, AirwayFigure.LINED);
    double share = duct.si(AirThrough.LOSS_SHARE);
    double usual = duct.si(USUAL_PRESSURE);
    if (share > 0) {
      model
          .under(new AirThrough(share))
          .observe(
              FLOW_KEPT,
              AirThrough.Air::kept,
              Spread.relative(0.03).atLeast(0.02).andOfEffect(0.1));
    }
    if (share > 0 && usual > 0) {
      model
          .under(new AirThrough(share))
          .observe(
              BACK_PRESSURE,
              air -> usual * air.pressure(),
              Spread.relative(0.1).atLeast(3).andOfEffect(0.1));
    }
    return Optional.of(model.build());
  }
}
