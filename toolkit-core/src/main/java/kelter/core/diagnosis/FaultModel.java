package kelter.core.diagnosis;

import java.util.List;

/**
 * What can be wrong with a group of components of one appliance, and how it would show.
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
   * @return one question or more, always in the same order
   */
  List<Question> questions();

  /**
   * Makes ready to answer questions, which may differ from {@link #questions} in their conditions
   * and in nothing else.
   *
   * @param questions the questions
   * @return a forecaster for them
   */
  Forecaster forecaster(List<Question> questions);
}
