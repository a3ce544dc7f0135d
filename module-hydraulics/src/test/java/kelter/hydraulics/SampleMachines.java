package kelter.hydraulics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Observable;

/** Machines that were made up for the tests. */
public final class SampleMachines {

  private static final Source INVENTED = new Source("made up for tests", Standing.INVENTED);

  private SampleMachines() {}

  /** A washing machine with a drain pump that lifts 2 m at most. */
  public static Component drainPump() {
    return new Component(
        "drain-pump",
        "drain-pump",
        rated(30, 0.2),
        Map.of(
            "static-lift", Quantity.of(0.8, "m", QuantityKind.HEAD),
            "hose-length", Quantity.of(1.8, "m", QuantityKind.DISTANCE),
            "hose-bore", Quantity.of(19, "mm", QuantityKind.LENGTH),
            "drain-volume", Quantity.of(16, "L", QuantityKind.VOLUME)),
        Map.of("head", curve(0, 2.0, 10, 1.55, 20, 0.7)),
        INVENTED);
  }

  /** The circulation pump of a machine with spray arms. */
  public static Component washPump() {
    return new Component(
        "wash-pump",
        "wash-pump",
        rated(75, 0.5),
        Map.of(
            "jet-lift", Quantity.of(0.25, "m", QuantityKind.HEAD),
            "jet-area", Quantity.of(150, "mm2", QuantityKind.AREA),
            "passage-length", Quantity.of(0.6, "m", QuantityKind.DISTANCE),
            "passage-bore", Quantity.of(26, "mm", QuantityKind.LENGTH),
            "working-level", Quantity.of(60, "mm", QuantityKind.LENGTH),
            "rated-speed", Quantity.of(2800, "{rev}/min", QuantityKind.ROTATIONAL_SPEED),
            "rated-arm-speed", Quantity.of(30, "{rev}/min", QuantityKind.ROTATIONAL_SPEED)),
        Map.of("head", curve(0, 3.4, 40, 2.6, 66, 1.2)),
        INVENTED);
  }

  /** An inlet valve with a regulator washer. */
  public static Component inletValve() {
    return new Component(
        "inlet-valve",
        "inlet-valve",
        Nameplate.UNREADABLE,
        Map.of(
            "rated-flow", Quantity.of(8, "L/min", QuantityKind.FLOW),
            "supply-pressure", Quantity.of(300, "kPa", QuantityKind.GAUGE_PRESSURE)),
        Map.of(),
        INVENTED);
  }

  /** A level sensor with an air trap. */
  public static Component levelSensor() {
    return new Component(
        "level-sensor",
        "level-sensor",
        Nameplate.UNREADABLE,
        Map.of(
            "usual-height", Quantity.of(120, "mm", QuantityKind.LENGTH),
            "trip-height", Quantity.of(100, "mm", QuantityKind.LENGTH)),
        Map.of(),
        INVENTED);
  }

  /** A word of a part. */
  public static Observable word(Part part, String id) {
    return part.kinds().get(0).observables().stream()
        .filter(observable -> observable.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** One machine for each fault model. */
  public static List<Appliance> all() {
    return List.of(with(drainPump()), with(washPump()), with(inletValve()), with(levelSensor()));
  }

  /** A machine with these components. */
  public static Appliance with(Component... components) {
    return new Appliance(
        "washer", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(components));
  }

  /** A curve of flow rates in L/min and heads in m. */
  public static Curve curve(double... figures) {
    Curve.Point[] points = new Curve.Point[figures.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] =
          new Curve.Point(
              Quantity.of(figures[2 * i], "L/min", QuantityKind.FLOW),
              Quantity.of(figures[2 * i + 1], "m", QuantityKind.HEAD));
    }
    return new Curve(List.of(points));
  }

  private static Nameplate rated(double watts, double amperes) {
    return new Nameplate(
        Optional.of(RatedRange.parse("230 V", QuantityKind.VOLTAGE)),
        Optional.empty(),
        Optional.of(RatedRange.of(Quantity.of(watts, "W", QuantityKind.POWER))),
        Optional.of(Quantity.of(amperes, "A", QuantityKind.CURRENT)),
        Optional.empty());
  }
}
