package kelter.core.diagnosis;

import java.util.List;

/**
 * What can be wrong with a group of components of one appliance, and how it would show. Modules
 * make theirs with {@link kelter.core.diagnosis.model.PartModel} and do not implement this.
 *
 * <p>The groups of two models must not share an observable of a component. Within a model the
 * forecasts should come from one piece of physics, so that the readings constrain each other.
 */
public interface FaultModel {

  /**
   * Its id within the appliance.
   *
   * @return lower-case letters, digits and hyphens
   */
  String id();

  /**
   * What can be wrong.
   *
   * @return one fault or more, always in the same order
   */
  List<Fault> faults();

  /**
   * What it can forecast, under the conditions under which a technician would measure it.
   *
   * @return one question or more, always in the same order; a module has no model without
   */
  List<Question> questions();

  /**
   * What nobody has measured and moves several forecasts together.
   *
   * @return none, or a few, always in the same order
   */
  default List<SharedQuantity> shared() {
    return List.of();
  }

  /**
   * Whether two faults can be there at the same time. A valve that is stuck open is not stuck shut.
   *
   * @param one the place of a fault among {@link #faults}
   * @param other the place of another
   * @return whether a state with both can be; the same for both orders
   */
  default boolean mayMeet(int one, int other) {
    return true;
  }

  /**
   * Makes ready to answer questions, which may differ from {@link #questions} in their conditions
   * and in nothing else.
   *
   * @param questions the questions
   * @return a forecaster for them
   */
  Forecaster forecaster(List<Question> questions);
}
