package kelter.core.diagnosis;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * Something that can be wrong with a component, with a severity from 0 (none) to 1 (total).
 *
 * @param id what is wrong, unique among the faults of the component
 * @param component the id of the component
 * @param title what is wrong, for a person
 * @param prior the probability that a machine that somebody complains of has it, before anything is
 *     measured; above 0 and below 1
 * @param source where the prior comes from
 * @param remedies what cures it, the least work first; one or more
 * @param wear how its chance changes with the age of the machine, if that is known
 * @param symptoms what the whole machine then does, each symptom once
 * @param modelled whether a fault model speaks of it; if not, no measurement of it is known, and
 *     how bad it is cannot be told
 */
public record Fault(
    String id,
    String component,
    String title,
    double prior,
    Source source,
    List<Remedy> remedies,
    Optional<Wear> wear,
    List<FaultSymptom> symptoms,
    boolean modelled) {

  /**
   * A fault of a model.
   *
   * @param id what is wrong, unique among the faults of the component
   * @param component the id of the component
   * @param title what is wrong, for a person
   * @param prior the probability before anything is measured, above 0 and below 1
   * @param source where the prior comes from
   * @param remedies what cures it, the least work first; one or more
   * @param wear how its chance changes with the age of the machine, if that is known
   * @param symptoms what the whole machine then does, each symptom once
   * @throws IllegalArgumentException if the prior is not between 0 and 1 or there is no remedy
   */
  public Fault(
      String id,
      String component,
      String title,
      double prior,
      Source source,
      List<Remedy> remedies,
      Optional<Wear> wear,
      List<FaultSymptom> symptoms) {
    this(id, component, title, prior, source, remedies, wear, symptoms, true);
  }

  /**
   * A fault of a model that the whole machine does not show.
   *
   * @param id what is wrong, unique among the faults of the component
   * @param component the id of the component
   * @param title what is wrong, for a person
   * @param prior the probability before anything is measured, above 0 and below 1
   * @param source where the prior comes from
   * @param remedies what cures it, the least work first; one or more
   * @param wear how its chance changes with the age of the machine, if that is known
   * @throws IllegalArgumentException if the prior is not between 0 and 1 or there is no remedy
   */
  public Fault(
      String id,
      String component,
      String title,
      double prior,
      Source source,
      List<Remedy> remedies,
      Optional<Wear> wear) {
    this(id, component, title, prior, source, remedies, wear, List.of());
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the prior is not between 0 and 1 or there is no remedy
   */
  public Fault {
    Ids.require(id);
    Ids.require(component);
    Objects.requireNonNull(title);
    Objects.requireNonNull(source);
    remedies = List.copyOf(remedies);
    Objects.requireNonNull(wear);
    symptoms = List.copyOf(symptoms);
    if (!(prior > 0 && prior < 1)) {
      throw new IllegalArgumentException(id + ": a prior lies above 0 and below 1");
    }
    if (remedies.isEmpty()) {
      throw new IllegalArgumentException(id + ": a fault has a remedy");
    }
  }

  /**
   * The same fault, of whose remedies somebody knows more.
   *
   * @param others the remedies, in their order
   * @return the fault
   */
  public Fault with(List<Remedy> others) {
    return new Fault(id, component, title, prior, source, others, wear, symptoms, modelled);
  }

  /**
   * The same fault with another chance, which the age of the machine changes no more.
   *
   * @param chance the probability, above 0 and below 1
   * @param from where it comes from
   * @return the fault
   * @throws IllegalArgumentException if the probability is not between 0 and 1
   */
  public Fault with(double chance, Source from) {
    return new Fault(
        id, component, title, chance, from, remedies, Optional.empty(), symptoms, modelled);
  }

  /**
   * Its name within an appliance.
   *
   * @return component and id, joined by a full stop
   */
  public String key() {
    return component + "." + id;
  }
}
