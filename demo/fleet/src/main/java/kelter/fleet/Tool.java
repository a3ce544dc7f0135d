package kelter.fleet;

import java.util.ServiceLoader;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Workshop;

/** Kelter with its modules, which stand in the same jar as the program. */
final class Tool {

  private Tool() {}

  static Workshop workshop() {
    return Workshop.of(ServiceLoader.load(CalculationModule.class, Tool.class.getClassLoader()));
  }
}
