package kelter.core.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * A kind of part that can be measured or can fail.
 *
 * @param id the word in a job file, lower case with hyphens
 * @param title the words for a person
 * @param observables what can be measured or seen on it
 * @param figures the service figures that it may have
 * @param curves the curves that it may have
 */
public record ComponentKind(
    String id,
    String title,
    List<Observable> observables,
    List<Characteristic> figures,
    List<CurveKind> curves) {

  /** Checks the id and copies the lists. */
  public ComponentKind {
    Ids.require(id);
    Objects.requireNonNull(title);
    observables = List.copyOf(observables);
    figures = List.copyOf(figures);
    curves = List.copyOf(curves);
  }
}
