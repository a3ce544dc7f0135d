package kelter.core.check;

import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.vocabulary.Observable;

/**
 * A measurement with what it is of.
 *
 * @param job the job
 * @param component the component of its appliance that was measured
 * @param observable what was measured
 * @param measurement what was read
 */
public record Measured(
    Job job, Component component, Observable observable, Measurement measurement) {

  /**
   * The machine.
   *
   * @return the appliance of the job
   */
  public Appliance appliance() {
    return job.appliance();
  }

  /**
   * The circumstances of the reading.
   *
   * @return what is stated with it
   */
  public Conditions conditions() {
    return measurement.conditions();
  }
}
