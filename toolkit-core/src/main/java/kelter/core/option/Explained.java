package kelter.core.option;

import java.util.Objects;
import java.util.Optional;

/**
 * Weighed options, and why they come out as they do.
 *
 * @param weighing the options, weighed
 * @param reasons the reasons, or empty if the weigher gives none
 */
public record Explained(Weighing weighing, Optional<Reasons> reasons) {

  public Explained {
    Objects.requireNonNull(weighing);
    Objects.requireNonNull(reasons);
  }
}
