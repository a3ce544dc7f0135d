package kelter.core.workshop;

import java.util.List;
import java.util.Objects;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;

/**
 * What is held of a machine after some work.
 *
 * @param diagnosis what may be wrong with it now, whatever the complaint was
 * @param cured the chance that what made the complaint is gone, from 0 to 1. What may be wrong by
 *     coincidence, and was no likelier as found than on any machine with another fault, does not
 *     count against it
 * @param outside what was read after the work and does not conform, be it something that made no
 *     complaint, such as a new part that is faulty; while there is any, the machine is not mended
 */
public record AsLeft(Diagnosis diagnosis, double cured, List<Finding> outside) {

  /** Checks that there is a diagnosis. */
  public AsLeft {
    Objects.requireNonNull(diagnosis);
    outside = List.copyOf(outside);
  }
}
