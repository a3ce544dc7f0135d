package kelter.cli.wiring;

import com.google.inject.AbstractModule;
import com.google.inject.multibindings.Multibinder;
import com.google.inject.util.Providers;
import java.util.List;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.module.CalculationModule;
import kelter.core.shop.Shop;

/**
 * Binds the modules that were found, and what the commands need of the core. None of them wants
 * anything injected, so they come from providers: instances would be searched for what to inject,
 * with all their methods, at every start.
 */
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
    for (CalculationModule module : modules) {
      set.addBinding().toProvider(Providers.of(module));
    }
    bind(EngineSettings.class).toProvider(Providers.of(settings()));
    bind(Shop.class).toProvider(Providers.of(shop));
  }

  private EngineSettings settings() {
    return EngineSettings.USUAL.forLiveWork(shop.competentForLiveWork());
  }
}
