package kelter.cli.plugin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.module.Part;
import kelter.core.problem.Required;
import kelter.core.vocabulary.ComponentKind;

/** A part of a plugin. A fault model that failed once, or claims what is another's, is left out. */
final class GuardedPart implements Part {

  private final Guard guard;
  private final Part part;
  private final String name;
  private final List<CalculationModule> others;
  private final List<ComponentKind> kinds;
  private final List<Check> checks;
  private final Set<String> failed = ConcurrentHashMap.newKeySet();

  private GuardedPart(Guard guard, Part part, List<CalculationModule> others) {
    this.guard = guard;
    this.part = part;
    this.others = others;
    name = "part " + part.getClass().getName();
    kinds = guard.ask(name + ", kinds()", () -> Required.list(part.kinds(), "the list of kinds"));
    List<Check> own =
        guard.ask(name + ", checks()", () -> Required.list(part.checks(), "the list of checks"));
    checks = own.stream().<Check>map(check -> GuardedCheck.of(guard, check)).toList();
  }

  static Part of(Guard guard, Part part, List<CalculationModule> others) {
    return new GuardedPart(guard, part, others);
  }

  @Override
  public List<ComponentKind> kinds() {
    return kinds;
  }

  @Override
  public List<Check> checks() {
    return checks;
  }

  @Override
  public List<FaultModel> faultModels(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    Claims claims = Claims.of(others, appliance);
    for (FaultModel model : made(appliance)) {
      if (!failed.contains(model.id())) {
        String claimed = claims.claimedBy(model);
        if (claimed.isEmpty()) {
          models.add(model);
        } else {
          guard.tell("fault model '" + model.id() + "'", claimed);
        }
      }
    }
    return models;
  }

  private List<FaultModel> made(Appliance appliance) {
    try {
      return guard.askOfJob(name + ", faultModels()", () -> guarded(appliance));
    } catch (Guard.Failed wrong) {
      guard.tell(wrong);
      return List.of();
    }
  }

  private List<FaultModel> guarded(Appliance appliance) {
    List<FaultModel> guarded = new ArrayList<>();
    for (FaultModel model :
        Required.list(part.faultModels(appliance), "the list of fault models")) {
      guarded.add(GuardedFaultModel.of(guard, model, failed));
    }
    return guarded;
  }

  /** What the modules that were there before say of an appliance. */
  private record Claims(Set<String> models, Set<String> faults, Set<String> questions) {

    static Claims of(List<CalculationModule> others, Appliance appliance) {
      Claims claims = new Claims(new HashSet<>(), new HashSet<>(), new HashSet<>());
      for (CalculationModule other : others) {
        for (FaultModel model : other.parts().faultModels(appliance)) {
          claims.models.add(model.id());
          model.faults().forEach(fault -> claims.faults.add(fault.key()));
          model.questions().forEach(question -> claims.questions.add(question.key()));
        }
      }
      return claims;
    }

    /** What a model claims that is claimed already, in words; notes what it claims. */
    String claimedBy(FaultModel model) {
      if (!models.add(model.id())) {
        return "has the id of another module's model";
      }
      for (var fault : model.faults()) {
        if (!faults.add(fault.key())) {
          return "claims the fault '" + fault.key() + "', which is another's";
        }
      }
      Set<String> own = new HashSet<>();
      for (var question : model.questions()) {
        if (own.add(question.key()) && !questions.add(question.key())) {
          return "forecasts '" + question.key() + "', which is another's";
        }
      }
      return "";
    }
  }
}
