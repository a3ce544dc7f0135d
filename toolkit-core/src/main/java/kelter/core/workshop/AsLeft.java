package kelter.core.workshop;

import java.util.Objects;
import kelter.core.diagnosis.Diagnosis;

/**
 * What is held of a machine after some work.
 *
 * @param diagnosis what may be wrong with it now, whatever the complaint was
 * @param cured the chance that what made the complaint is gone, from 0 to 1. What may be wrong by
 *     coincidence, and was no likelier as found than on any machine with another fault, does not
 *     count against it
 */
public record AsLeft(Diagnosis diagnosis, double cured) {

  /** Checks that there is a diagnosis. */
  public AsLeft {
    Objects.requireNonNull(diagnosis);
  }
}
