package kelter.hydraulics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.testkit.ModuleContract;

/** Holds the module against what every module must keep. */
class HydraulicsContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new HydraulicsModule();
  }

  @Override
  protected boolean isShipped() {
    return true;
  }

  @Override
  protected List<Appliance> appliances() {
    List<Appliance> all = new ArrayList<>(SampleMachines.all());
    all.addAll(AirSamples.all());
    all.addAll(SampleWaterParts.all());
    all.add(wellKnown());
    return all;
  }

  /** Parts with the figures that only some of their checks need. */
  private static Appliance wellKnown() {
    return SampleMachines.with(
        with(
            SampleMachines.drainPump(),
            Map.of("standpipe-height", Quantity.of(0.6, "m", QuantityKind.HEAD))),
        with(
            SampleMachines.inletValve(),
            Map.of(
                "pipe-length", Quantity.of(5, "m", QuantityKind.DISTANCE),
                "pipe-bore", Quantity.of(13, "mm", QuantityKind.LENGTH))),
        AirSamples.part(
            "housing",
            Map.of("rated-suction", Quantity.of(20, "kPa", QuantityKind.PRESSURE_DIFFERENCE))));
  }

  private static Component with(Component part, Map<String, Quantity> more) {
    Map<String, Quantity> figures = new HashMap<>(part.figures());
    figures.putAll(more);
    return new Component(
        part.id(), part.kind(), part.nameplate(), figures, part.curves(), part.source());
  }
}
