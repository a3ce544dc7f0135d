package kelter.cli.wiring;

import com.google.inject.Binder;
import com.google.inject.Module;
import com.google.inject.Provider;
import com.google.inject.util.Providers;
import java.time.Clock;
import kelter.cli.terminal.Terminal;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;

/**
 * Binds what commands work with: the modules that were found, the shop, the clock, the terminal,
 * and the workshop that is made of them. What exists already comes from providers: instances would
 * be searched for what to inject, with all their methods, at every start. This and the provider of
 * the shop are compared by identity: to hash the record of a shop takes 6 ms of a start.
 */
final class Wiring implements Module {

  private final Found found;
  private final Shop shop;
  private final Terminal terminal;
  private final Clock clock;

  Wiring(Found found, Shop shop, Terminal terminal, Clock clock) {
    this.found = found;
    this.shop = shop;
    this.terminal = terminal;
    this.clock = clock;
  }

  @Override
  public void configure(Binder binder) {
    Provider<Found> modules = binder.getProvider(Found.class);
    Provider<Shop> ofShop = binder.getProvider(Shop.class);
    binder.bind(Found.class).toProvider(Providers.of(found));
    binder.bind(Shop.class).toProvider(() -> shop);
    binder.bind(Terminal.class).toProvider(Providers.of(terminal));
    binder.bind(Clock.class).toProvider(Providers.of(clock));
    binder
        .bind(Workshop.class)
        .toProvider(() -> Workshop.of(modules.get().modules(), ofShop.get()));
  }
}
