package kelter.hydraulics.water;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * Water at a temperature, under the standard atmosphere or, where that would let it boil, at its
 * vapour pressure.
 *
 * <p>It holds from 0 to 100 °C for clean water. Up to 10 K beyond either end it runs on smoothly
 * for the sake of uncertain temperatures, farther it refuses. Detergent and salt change density and
 * viscosity by less than 1 % in a washing machine; air bubbles change more and belong to the fault
 * models.
 *
 * @param temperature the temperature in K
 * @param density the density in kg/m3
 * @param viscosity the dynamic viscosity in Pa s
 * @param vapourPressure the absolute pressure at which it boils, in Pa
 * @param heatCapacity the specific heat at constant pressure, in J/(kg K)
 */
public record Water(
    double temperature,
    double density,
    double viscosity,
    double vapourPressure,
    double heatCapacity) {

  /** The standard atmosphere, 101 325 Pa, exact by definition (10th CGPM, 1954). */
  public static final double STANDARD_ATMOSPHERE = 101_325;

  /** 0 °C, in K. */
  public static final double FREEZING = 273.15;

  /** What the temperature may be. */
  public static final Parameter TEMPERATURE =
      temperature("temperature", "temperature of the water");

  /**
   * A temperature of water, from freezing to boiling.
   *
   * @param id the word for it
   * @param title what it is, for a person
   * @return the parameter, which must be given
   */
  public static Parameter temperature(String id, String title) {
    return Parameter.required(id, title, QuantityKind.TEMPERATURE, FREEZING, FREEZING + 100);
  }

  /**
   * The properties by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "water-properties",
        "Density, viscosity, vapour pressure and specific heat of water",
        "density and specific heat by IF97 region 1, vapour pressure by IF97 region 4, viscosity by"
            + " R12-08",
        "0 to 100 Cel, clean water at 101.325 kPa (at its vapour pressure where that is higher);"
            + " refused outside",
        Source.published("IAPWS R7-97(2012), equations (7) and (30); IAPWS R12-08, equation (10)"),
        List.of(TEMPERATURE),
        List.of(
            new Output("density", "density", QuantityKind.DENSITY),
            new Output("viscosity", "dynamic viscosity", QuantityKind.VISCOSITY),
            new Output("vapour-pressure", "vapour pressure", QuantityKind.ABSOLUTE_PRESSURE),
            new Output(
                "heat-capacity",
                "specific heat at constant pressure",
                QuantityKind.of("specific heat", "kJ/(kg.K)"))),
        List.of(),
        parameters -> {
          Water water = at(parameters[0]);
          return new double[] {
            water.density, water.viscosity, water.vapourPressure, water.heatCapacity
          };
        });
  }

  /**
   * Water at a temperature.
   *
   * @param temperature the temperature in K, 273.15 to 373.15
   * @return its properties
   * @throws IllegalArgumentException if the temperature is not finite or more than 10 K outside
   */
  public static Water at(double temperature) {
    double kelvin = TEMPERATURE.check(temperature);
    double vapour = Iapws97Region4.vapourPressure(kelvin);
    double pressure = Math.max(STANDARD_ATMOSPHERE, vapour);
    double density = Iapws97Region1.density(kelvin, pressure);
    return new Water(
        kelvin,
        density,
        Iapws2008Viscosity.viscosity(density, kelvin),
        vapour,
        Iapws97Region1.heatCapacity(kelvin, pressure));
  }

  /**
   * Kinematic viscosity.
   *
   * @return the viscosity divided by the density, in m2/s
   */
  public double kinematicViscosity() {
    return viscosity / density;
  }

  /**
   * The pressure under a height of this water.
   *
   * @param head the height in m
   * @return the pressure difference in Pa
   */
  public double pressure(double head) {
    return density * StandardGravity.G * head;
  }

  /**
   * The height of this water that a pressure holds up.
   *
   * @param pressureDifference the pressure difference in Pa
   * @return the head in m
   */
  public double head(double pressureDifference) {
    return pressureDifference / (density * StandardGravity.G);
  }
}
