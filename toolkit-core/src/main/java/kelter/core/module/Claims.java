package kelter.core.module;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import kelter.core.check.Check;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/** The ids that are taken: those of any machine, and those of modules that are there already. */
public final class Claims {

  private final Set<String> modules = new HashSet<>();
  private final Set<String> calculations = new HashSet<>();
  private final Set<String> instruments = new HashSet<>(InstrumentLibrary.ids());
  private final Set<String> checks = new HashSet<>();
  private final Set<String> symptoms = new HashSet<>();
  private final Map<String, ComponentKind> kinds = new HashMap<>();
  private final Map<String, Caution> cautions = new HashMap<>();

  /**
   * The ids that are taken once some modules are loaded.
   *
   * @param loaded these modules
   */
  public Claims(List<CalculationModule> loaded) {
    Stream.concat(Symptoms.ALL.stream(), Symptoms.SIGNS.stream())
        .forEach(symptom -> symptoms.add(symptom.id()));
    Caution.COMMON.forEach(caution -> cautions.put(caution.id(), caution));
    for (CalculationModule other : loaded) {
      modules.add(other.about().id());
      other.calculations().stream().map(Calculation::id).forEach(calculations::add);
      other.instruments().stream().map(Instrument::id).forEach(instruments::add);
      other.parts().checks().stream().map(Check::id).forEach(checks::add);
      other.symptoms().stream().map(Symptom::id).forEach(symptoms::add);
      other.parts().kinds().forEach(kind -> kinds.put(kind.id(), kind));
      other.cautions().forEach(caution -> cautions.put(caution.id(), caution));
    }
  }

  /**
   * What a module claims although it is taken, or claims twice itself.
   *
   * @param module a module that is not loaded yet
   * @return what is wrong, in words; empty if it goes with the others
   */
  public List<String> claimedBy(CalculationModule module) {
    List<String> claimed = new ArrayList<>();
    if (modules.contains(module.about().id())) {
      claimed.add("a module '" + module.about().id() + "' is loaded already");
    }
    taken("a calculation", calculations, module.calculations().stream().map(Calculation::id))
        .forEach(claimed::add);
    taken("a symptom", symptoms, module.symptoms().stream().map(Symptom::id)).forEach(claimed::add);
    hidden(module).forEach(claimed::add);
    taken("an instrument", instruments, module.instruments().stream().map(Instrument::id))
        .forEach(claimed::add);
    // Parts of one module may share a check.
    taken("a check", checks, module.parts().checks().stream().map(Check::id).distinct())
        .forEach(claimed::add);
    meanings("kind of component", kinds, module.parts().kinds(), ComponentKind::id)
        .forEach(claimed::add);
    meanings("caution", cautions, module.cautions(), Caution::id).forEach(claimed::add);
    return claimed;
  }

  private static Stream<String> taken(String what, Set<String> taken, Stream<String> ids) {
    Set<String> all = new HashSet<>(taken);
    return ids.filter(id -> !all.add(id)).map(id -> "there is " + what + " '" + id + "' already");
  }

  private Stream<String> hidden(CalculationModule module) {
    Set<String> known = new HashSet<>(symptoms);
    module.symptoms().forEach(symptom -> known.add(symptom.id()));
    return module.symptoms().stream()
        .filter(symptom -> !known.containsAll(symptom.maskedBy()))
        .map(symptom -> "the symptom '" + symptom.id() + "' is hidden by one that nobody knows");
  }

  private static <T> Stream<String> meanings(
      String what, Map<String, T> taken, List<T> own, Function<T, String> id) {
    Map<String, T> all = new HashMap<>(taken);
    return own.stream()
        .filter(
            each -> {
              T earlier = all.put(id.apply(each), each);
              return earlier != null && !earlier.equals(each);
            })
        .map(each -> "the " + what + " '" + id.apply(each) + "' has another meaning already");
  }
}
