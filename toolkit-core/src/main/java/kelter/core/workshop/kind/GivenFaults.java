package kelter.core.workshop.kind;

import java.util.List;
import kelter.core.diagnosis.ChangedModel;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;

/**
 * A model whose faults have other chances or symptoms than those it was made with: the shares of a
 * kind of machine, or what is left of them after some work.
 *
 * @param model the model
 * @param faults its faults, in their order
 */
public record GivenFaults(FaultModel model, List<Fault> faults) implements ChangedModel {

  /** Copies the faults. */
  public GivenFaults {
    faults = List.copyOf(faults);
  }
}
