package kelter.electrical.supplycord;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.SupplyKinds;

/**
 * The protective conductor of a supply cord, from the plug to touchable metal. Chances and
 * resistances are from memory.
 */
public final class SupplyCord implements Part {

  /** Protective conductors in one state, as a natural logarithm. */
  private static final Spread<Object> OF_CONDUCTORS = Spread.constant(0.6);

  /** Made once by the module. */
  public SupplyCord() {}

  /** What faults change. */
  private enum Conductor implements Figure {
    /** Resistance of the protective conductor of an ordinary cord with its contacts, Ohm. */
    RESISTANCE(0.1),
    /** Chance of a tingle. It needs a small leak beside: filters have one. */
    TINGLES(0.03);

    private final double inOrder;

    Conductor(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  /** Made when a machine has one. */
  private static final class Faults {

    private static final Work RENEW =
        Work.renewing(
            "renew-cord",
            "renew the supply cord, or make the earth connection good",
            35,
            0.95,
            Caution.UNPLUG,
            new Caution(
                Signal.DANGER,
                "Electric shock. Measure the protective conductor again, bending the cord, before"
                    + " the machine is plugged in."));

    static final FaultRow POOR =
        fault("earth-poor", "protective conductor poor", 0.01)
            .wears(Wear.WIRE)
            .changes(
                Conductor.RESISTANCE.becomes(power(0.3, 70)),
                Conductor.TINGLES.becomes(line(0.03, 0.18)))
            .curedBy(RENEW);

    static final FaultRow OPEN =
        fault("earth-open", "protective conductor open", 0.02)
            .wears(Wear.WIRE)
            .apartFrom("earth-poor")
            .changes(
                Conductor.RESISTANCE.becomes(Electrical.RESISTANCE.high()),
                Conductor.TINGLES.becomes(0.5))
            .curedBy(RENEW);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SupplyKinds.CORD);
  }

  @Override
  public List<Check> checks() {
    return List.of(new WarningSign());
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component cord) {
    return Optional.of(
        PartModel.of(
                cord.id(),
                Source.fromMemory("estimate of how often it is found"),
                Conductor.values())
            .on(cord, SupplyKinds.CORD)
            .faults(Faults.POOR, Faults.OPEN)
            .looks(
                SupplyKinds.PROTECTIVE_CONDUCTOR,
                state -> state.of(Conductor.RESISTANCE),
                OF_CONDUCTORS)
            .looks(SupplyKinds.TINGLE, Conductor.TINGLES)
            .build());
  }
}
