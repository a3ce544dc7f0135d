package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Wear;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom;

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
 * @param symptoms what the whole machine then does
 * @param cures what cures it, the least work first
 */
public record FaultRow(
    String id,
    String title,
    double prior,
    Optional<Wear> wear,
    List<Effect> effects,
    List<String> apart,
    List<FaultSymptom> symptoms,
    List<Work> cures) {

  public FaultRow {
    effects = List.copyOf(effects);
    apart = List.copyOf(apart);
    symptoms = List.copyOf(symptoms);
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
    return new FaultRow(
        id, title, prior, Optional.empty(), List.of(), List.of(), List.of(), List.of());
  }

  /**
   * The same with a chance that depends on the age of the machine.
   *
   * @param ageing how
   * @return the row
   */
  public FaultRow wears(Wear ageing) {
    return new FaultRow(id, title, prior, Optional.of(ageing), effects, apart, symptoms, cures);
  }

  /**
   * The same with what it changes.
   *
   * @param all what it changes, in their order
   * @return the row
   */
  public FaultRow changes(Effect... all) {
    return new FaultRow(id, title, prior, wear, List.of(all), apart, symptoms, cures);
  }

  /**
   * The same, never together with some others.
   *
   * @param faults the ids of faults of the same component
   * @return the row
   */
  public FaultRow apartFrom(String... faults) {
    return new FaultRow(id, title, prior, wear, effects, List.of(faults), symptoms, cures);
  }

  /**
   * The same with a symptom of the whole machine, as likely however bad the fault is.
   *
   * @param symptom what the machine does
   * @param chance the chance, 0 to 1, that this fault alone makes it
   * @return the row
   */
  public FaultRow makes(Symptom symptom, double chance) {
    return makes(symptom, Course.constant(chance));
  }

  /**
   * The same with a symptom of the whole machine, whose chance runs straight over the severity.
   *
   * @param symptom what the machine does
   * @param from the chance, 0 to 1, that this fault alone makes it as it begins
   * @param to the chance, 0 to 1, at severity 1
   * @return the row
   */
  public FaultRow makes(Symptom symptom, double from, double to) {
    return makes(symptom, Course.line(from, to));
  }

  /**
   * The same with a symptom of the whole machine.
   *
   * @param symptom what the machine does
   * @param chance the chance, 0 to 1, that this fault alone makes it, by severity
   * @return the row
   */
  public FaultRow makes(Symptom symptom, Course chance) {
    List<FaultSymptom> all = new ArrayList<>(symptoms);
    all.add(new FaultSymptom(symptom.id(), chance::at));
    return new FaultRow(id, title, prior, wear, effects, apart, all, cures);
  }

  /**
   * The same with what cures it.
   *
   * @param works the least work first, one or more
   * @return the row
   */
  public FaultRow curedBy(Work... works) {
    return new FaultRow(id, title, prior, wear, effects, apart, symptoms, List.of(works));
  }

  /** The fault on a component. */
  Fault on(String component, Source source) {
    List<Remedy> remedies = new ArrayList<>();
    for (Work cure : cures) {
      remedies.add(cure.on(component));
    }
    return new Fault(id, component, title, prior, source, remedies, wear, symptoms);
  }
}
