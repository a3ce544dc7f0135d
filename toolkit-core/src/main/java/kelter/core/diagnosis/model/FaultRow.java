package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Wear;
import kelter.core.source.Source;

/**
 * A fault of any part of a kind: what it changes, beside what it cannot be, what cures it.
 *
 * @param id what is wrong, unique among the faults of the component
 * @param title what is wrong, for a person
 * @param prior the probability that a machine that somebody complains of has it, before anything is
 *     measured; above 0 and below 1
 * @param wear how its chance changes with the age of the machine, if that is known
 * @param effects what it changes, in their order
 * @param apart the faults of the same component that are never there beside it; one of two such
 *     faults need name the other
 * @param cures what cures it, the least work first
 */
public record FaultRow(
    String id,
    String title,
    double prior,
    Optional<Wear> wear,
    List<Effect> effects,
    List<String> apart,
    List<Work> cures) {

  public FaultRow {
    effects = List.copyOf(effects);
    apart = List.copyOf(apart);
    cures = List.copyOf(cures);
  }

  /**
   * Begins a row.
   *
   * @param id what is wrong, unique among the faults of the component
   * @param title what is wrong, for a person
   * @param prior the probability that a machine that somebody complains of has it, above 0 and
   *     below 1
   * @return a fault that changes nothing yet
   */
  public static FaultRow fault(String id, String title, double prior) {
    return new FaultRow(id, title, prior, Optional.empty(), List.of(), List.of(), List.of());
  }

  /**
   * The same with a chance that depends on the age of the machine.
   *
   * @param ageing how
   * @return the row
   */
  public FaultRow wears(Wear ageing) {
    return new FaultRow(id, title, prior, Optional.of(ageing), effects, apart, cures);
  }

  /**
   * The same with what it changes.
   *
   * @param all what it changes, in their order
   * @return the row
   */
  public FaultRow changes(Effect... all) {
    return new FaultRow(id, title, prior, wear, List.of(all), apart, cures);
  }

  /**
   * The same, never together with some others.
   *
   * @param faults the ids of faults of the same component
   * @return the row
   */
  public FaultRow apartFrom(String... faults) {
    return new FaultRow(id, title, prior, wear, effects, List.of(faults), cures);
  }

  /**
   * The same with what cures it.
   *
   * @param works the least work first, one or more
   * @return the row
   */
  public FaultRow curedBy(Work... works) {
    return new FaultRow(id, title, prior, wear, effects, apart, List.of(works));
  }

  /** The fault on a component. */
  Fault on(String component, Source source) {
    List<Remedy> remedies = new ArrayList<>();
    for (Work cure : cures) {
      remedies.add(cure.on(component));
    }
    return new Fault(id, component, title, prior, source, remedies, wear);
  }
}
