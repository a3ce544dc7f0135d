package kelter.electrical.heating;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.component.CordWords;
import kelter.electrical.component.Electrical;
import kelter.electrical.insulation.EarthLeak;

/**
 * The insulation of a whole appliance at its plug where that belongs to no heating circuit. So
 * every insulation that can be read has a fault that explains a low one. The plug is looked at
 * there too.
 */
public final class Leaking implements Part {

  /**
   * A part from here on is warm, K: 40 °C, as in the lock-out table; common practice, no source.
   */
  private static final double WARM = 313.15;

  /** What is read by conditions: a part that tells no temperature is cold. */
  static final Circumstances<Insulation> AS_WARM =
      conditions ->
          conditions.si(Electrical.TEMPERATURE, 0) >= WARM
              ? state -> new Insulation(state, CircuitFigure.LEAK)
              : state -> new Insulation(state, CircuitFigure.COLD_LEAK);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(CordWords.CORD);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component cord) {
    Optional<HeatingGroup> first = HeatingGroup.first(appliance);
    boolean inCircuit = first.isPresent() && first.get().isMeasuredAt(cord);
    return inCircuit ? Optional.empty() : Optional.of(model(cord));
  }

  private static FaultModel model(Component cord) {
    return PartModel.of(cord.id() + "-insulation", Electrical.PRIORS, CircuitFigure.ALL)
        .on(cord, CordWords.CORD)
        .faults(HeaterFaults.otherLeak(), HeaterFaults.hotPlug())
        .looks(CordWords.PLUG_BURNS, CircuitFigure.PLUG_BURNS, Spread.constant(0.15))
        .looks(CordWords.PLUG_HOT, CircuitFigure.PLUG_HOT)
        .under(AS_WARM)
        .observe(CordWords.APPLIANCE_INSULATION, Insulation::ofAppliance, EarthLeak.SPREAD)
        .build();
  }

  /**
   * The insulation of heater and appliance.
   *
   * @param state the state
   * @param leak what the heater leaks, as warm as it is
   */
  record Insulation(State state, Figure leak) {

    /** Insulation resistance of the heater, Ohm. */
    double ofHeater() {
      return EarthLeak.insulation(state.of(leak));
    }

    /** Insulation resistance of the whole appliance, Ohm. */
    double ofAppliance() {
      return EarthLeak.insulation(state.of(leak) + state.of(CircuitFigure.OTHER_LEAK));
    }
  }
}
