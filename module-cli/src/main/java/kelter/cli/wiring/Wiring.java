package kelter.cli.wiring;

import com.google.inject.Binder;
import com.google.inject.Inject;
import com.google.inject.Module;
import com.google.inject.Provider;
import com.google.inject.TypeLiteral;
import com.google.inject.util.Providers;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kelter.cli.terminal.Terminal;
import kelter.core.module.CalculationModule;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;

/**
 * Binds what commands work with: the modules that were found, the shop, the clock, the terminal,
 * and the workshop that is made of them. What exists already comes from providers: instances would
 * be searched for what to inject, with all their methods, at every start. This and the provider of
 * the shop are compared by identity: to hash the record of a shop takes 6 ms of a start.
 */
final class Wiring implements Module {

  private final List<CalculationModule> modules;
  private final Shop shop;
  private final Terminal terminal;
  private final Clock clock;

  Wiring(List<CalculationModule> modules, Shop shop, Terminal terminal, Clock clock) {
    this.modules = modules;
    this.shop = shop;
    this.terminal = terminal;
    this.clock = clock;
  }

  private static final class Modules extends TypeLiteral<Set<CalculationModule>> {}

  @Override
  public void configure(Binder binder) {
    binder.bind(new Modules()).toProvider(Providers.of(new LinkedHashSet<>(modules)));
    binder.bind(Shop.class).toProvider(() -> shop);
    binder.bind(Terminal.class).toProvider(Providers.of(terminal));
    binder.bind(Clock.class).toProvider(Providers.of(clock));
    binder.bind(Workshop.class).toProvider(OfThese.class);
  }

  /** Makes the workshop of the modules and the shop. */
  static final class OfThese implements Provider<Workshop> {

    private final Set<CalculationModule> modules;
    private final Shop shop;

    @Inject
    OfThese(Set<CalculationModule> modules, Shop shop) {
      this.modules = modules;
      this.shop = shop;
    }

    @Override
    public Workshop get() {
      return Workshop.of(modules, shop);
    }
  }
}
