package kelter.core.check;

import java.util.Optional;

/** What gives the limits of a reading. It must give the same for the same job. */
@FunctionalInterface
public interface LimitRule {

  /**
   * What a reading may be.
   *
   * @param measured what was read
   * @return the limits, or why there are none; empty if there is nothing to tell about it
   */
  Optional<Allowed> allowed(Measured measured);
}
