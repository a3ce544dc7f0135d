package kelter.hydraulics.level;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.water.Water;

/**
 * The pressure in an air trap by the height of the water outside, and back: the air is shut in when
 * the water reaches the mouth of the bell, is compressed (Boyle), and the water rises in the bell
 * until p = ρ g (h − x) with (p_air + p) (L − x) = p_air L. L is the volume of bell, tube and
 * sensor divided by the area of the bell.
 *
 * <p>It holds at constant temperature and for water that has not risen beyond the bell into the
 * tube. Air that warms by 10 K expands by 3 %, and leaves through the mouth before the pressure can
 * rise by much.
 *
 * <p>Source: R. Boyle 1662 and hydrostatics; 1 mm of water is 9.80665 Pa by convention (ISO
 * 80000-4, conventional millimetre of water).
 */
public final class AirTrap {

  private static final Parameter HEIGHT =
      Parameter.required("height", "water above the mouth of the bell", QuantityKind.LENGTH, 0, 2);
  private static final Parameter COLUMN =
      Parameter.required(
          "air-column",
          "volume of bell, tube and sensor divided by the area of the bell",
          QuantityKind.LENGTH,
          0,
          2);
  private static final Parameter AIR =
      Parameter.required(
          "air-pressure", "pressure of the air", QuantityKind.ABSOLUTE_PRESSURE, 50_000, 110_000);
  private static final Parameter PRESSURE =
      Parameter.required(
          "pressure", "pressure in the trap", QuantityKind.GAUGE_PRESSURE, 0, 20_000);

  private static final Source SOURCE =
      Source.fromMemory("Boyle 1662 and hydrostatics, as in any handbook of physics");

  private AirTrap() {}

  /**
   * The pressure by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation pressureByHeightCalculation() {
    return new Calculation(
        "air-trap-pressure",
        "Pressure at the level sensor by the height of the water",
        "pressure = density g (height - x); (air-pressure + pressure) (air-column - x) = air-pressure"
            + " air-column",
        "Constant temperature; the water stays in the bell",
        SOURCE,
        List.of(
            HEIGHT,
            COLUMN.optional("100 mm"),
            Water.TEMPERATURE.optional("20 Cel"),
            AIR.optional("101.325 kPa")),
        List.of(
            new Output("pressure", "pressure in the trap", QuantityKind.GAUGE_PRESSURE),
            new Output("rise", "rise of the water in the bell", QuantityKind.LENGTH)),
        List.of(Caution.HOT_WATER),
        p -> {
          double airHead = Water.at(p[2]).head(AIR.check(p[3]));
          double height = Math.max(0, HEIGHT.check(p[0]));
          double rise = rise(height, Math.max(0, COLUMN.check(p[1])), airHead);
          return new double[] {Water.at(p[2]).pressure(height - rise), rise};
        });
  }

  /**
   * The height by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation heightByPressureCalculation() {
    return new Calculation(
        "air-trap-height",
        "Height of the water by the pressure at the level sensor (trip and reset points)",
        "height = pressure / (density g) + air-column pressure / (air-pressure + pressure)",
        "Constant temperature; the water stays in the bell",
        SOURCE,
        List.of(
            PRESSURE,
            COLUMN.optional("100 mm"),
            Water.TEMPERATURE.optional("20 Cel"),
            AIR.optional("101.325 kPa")),
        List.of(new Output("height", "water above the mouth of the bell", QuantityKind.LENGTH)),
        List.of(),
        p ->
            new double[] {
              height(
                  Math.max(0, PRESSURE.check(p[0])),
                  Math.max(0, COLUMN.check(p[1])),
                  Water.at(p[2]),
                  AIR.check(p[3]))
            });
  }

  /**
   * How far the water rises in the bell.
   *
   * @param height the height of the water above the mouth in m, not negative
   * @param column the volume of the air at the start divided by the area of the bell, in m, not
   *     negative
   * @param airHead the pressure of the air as a head of this water, in m, above 0
   * @return the rise in m
   */
  public static double rise(double height, double column, double airHead) {
    // (P + h - x)(L - x) = P L, the smaller root in the form that stays exact for small h.
    double sum = airHead + height + column;
    double product = height * column;
    return 2 * product / (sum + Math.sqrt(sum * sum - 4 * product));
  }

  /**
   * The height of the water.
   *
   * @param pressure the gauge pressure in the trap in Pa, not negative
   * @param column the volume of the air at the start divided by the area of the bell, in m
   * @param water the water
   * @param airPressure the absolute pressure of the air in Pa, above 0
   * @return the height above the mouth in m
   */
  public static double height(double pressure, double column, Water water, double airPressure) {
    return water.head(pressure) + column * pressure / (airPressure + pressure);
  }
}
