package kelter.core.quantity;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A unit of measure, by its UCUM code.
 *
 * <p>A value x in this unit is {@code x * factor + shift} in the coherent SI unit of the same
 * dimension. The shift is zero but for {@code Cel} and {@code [degF]}.
 *
 * @param code the UCUM code, for instance {@code L/min}
 * @param dimension the dimension
 * @param factor the size of one unit in the coherent SI unit, finite and greater than zero
 * @param shift what is added after scaling, in the coherent SI unit
 */
public record Unit(String code, Dimension dimension, double factor, double shift) {

  /** The unit of a plain number, as a ratio: 50 % is 0.5. */
  public static final Unit ONE = new Unit("1", Dimension.ONE, 1, 0);

  /**
   * Checks the factor.
   *
   * @throws IllegalArgumentException if the factor or the shift is not finite, or the factor not
   *     greater than zero
   */
  public Unit {
    Objects.requireNonNull(code);
    Objects.requireNonNull(dimension);
    if (!(factor > 0) || Double.isInfinite(factor) || !Double.isFinite(shift)) {
      throw new IllegalArgumentException("unit " + code + ": factor must be finite and above zero");
    }
  }

  /**
   * The symbols of which codes are composed; metric ones take prefixes.
   *
   * @return UCUM symbols, in alphabetical order
   */
  public static List<String> symbols() {
    return UcumParser.symbols().stream().sorted().toList();
  }

  /**
   * Reads a UCUM code. Spellings of the trade are not taken here, see {@link QuantityParser}.
   *
   * @param code a UCUM code such as {@code kPa}, {@code L/min} or {@code kW.h}
   * @return the unit
   * @throws QuantityFormatException if the code is not known
   */
  public static Unit of(String code) {
    Optional<Unit> unit = UcumParser.parse(code);
    if (unit.isEmpty()) {
      throw new QuantityFormatException(
          "unit '" + code + "' is not known" + Spellings.suggestion(code));
    }
    return unit.get();
  }

  /**
   * Converts a value to the coherent SI unit.
   *
   * @param value a value in this unit, on a scale with the zero of this unit
   * @return the same in the coherent SI unit
   */
  public double toSi(double value) {
    return value * factor + shift;
  }

  /**
   * Converts a value from the coherent SI unit.
   *
   * @param si a value in the coherent SI unit
   * @return the same in this unit, on a scale with the zero of this unit
   */
  public double fromSi(double si) {
    return (si - shift) / factor;
  }

  /**
   * A unit of pressure as the head of cold water that has this pressure, by the convention of the
   * metre of water: 9.80665 kPa (UCUM 2.2, {@code m[H2O]}). Water of 60 Cel is 1.7 % lighter.
   *
   * @return the unit of a length, with the code of the pressure
   */
  Unit asHead() {
    return new Unit(
        code, QuantityKind.HEAD.unit().dimension(), factor / Unit.of("m[H2O]").factor(), 0);
  }

  /**
   * Whether values can be converted between two units.
   *
   * @param other the other unit
   * @return true if both have the same dimension
   */
  public boolean isCompatibleWith(Unit other) {
    return dimension.equals(other.dimension);
  }

  /**
   * How a person in the trade writes this unit.
   *
   * @return for instance {@code ohm}, {@code °C}, {@code L/min}; empty for a plain number
   */
  public String symbol() {
    return Spellings.symbol(code);
  }

  /** Whether two are equal; the equality that Java makes for records takes 2 ms of a start. */
  boolean isSameAs(Unit other) {
    return this == other
        || factor == other.factor && shift == other.shift && code.equals(other.code);
  }
}
