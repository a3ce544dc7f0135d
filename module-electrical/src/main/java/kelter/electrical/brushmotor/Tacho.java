package kelter.electrical.brushmotor;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.Electrical;
import kelter.electrical.copper.CoilWords;
import kelter.electrical.copper.CopperCoil;

/** The tacho generator that tells the control how fast a motor turns. Spreads are from memory. */
public final class Tacho implements Part {

  static final Observable COIL_RESISTANCE =
      CoilWords.resistance(
          "resistance of its coil",
          "Pull the motor plug and measure between the two wires of the tacho. Move the wires.",
          4);

  static final Observable MAGNET =
      Observable.named("magnet-loose", "its magnet turns on the shaft, is cracked or gone")
          .how("Take the cap off the end of the motor. Hold the shaft and try to turn the magnet.")
          .by(Electrical.inside(6));

  /** The tacho generator of a motor. */
  public static final ComponentKind TACHO =
      new ComponentKind(
          "tacho",
          "tacho generator",
          List.of(COIL_RESISTANCE, MAGNET),
          List.of(CoilWords.COLD),
          List.of());

  /** Taken where a job does not state it, Ohm. */
  private static final double USUAL = 180;

  @Override
  public List<ComponentKind> kinds() {
    return List.of(TACHO);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("tacho-coil", "Is the coil of the tacho whole?")
            .on(
                TACHO,
                COIL_RESISTANCE,
                Allowed.of(
                    "resistance of the tacho",
                    Source.commonPractice("tachos of appliance motors have 10 ohm to 2 kohm"),
                    new Limits(10, 2e3))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component tacho) {
    boolean stated = tacho.si(CoilWords.COLD) > 0;
    return Optional.of(
        PartModel.of(tacho, TACHO, Electrical.PRIORS, BrushFigure.ALL)
            .faults(BrushFaults.TACHO_OPEN, BrushFaults.MAGNET_LOOSE)
            .looks(MAGNET, BrushFigure.MAGNET)
            .under(new CopperCoil(tacho.si(CoilWords.COLD, USUAL), BrushFigure.TACHO))
            .observe(COIL_RESISTANCE, Double::doubleValue, Spread.constant(stated ? 0.08 : 0.9))
            .build());
  }
}
