package kelter.core.quantity;

import java.util.Currency;
import java.util.Objects;

/**
 * What is measured: its name, the unit in which it is told by default, and where its zero lies. The
 * kind tells a temperature from a difference of temperatures and a gauge pressure from an absolute
 * one, which the dimension alone does not.
 *
 * @param name the term of the trade or of the standard, for instance {@code flow rate}
 * @param unit the unit in which values are told unless somebody asks for another
 * @param scale where the zero lies
 */
public record QuantityKind(String name, Unit unit, Scale scale) {

  private static final double GREATEST = 1e12;

  /** An annotation of UCUM, which counts as a plain number. */
  private static final String ANY_CURRENCY = "{currency}";

  /** A plain number or a ratio: 50 % is 0.5. */
  public static final QuantityKind RATIO = of("ratio", "1");

  /** A ratio that the trade tells in per cent. */
  public static final QuantityKind PERCENT = of("percentage", "%");

  /** How many like things there are: a whole number. */
  public static final QuantityKind COUNT = of("count", "1");

  /** A length, in mm. */
  public static final QuantityKind LENGTH = of("length", "mm");

  /** A length of a hose, a pipe or a cord, in m. */
  public static final QuantityKind DISTANCE = of("length", "m");

  /** A height or a head of water, in m; it may be written as the pressure of cold water. */
  public static final QuantityKind HEAD = of("head", "m");

  /** An area, in mm2. */
  public static final QuantityKind AREA = of("area", "mm2");

  /** A volume, in L. */
  public static final QuantityKind VOLUME = of("volume", "L");

  /** A mass, in kg. */
  public static final QuantityKind MASS = of("mass", "kg");

  /** A volume flow rate, in L/min. */
  public static final QuantityKind FLOW = of("flow rate", "L/min");

  /** A velocity, in m/s. */
  public static final QuantityKind VELOCITY = of("velocity", "m/s");

  /** A density, in kg/m3. */
  public static final QuantityKind DENSITY = of("density", "kg/m3");

  /** A dynamic viscosity, in mPa.s. */
  public static final QuantityKind VISCOSITY = of("dynamic viscosity", "mPa.s");

  /** A pressure against the surrounding air, in kPa. */
  public static final QuantityKind GAUGE_PRESSURE =
      new QuantityKind("gauge pressure", Unit.of("kPa"), Scale.GAUGE_PRESSURE);

  /** A pressure against vacuum, in kPa. */
  public static final QuantityKind ABSOLUTE_PRESSURE =
      new QuantityKind("absolute pressure", Unit.of("kPa"), Scale.ABSOLUTE_PRESSURE);

  /** A difference of pressures, in kPa. */
  public static final QuantityKind PRESSURE_DIFFERENCE = of("pressure difference", "kPa");

  /** A temperature, in Cel. */
  public static final QuantityKind TEMPERATURE =
      new QuantityKind("temperature", Unit.of("Cel"), Scale.TEMPERATURE);

  /** A difference of temperatures, in K. */
  public static final QuantityKind TEMPERATURE_DIFFERENCE =
      new QuantityKind("temperature difference", Unit.of("K"), Scale.TEMPERATURE_DIFFERENCE);

  /** A rate of heating or cooling, in K/min. */
  public static final QuantityKind HEATING_RATE = of("heating rate", "K/min");

  /** A time, in s. */
  public static final QuantityKind TIME = of("time", "s");

  /** An age or a life, in a (years of 365.25 days). */
  public static final QuantityKind AGE = of("age", "a");

  /** A frequency, in Hz. */
  public static final QuantityKind FREQUENCY = of("frequency", "Hz");

  /** A rotational speed, in 1/min. */
  public static final QuantityKind ROTATIONAL_SPEED = of("rotational speed", "{rev}/min");

  /** A torque, in N.m. */
  public static final QuantityKind TORQUE = of("torque", "N.m");

  /** An electric resistance, in Ohm. */
  public static final QuantityKind RESISTANCE = of("resistance", "Ohm");

  /** An insulation resistance, in MOhm. */
  public static final QuantityKind INSULATION_RESISTANCE = of("insulation resistance", "MOhm");

  /** An electric potential difference, in V. */
  public static final QuantityKind VOLTAGE = of("voltage", "V");

  /** An electric current, in A. */
  public static final QuantityKind CURRENT = of("current", "A");

  /** A power, in W. */
  public static final QuantityKind POWER = of("power", "W");

  /** An energy, in kW.h. */
  public static final QuantityKind ENERGY = of("energy", "kW.h");

  /** A capacitance, in uF. */
  public static final QuantityKind CAPACITANCE = of("capacitance", "uF");

  public QuantityKind {
    Objects.requireNonNull(name);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(scale);
  }

  /**
   * A kind on a scale with a zero of its own.
   *
   * @param name the term of the trade or of the standard
   * @param unitCode the UCUM code of the unit in which values are told
   * @return the kind
   * @throws QuantityFormatException if the unit is not known
   */
  public static QuantityKind of(String name, String unitCode) {
    return new QuantityKind(name, Unit.of(unitCode), Scale.RATIO);
  }

  /** An amount of money in whatever currency, for which {@code {currency}} stands. */
  public static final QuantityKind MONEY = of("amount of money", "{currency}");

  /** An amount of money for each year, in whatever currency. */
  public static final QuantityKind MONEY_PER_YEAR = of("amount of money a year", "{currency}/a");

  /**
   * The same in one currency.
   *
   * @param currency the currency
   * @return this kind told in units of the currency, if it is {@link #MONEY} or {@link
   *     #MONEY_PER_YEAR}; else this kind itself
   */
  public QuantityKind in(Currency currency) {
    return unit.code().contains(ANY_CURRENCY)
        ? of(name, unit.code().replace(ANY_CURRENCY, currency.getCurrencyCode()))
        : this;
  }

  /**
   * Whether it is an amount of money, in whatever or in one currency.
   *
   * @return true if it is
   */
  public boolean isMoney() {
    return unit.code().contains(ANY_CURRENCY) || unit.dimension().hasCurrency();
  }

  /**
   * An amount of money.
   *
   * @param currency the ISO 4217 code
   * @return the kind
   * @throws QuantityFormatException if the currency is not known
   */
  public static QuantityKind money(String currency) {
    return of("amount of money", currency);
  }

  /**
   * Whether what is measured can lie below zero at all. Magnitudes cannot, and neither can the
   * effective values by which voltage and current are told.
   *
   * @return false for kinds that are known to be never negative
   */
  public boolean mayBeNegative() {
    return switch (name) {
      case "resistance",
          "insulation resistance",
          "voltage",
          "current",
          "power",
          "energy",
          "capacitance",
          "frequency",
          "rotational speed",
          "flow rate",
          "volume",
          "mass",
          "density",
          "dynamic viscosity",
          "length",
          "area",
          "time",
          "age",
          "absolute pressure" ->
          false;
      default -> true;
    };
  }

  /**
   * What no figure of this kind exceeds on any appliance or its supply, far above what is ever
   * written: beyond it is a slip of the pen. Common practice, no source.
   *
   * @return the greatest size, in the coherent SI unit; 1e12 of the unit of the kind where nothing
   *     is known of it
   */
  public double greatest() {
    return switch (name) {
      case "resistance", "insulation resistance" -> 1e15;
      case "voltage", "current", "length", "head", "density", "torque" -> 1e5;
      case "power", "mass", "area", "volume" -> 1e7;
      case "energy" -> 1e15;
      case "capacitance" -> 1e3;
      case "frequency" -> 1e11;
      case "rotational speed", "velocity" -> 1e4;
      case "flow rate" -> 1e3;
      case "dynamic viscosity" -> 1e6;
      case "gauge pressure", "absolute pressure", "pressure difference" -> 1e8;
      case "temperature", "temperature difference", "heating rate" -> 1e4;
      case "time", "age" -> 1e11;
      case "count" -> 1e9;
      default -> GREATEST * unit.factor();
    };
  }

  /**
   * The same told in another unit.
   *
   * @param other the unit in which values are told
   * @return the kind; this one where it is a plain number or a ratio, or where the unit does not
   *     fit
   */
  public QuantityKind toldIn(Unit other) {
    return accepts(other) && !unit.dimension().equals(Dimension.ONE)
        ? new QuantityKind(name, other, scale)
        : this;
  }

  /**
   * Whether a value of this kind may be given in a unit.
   *
   * @param other the unit
   * @return true if the dimensions are the same
   */
  public boolean accepts(Unit other) {
    return unit.isCompatibleWith(other);
  }

  /**
   * The value in the coherent SI unit. A temperature is shifted to kelvin, a difference of
   * temperatures is only scaled.
   *
   * @param value a value in the unit given
   * @param in the unit of the value
   * @return the value in the coherent SI unit
   */
  public double toSi(double value, Unit in) {
    return scale == Scale.TEMPERATURE ? in.toSi(value) : value * in.factor();
  }

  /**
   * The value in a unit.
   *
   * @param si a value in the coherent SI unit
   * @param in the unit wanted
   * @return the value in that unit
   */
  public double fromSi(double si, Unit in) {
    return scale == Scale.TEMPERATURE ? in.fromSi(si) : si / in.factor();
  }
}
