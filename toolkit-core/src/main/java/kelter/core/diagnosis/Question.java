package kelter.core.diagnosis;

import java.util.Objects;
import kelter.core.job.Conditions;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Observable;

/**
 * What would be seen of an observable under stated conditions.
 *
 * @param component the id of the component
 * @param observable what is observed
 * @param conditions the circumstances; where one is not stated, the usual one holds
 */
public record Question(String component, Observable observable, Conditions conditions) {

  /** Checks the id. */
  public Question {
    Ids.require(component);
    Objects.requireNonNull(observable);
    Objects.requireNonNull(conditions);
  }

  /** By component and id alone, since to hash the record of an observable is dear at a start. */
  @Override
  public int hashCode() {
    return 31 * component.hashCode() + observable.id().hashCode();
  }

  /**
   * What is asked about, without its conditions.
   *
   * @return component and observable, joined by a full stop
   */
  public String key() {
    return component + "." + observable.id();
  }
}
