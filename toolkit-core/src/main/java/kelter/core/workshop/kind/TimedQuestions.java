package kelter.core.workshop.kind;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;

/**
 * A model whose readings take other times than those it was made with.
 *
 * @param model the model
 * @param questions its questions, in their order
 */
record TimedQuestions(FaultModel model, List<Question> questions) implements FaultModel {

  /** Copies the questions. */
  TimedQuestions {
    questions = List.copyOf(questions);
  }

  @Override
  public String id() {
    return model.id();
  }

  @Override
  public List<Fault> faults() {
    return model.faults();
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
  public Forecaster forecaster(List<Question> asked) {
    return model.forecaster(asked);
  }
}
