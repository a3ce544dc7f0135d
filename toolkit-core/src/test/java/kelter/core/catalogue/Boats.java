package kelter.core.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/** Invented machines and parts for tests. */
final class Boats {

  static final Source STATED = new Source("service sheet 3", Standing.NAMEPLATE);
  static final Source KNOWN = new Source("measured at the quay", Standing.MEASURED);

  private Boats() {}

  static Quantity head(String text) {
    return QuantityParser.parse(text, QuantityKind.HEAD);
  }

  static Quantity flow(String text) {
    return QuantityParser.parse(text, QuantityKind.FLOW);
  }

  static Quantity ohm(String text) {
    return QuantityParser.parse(text, QuantityKind.RESISTANCE);
  }

  static Curve curve(String... heads) {
    return new Curve(
        List.of(
            new Curve.Point(flow("0 L/min"), head(heads[0])),
            new Curve.Point(flow("20 L/min"), head(heads[1]))));
  }

  static Nameplate plate(String voltage, String power) {
    return new Nameplate(
        range(voltage, QuantityKind.VOLTAGE),
        Optional.empty(),
        range(power, QuantityKind.POWER),
        Optional.empty(),
        Optional.empty());
  }

  private static Optional<RatedRange> range(String text, QuantityKind kind) {
    return text.isEmpty() ? Optional.empty() : Optional.of(RatedRange.parse(text, kind));
  }

  static Component part(
      String id, String kind, Map<String, Quantity> figures, Map<String, Curve> curves, Source of) {
    return new Component(id, kind, Nameplate.UNREADABLE, figures, curves, of);
  }

  static Component pump(String id, Map<String, Quantity> figures, Source of) {
    return part(id, "bilge-pump", figures, Map.of(), of);
  }

  static Appliance boat(String maker, String model, Nameplate plate, Component... parts) {
    return new Appliance("bilge-unit", maker, model, "", Optional.empty(), plate, List.of(parts));
  }

  static MachineModel model(Nameplate plate, Component... parts) {
    return new MachineModel(
        "bilge-unit",
        "Ost-Vik",
        "B 2",
        List.of("Bilge Boy"),
        plate,
        List.of(parts),
        Map.of(),
        KNOWN);
  }
}
