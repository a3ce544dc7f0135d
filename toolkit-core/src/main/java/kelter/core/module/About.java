package kelter.core.module;

import java.util.Objects;
import kelter.core.vocabulary.Ids;

/**
 * Who a module is.
 *
 * @param id its id, unique among all modules
 * @param title what it is for, for a person
 * @param version its version
 */
public record About(String id, String title, String version) {

  /** Checks the id. */
  public About {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(version);
  }
}
