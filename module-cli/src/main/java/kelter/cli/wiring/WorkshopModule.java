package kelter.cli.wiring;

import com.google.inject.Binder;
import com.google.inject.Module;
import com.google.inject.util.Providers;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.shop.Shop;

/**
 * Binds the modules that are found, and what the commands need of the core. None of them wants
 * anything injected, so they come from providers: instances would be searched for what to inject,
 * with all their methods, at every start.
 */
final class WorkshopModule implements Module {

  private final Modules modules;
  private final Shop shop;

  WorkshopModule(Modules modules, Shop shop) {
    this.modules = modules;
    this.shop = shop;
  }

  @Override
  public void configure(Binder binder) {
    EngineSettings settings = EngineSettings.USUAL.forLiveWork(shop.competentForLiveWork());
    binder.bind(Modules.class).toProvider(Providers.of(modules));
    binder.bind(EngineSettings.class).toProvider(Providers.of(settings));
  }
}
