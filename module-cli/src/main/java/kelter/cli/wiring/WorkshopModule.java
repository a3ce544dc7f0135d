package kelter.cli.wiring;

import com.google.inject.AbstractModule;
import com.google.inject.multibindings.Multibinder;
import java.util.List;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.module.CalculationModule;
import kelter.core.shop.Shop;

/** Binds the modules that were found, and what the commands need of the core. */
final class WorkshopModule extends AbstractModule {

  private final List<CalculationModule> modules;
  private final Shop shop;

  WorkshopModule(List<CalculationModule> modules, Shop shop) {
    this.modules = modules;
    this.shop = shop;
  }

  @Override
  protected void configure() {
    Multibinder<CalculationModule> set =
        Multibinder.newSetBinder(binder(), CalculationModule.class);
    modules.forEach(module -> set.addBinding().toInstance(module));
    bind(EngineSettings.class).toInstance(settings());
    bind(Shop.class).toInstance(shop);
  }

  private EngineSettings settings() {
    return EngineSettings.USUAL.forLiveWork(shop.competentForLiveWork());
  }
}
