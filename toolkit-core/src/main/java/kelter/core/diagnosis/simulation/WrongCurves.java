package kelter.core.diagnosis.simulation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.Scale;

/** Machines that differ from what is known of them, for trying how far that misleads. */
public final class WrongCurves {

  private WrongCurves() {}

  /**
   * The same machine with other curves: every value of every curve times a factor. Curves of a
   * temperature are left as they are.
   *
   * @param appliance the machine
   * @param factor a ratio above 0: 1.1 for curves that lie 10 % higher
   * @return the other machine
   * @throws IllegalArgumentException if the factor is not finite and above 0, or no component has a
   *     curve
   */
  public static Appliance scaled(Appliance appliance, double factor) {
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException(
          "curves times " + factor + "; a finite factor above 0 is allowed");
    }
    if (appliance.components().stream().allMatch(component -> component.curves().isEmpty())) {
      throw new IllegalArgumentException("no component of the machine has a curve");
    }
    return new Appliance(
        appliance.kind(),
        appliance.maker(),
        appliance.model(),
        appliance.serial(),
        appliance.age(),
        appliance.nameplate(),
        appliance.components().stream().map(component -> scaled(component, factor)).toList());
  }

  private static Component scaled(Component component, double factor) {
    Map<String, Curve> curves = new LinkedHashMap<>();
    component.curves().forEach((name, curve) -> curves.put(name, scaled(curve, factor)));
    return new Component(
        component.id(),
        component.kind(),
        component.nameplate(),
        component.figures(),
        curves,
        component.source());
  }

  private static Curve scaled(Curve curve, double factor) {
    List<Curve.Point> points =
        curve.points().stream()
            .map(point -> new Curve.Point(point.x(), scaled(point.y(), factor)))
            .toList();
    return new Curve(points);
  }

  private static Quantity scaled(Quantity y, double factor) {
    return y.kind().scale() == Scale.TEMPERATURE
        ? y
        : new Quantity(y.value() * factor, y.standardUncertainty() * factor, y.unit(), y.kind());
  }
}
