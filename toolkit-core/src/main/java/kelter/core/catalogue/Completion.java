package kelter.core.catalogue;

import kelter.core.job.Appliance;

/**
 * What fills a machine where its job is silent, before its readings are read. What the job states
 * always stays.
 */
@FunctionalInterface
public interface Completion {

  /** Nothing is known beyond the job. */
  Completion NONE = Completed::asStated;

  /**
   * Fills a machine.
   *
   * @param stated the machine as its job states it
   * @return the machine with what is known beside that
   */
  Completed complete(Appliance stated);
}
