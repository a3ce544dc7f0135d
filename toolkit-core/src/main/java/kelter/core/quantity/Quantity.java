package kelter.core.quantity;

import java.util.Objects;

/**
 * A value with its unit, its kind and its standard uncertainty.
 *
 * @param value the value in the unit, finite
 * @param standardUncertainty the standard uncertainty (JCGM 100:2008, 2.3.1) in the unit, as a
 *     difference; 0 if none is stated
 * @param unit the unit in which the value was given
 * @param kind what is measured
 */
public record Quantity(double value, double standardUncertainty, Unit unit, QuantityKind kind) {

  /** What rounding may leave below absolute zero when units are converted, in K or Pa. */
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the value against its kind; a negative zero becomes zero.
   *
   * @throws QuantityFormatException if a figure is not finite, the uncertainty is negative, the
   *     unit does not fit the kind, or the value lies below the zero of an absolute scale
   */
  public Quantity {
    Objects.requireNonNull(unit);
    Objects.requireNonNull(kind);
    value += 0.0;
    standardUncertainty += 0.0;
    if (!Double.isFinite(value)) {
      throw new QuantityFormatException(
          QuantityFormat.withArticle(kind.name()) + " must be a finite number");
    }
    if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
      throw new QuantityFormatException("an uncertainty must be finite and not negative");
    }
    if (!kind.accepts(unit)) {
      throw new QuantityFormatException(
          "%s is expected, for instance in %s, not a value in %s"
              .formatted(QuantityFormat.withArticle(kind.name()), kind.unit().code(), unit.code()));
    }
    requireAboveAbsoluteZero(value, unit, kind);
  }

  private static void requireAboveAbsoluteZero(double value, Unit unit, QuantityKind kind) {
    boolean absolute = kind.scale() == Scale.TEMPERATURE || kind.scale() == Scale.ABSOLUTE_PRESSURE;
    if (absolute && kind.toSi(value, unit) < -ROUNDING) {
      throw new QuantityFormatException(
          "%s %s is below absolute zero".formatted(QuantityFormat.plain(value), unit.symbol()));
    }
  }

  /**
   * A value without a stated uncertainty.
   *
   * @param value the value in the unit
   * @param unitCode the UCUM code of the unit
   * @param kind what is measured
   * @return the quantity
   * @throws QuantityFormatException as the constructor does, or if the unit is not known
   */
  public static Quantity of(double value, String unitCode, QuantityKind kind) {
    return new Quantity(value, 0, Unit.of(unitCode), kind);
  }

  /**
   * A value given in the coherent SI unit, told in the unit of its kind.
   *
   * @param si the value in the coherent SI unit
   * @param standardUncertaintySi the standard uncertainty in the coherent SI unit
   * @param kind what is measured
   * @return the quantity in the unit of its kind
   * @throws QuantityFormatException as the constructor does
   */
  public static Quantity ofSi(double si, double standardUncertaintySi, QuantityKind kind) {
    return new Quantity(
        kind.fromSi(si, kind.unit()),
        standardUncertaintySi / kind.unit().factor(),
        kind.unit(),
        kind);
  }

  /**
   * The value in the coherent SI unit.
   *
   * @return for instance kelvin for a temperature, m3/s for a flow rate
   */
  public double si() {
    return kind.toSi(value, unit);
  }

  /**
   * The standard uncertainty in the coherent SI unit.
   *
   * @return the standard uncertainty, as a difference
   */
  public double standardUncertaintySi() {
    return standardUncertainty * unit.factor();
  }

  /**
   * The same quantity in another unit.
   *
   * @param other a unit that fits the kind
   * @return the quantity in that unit
   * @throws QuantityFormatException if the unit does not fit the kind
   */
  public Quantity in(Unit other) {
    if (other.isSameAs(unit)) {
      return this;
    }
    return new Quantity(
        kind.fromSi(si(), other), standardUncertaintySi() / other.factor(), other, kind);
  }

  /**
   * The text of this quantity in UCUM units, which {@link QuantityParser} reads back exactly.
   *
   * @return for instance {@code 26.45 Ohm}
   */
  public String format() {
    return QuantityFormat.exact(this);
  }

  /**
   * The text of this quantity for a person: rounded, in the trade's spelling.
   *
   * @return for instance {@code 26.45 ohm}, or {@code 26.45 ohm ± 0.12} with the standard
   *     uncertainty expanded by a coverage factor of 2
   */
  public String display() {
    return QuantityFormat.display(this);
  }
}
