package kelter.core.workshop.kind;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;

/**
 * A model whose faults have other chances or symptoms than those it was made with: the shares of a
 * kind of machine, or what is left of them after some work.
 *
 * @param model the model
 * @param faults its faults, in their order
 */
public record GivenFaults(FaultModel model, List<Fault> faults) implements FaultModel {

  /** Copies the faults. */
  public GivenFaults {
    faults = List.copyOf(faults);
  }

  @Override
  public String id() {
    return model.id();
  }

  @Override
  public List<Question> questions() {
    return model.questions();
  }

  @Override
  public List<SharedQuantity> shared() {
    return model.shared();
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return model.mayMeet(one, other);
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    return model.forecaster(questions);
  }
}
