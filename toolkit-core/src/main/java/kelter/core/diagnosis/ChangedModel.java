package kelter.core.diagnosis;

import java.util.List;

/** Another fault model but for what it says itself. */
public interface ChangedModel extends FaultModel {

  /**
   * The model that answers whatever this one does not.
   *
   * @return the other model
   */
  FaultModel model();

  @Override
  default String id() {
    return model().id();
  }

  @Override
  default List<Fault> faults() {
    return model().faults();
  }

  @Override
  default List<Question> questions() {
    return model().questions();
  }

  @Override
  default List<SharedQuantity> shared() {
    return model().shared();
  }

  @Override
  default boolean mayMeet(int one, int other) {
    return model().mayMeet(one, other);
  }

  @Override
  default Forecaster forecaster(List<Question> questions) {
    return model().forecaster(questions);
  }
}
