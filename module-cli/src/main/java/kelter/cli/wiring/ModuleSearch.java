package kelter.cli.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import kelter.core.module.CalculationModule;
import kelter.core.problem.Problem;

/** Finds the modules on the module path, by id. */
final class ModuleSearch {

  private ModuleSearch() {}

  private static final class ById implements Comparator<CalculationModule> {
    @Override
    public int compare(CalculationModule one, CalculationModule other) {
      return one.about().id().compareTo(other.about().id());
    }
  }

  /** The modules on the module path, by id. */
  static Found find() {
    return byId(onModulePath(), List.of());
  }

  static Found byId(List<CalculationModule> modules, List<Problem> refused) {
    modules.sort(new ById());
    return new Found(modules, refused);
  }

  static List<CalculationModule> onModulePath() {
    List<CalculationModule> modules = new ArrayList<>();
    // The layer is named, since otherwise the class path, which is empty, is searched as well.
    for (CalculationModule module :
        ServiceLoader.load(ModuleSearch.class.getModule().getLayer(), CalculationModule.class)) {
      modules.add(module);
    }
    return modules;
  }
}
