package kelter.testkit.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Vocabulary;

/** Whether the words in files of kinds of machines are those of the modules. */
public final class KindRules {

  private KindRules() {}

  /**
   * A file must be readable. A kind of component that no module knows, or a fault that the module
   * does not know, may stand in it on purpose; but not if it is a letter or two from a known one.
   *
   * @param files the files
   * @param module the module
   * @param beside the modules beside which it is loaded
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> files(
      List<Path> files,
      CalculationModule module,
      List<CalculationModule> beside,
      List<Appliance> appliances) {
    List<ComponentKind> words = new ArrayList<>(module.parts().kinds());
    beside.forEach(other -> words.addAll(other.parts().kinds()));
    Vocabulary vocabulary = new Vocabulary(words, module.symptoms());
    List<String> breaches = new ArrayList<>();
    for (Path file : files) {
      try {
        Kind kind = KindFile.read(file, vocabulary);
        words(file, kind, vocabulary, faults(module, appliances), breaches);
      } catch (InputException mistakes) {
        mistakes.problems().forEach(problem -> breaches.add(problem.display()));
      }
    }
    return breaches;
  }

  /** By kind of component the faults that the module knows of it. */
  private static Map<String, Set<String>> faults(
      CalculationModule module, List<Appliance> appliances) {
    Map<String, Set<String>> faults = new HashMap<>();
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        for (Fault fault : model.faults()) {
          String kind = appliance.component(fault.component()).map(Component::kind).orElse("");
          faults.computeIfAbsent(kind, any -> new LinkedHashSet<>()).add(fault.id());
        }
      }
    }
    return faults;
  }

  private static void words(
      Path file,
      Kind kind,
      Vocabulary vocabulary,
      Map<String, Set<String>> faults,
      List<String> breaches) {
    List<String> known = vocabulary.kinds().stream().map(ComponentKind::id).toList();
    for (KindPart part : kind.parts()) {
      word("part " + part.id() + ": kind", part.kind(), known, file, breaches);
    }
    for (KindCause cause : kind.causes()) {
      String component = kind.part(cause.part()).map(KindPart::kind).orElse(cause.part());
      if (faults.containsKey(component)) {
        word("cause " + cause.key(), cause.fault(), faults.get(component), file, breaches);
      }
    }
  }

  private static void word(
      String where,
      String word,
      java.util.Collection<String> known,
      Path file,
      List<String> breaches) {
    if (!known.contains(word)) {
      Nearest.of(word, known)
          .ifPresent(
              near ->
                  breaches.add(
                      "%s, %s: no module knows '%s'; did you mean '%s'?"
                          .formatted(file.getFileName(), where, word, near)));
    }
  }
}
