package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

class WrongMachinesTest {

  private static Appliance with(Map<String, Curve> curves) {
    return new Appliance(
        "machine",
        "",
        "",
        "",
        Optional.empty(),
        Nameplate.UNREADABLE,
        List.of(
            new Component(
                "part",
                "part",
                Nameplate.UNREADABLE,
                Map.of(),
                curves,
                Source.fromMemory("a test"))));
  }

  private static Curve curve(QuantityKind yKind, String unit) {
    return new Curve(
        List.of(
            new Curve.Point(
                Quantity.of(0, "L/min", QuantityKind.FLOW), Quantity.of(2, unit, yKind)),
            new Curve.Point(
                Quantity.of(20, "L/min", QuantityKind.FLOW), Quantity.of(1, unit, yKind))));
  }

  @Test
  void everyValueOfACurveIsScaledAndItsAxisIsNot() {
    Curve before = curve(QuantityKind.HEAD, "m");
    Curve after =
        WrongCurves.scaled(with(Map.of("head", before)), 1.1)
            .components()
            .get(0)
            .curve("head")
            .orElseThrow();

    assertArrayEquals(new double[] {2.2, 1.1}, after.ySi(), 1e-12);
    assertArrayEquals(before.xSi(), after.xSi());
  }

  @Test
  void aTemperatureIsNotScaled() {
    Curve before = curve(QuantityKind.TEMPERATURE, "Cel");

    assertEquals(with(Map.of("t", before)), WrongCurves.scaled(with(Map.of("t", before)), 1.1));
  }

  @Test
  void whatCannotBeScaledIsRefused() {
    Appliance machine = with(Map.of("head", curve(QuantityKind.HEAD, "m")));

    assertThrows(IllegalArgumentException.class, () -> WrongCurves.scaled(machine, 0));
    assertThrows(IllegalArgumentException.class, () -> WrongCurves.scaled(machine, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> WrongCurves.scaled(with(Map.of()), 1.1));
  }
}
