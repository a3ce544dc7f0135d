package kelter.cli.wiring;

import com.google.inject.AbstractModule;
import com.google.inject.multibindings.Multibinder;
import java.util.List;
import kelter.core.check.DecisionRule;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.module.CalculationModule;

/** Binds the modules that were found, and what the commands need of the core. */
final class WorkshopModule extends AbstractModule {

  private final List<CalculationModule> modules;

  WorkshopModule(List<CalculationModule> modules) {
    this.modules = modules;
  }

  @Override
  protected void configure() {
    Multibinder<CalculationModule> set =
        Multibinder.newSetBinder(binder(), CalculationModule.class);
    modules.forEach(module -> set.addBinding().toInstance(module));
    bind(EngineSettings.class).toInstance(EngineSettings.USUAL);
    bind(DecisionRule.class).toInstance(DecisionRule.USUAL);
  }
}
