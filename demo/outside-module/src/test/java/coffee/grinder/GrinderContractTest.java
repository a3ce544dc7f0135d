package coffee.grinder;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.testkit.ModuleContract;

/** Holds the module against what every module must keep. */
class GrinderContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new GrinderModule();
  }

  @Override
  protected List<Appliance> appliances() {
    Component burrs =
        new Component(
            "burrs",
            "burrs",
            Nameplate.UNREADABLE,
            Map.of("rated-rate", Quantity.of(2, "g/s", GrindTime.RATE)),
            Map.of(),
            new Source("made up for tests", Standing.INVENTED));
    return List.of(
        new Appliance(
            "coffee-grinder", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(burrs)));
  }

  @Override
  protected List<Path> kindFiles() {
    return List.of(Path.of("shop", "kinds", "coffee-grinder.json"));
  }
}
