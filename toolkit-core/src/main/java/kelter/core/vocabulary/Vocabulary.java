package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * All kinds of components that the loaded modules know. Several modules may speak of the same kind:
 * what they say is put together.
 */
public final class Vocabulary {

  private final Map<String, ComponentKind> kinds = new TreeMap<>();
  private final Map<String, Symptom> symptoms = new LinkedHashMap<>();

  /**
   * Puts together what the modules say of components; the symptoms are those of any machine.
   *
   * @param contributions kinds of components, an id more than once where several modules speak of
   *     it
   * @throws IllegalArgumentException if two modules give one word two meanings
   */
  public Vocabulary(Collection<ComponentKind> contributions) {
    this(contributions, List.of());
  }

  /**
   * Puts together what the modules say.
   *
   * @param contributions kinds of components, an id more than once where several modules speak of
   *     it
   * @param more symptoms that only some machines have, beside {@link Symptoms#ALL}
   * @throws IllegalArgumentException if two modules give one word two meanings, or a symptom is
   *     hidden by one that nobody knows
   */
  public Vocabulary(Collection<ComponentKind> contributions, Collection<Symptom> more) {
    for (ComponentKind kind : contributions) {
      ComponentKind earlier = kinds.get(kind.id());
      kinds.put(kind.id(), earlier == null ? kind : merge(earlier, kind));
    }
    List<Symptom> all = new ArrayList<>(Symptoms.ALL);
    all.addAll(more);
    all.addAll(Symptoms.SIGNS);
    for (Symptom symptom : all) {
      Symptom earlier = symptoms.putIfAbsent(symptom.id(), symptom);
      if (earlier != null && earlier != symptom && !earlier.equals(symptom)) {
        throw new IllegalArgumentException(
            "two modules give the symptom '" + symptom.id() + "' two meanings");
      }
    }
    for (Symptom symptom : symptoms.values()) {
      if (!symptoms.keySet().containsAll(symptom.maskedBy())) {
        throw new IllegalArgumentException(
            "the symptom '" + symptom.id() + "' is hidden by one that nobody knows");
      }
    }
  }

  private static ComponentKind merge(ComponentKind a, ComponentKind b) {
    return new ComponentKind(
        a.id(),
        a.title(),
        union(a.id(), a.observables(), b.observables(), Observable::id),
        union(a.id(), a.figures(), b.figures(), Characteristic::id),
        union(a.id(), a.curves(), b.curves(), CurveKind::id));
  }

  private static <T> List<T> union(String kind, List<T> a, List<T> b, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    List<T> all = new ArrayList<>(a);
    all.addAll(b);
    for (T word : all) {
      T earlier = byId.putIfAbsent(id.apply(word), word);
      if (earlier != null && earlier != word && !earlier.equals(word)) {
        throw new IllegalArgumentException(
            "two modules give '" + id.apply(word) + "' of '" + kind + "' two meanings");
      }
    }
    return List.copyOf(byId.values());
  }

  /**
   * All kinds of components, by id.
   *
   * @return the kinds
   */
  public List<ComponentKind> kinds() {
    return List.copyOf(kinds.values());
  }

  /**
   * A kind of component.
   *
   * @param id the word in a job file
   * @return the kind, or empty if no module knows it
   */
  public Optional<ComponentKind> kind(String id) {
    return Optional.ofNullable(kinds.get(id));
  }

  /**
   * All symptoms of machines.
   *
   * @return the symptoms of any machine, then those of the modules, then signs of danger
   */
  public List<Symptom> symptoms() {
    return List.copyOf(symptoms.values());
  }

  /**
   * The symptoms that tell of faults.
   *
   * @return the symptoms of any machine, then those of the modules
   */
  public List<Symptom> weighed() {
    // By its word, since to compare records is dear at a start.
    Map<String, Symptom> weighed = new LinkedHashMap<>(symptoms);
    for (Symptom sign : Symptoms.SIGNS) {
      weighed.remove(sign.id());
    }
    return List.copyOf(weighed.values());
  }

  /**
   * A symptom.
   *
   * @param id its word
   * @return the symptom, or empty if there is none of that name
   */
  public Optional<Symptom> symptom(String id) {
    return Optional.ofNullable(symptoms.get(id));
  }

  /**
   * What can be observed on a kind of component.
   *
   * @param kind the kind of component
   * @param observable the word for the observable
   * @return the observable, or empty if no module knows it
   */
  public Optional<Observable> observable(String kind, String observable) {
    ComponentKind known = kinds.get(kind);
    if (known != null) {
      for (Observable each : known.observables()) {
        if (each.id().equals(observable)) {
          return Optional.of(each);
        }
      }
    }
    return Optional.empty();
  }
}
