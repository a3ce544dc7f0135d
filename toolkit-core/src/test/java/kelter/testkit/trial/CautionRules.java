package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/** Which cautions a module tells. */
public final class CautionRules {

  private CautionRules() {}

  /**
   * Whatever a module tells people to mind must be in its list, with that signal word, so that
   * programs know the id beforehand.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> listed(CalculationModule module, List<Appliance> appliances) {
    Set<String> listed = new HashSet<>();
    Caution.COMMON.forEach(each -> listed.add(word(each)));
    module.cautions().forEach(each -> listed.add(word(each)));
    Set<String> breaches = new LinkedHashSet<>();
    for (Caution caution : told(module, appliances)) {
      if (!listed.contains(word(caution))) {
        breaches.add(
            "the caution '%s' is not in cautions(): %s".formatted(caution.id(), caution.display()));
      }
    }
    return List.copyOf(breaches);
  }

  private static String word(Caution caution) {
    return caution.id() + " " + caution.signal() + " " + caution.keepsUnplugged();
  }

  private static List<Caution> told(CalculationModule module, List<Appliance> appliances) {
    List<Caution> told = new ArrayList<>();
    for (Calculation calculation : module.calculations()) {
      told.addAll(calculation.cautions());
    }
    for (ComponentKind kind : module.parts().kinds()) {
      for (Observable observable : kind.observables()) {
        told.addAll(observable.procedure().cautions());
      }
    }
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        for (Fault fault : model.faults()) {
          for (Remedy remedy : fault.remedies()) {
            told.addAll(remedy.cautions());
          }
        }
      }
      for (Finding finding : TrialFindings.of(module, appliance)) {
        told.addAll(finding.cautions());
      }
    }
    return told;
  }
}
