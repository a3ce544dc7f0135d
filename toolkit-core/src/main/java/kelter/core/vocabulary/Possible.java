package kelter.core.vocabulary;

import java.util.Optional;
import kelter.core.quantity.Dimension;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;

/**
 * What can be at all, whatever the machine: a figure beyond it is a slip, of the pen or of the
 * leads, and no measurement. It is settled by the kind of quantity. Magnitudes, effective values of
 * voltage and current among them, are not negative; differences, gauge pressures, heads and ratios
 * may be. Temperatures have a span, of their own or the one of parts of a machine.
 */
public final class Possible {

  /** What parts of a machine, their windings and heaters switched off, can have, K. */
  private static final Span PARTS = new Span(233.15, 473.15);

  private static final Unit CELSIUS = Unit.of("Cel");

  private Possible() {}

  /**
   * Refuses what cannot be.
   *
   * @param figure what somebody wrote
   * @param kind what is expected
   * @param span the span of a temperature, if it has one of its own
   * @return the figure
   * @throws QuantityFormatException if it is of another kind or cannot be; the message says what
   *     can
   */
  public static Quantity require(Quantity figure, QuantityKind kind, Optional<Span> span) {
    requireKind(figure, kind);
    if (kind.scale() == Scale.TEMPERATURE) {
      requireWithin(figure, span.orElse(PARTS));
    } else if (figure.si() < 0 && !kind.mayBeNegative()) {
      throw new QuantityFormatException(
          told(figure)
              + " cannot be: "
              + QuantityFormat.withArticle(kind.name())
              + " is never negative; a slip of the pen, or the leads the wrong way round");
    }
    return figure;
  }

  /**
   * Refuses a quantity of another kind, be it of the same dimension: a difference for a
   * temperature, an absolute pressure for a gauge pressure, a resistance for an insulation
   * resistance. A ratio and a percentage are one kind of number.
   *
   * @param figure what somebody gave
   * @param expected what is expected
   * @return the figure
   * @throws QuantityFormatException if it is of another kind; the message says what is expected
   */
  public static Quantity requireKind(Quantity figure, QuantityKind expected) {
    QuantityKind kind = figure.kind();
    if (kind == expected) {
      return figure;
    }
    boolean same = kind.name().equals(expected.name()) && kind.scale() == expected.scale();
    if (!same || !expected.accepts(figure.unit())) {
      Quantity told = new Quantity(figure.value(), 0, figure.unit(), expected);
      if (!told.unit().dimension().equals(Dimension.ONE)) {
        throw new QuantityFormatException(
            QuantityFormat.withArticle(expected.name())
                + " is expected, not "
                + QuantityFormat.withArticle(kind.name()));
      }
    }
    return figure;
  }

  /**
   * Refuses what is below zero.
   *
   * @param figure what somebody gave
   * @param written how it was written, for the message
   * @return the figure
   * @throws IllegalArgumentException if it is negative
   */
  public static Quantity requireNotNegative(Quantity figure, String written) {
    if (figure.si() < 0) {
      throw new IllegalArgumentException("'" + written + "' is negative; it must not be");
    }
    return figure;
  }

  private static void requireWithin(Quantity temperature, Span span) {
    if (!(temperature.si() >= span.low() && temperature.si() <= span.high())) {
      throw new QuantityFormatException(
          told(temperature)
              + " cannot be: "
              + celsius(span.low())
              + " to "
              + celsius(span.high())
              + " Cel is possible here; a slip of the pen, or the wrong unit");
    }
  }

  private static String celsius(double kelvin) {
    return QuantityFormat.plain(QuantityKind.TEMPERATURE.fromSi(kelvin, CELSIUS));
  }

  private static String told(Quantity figure) {
    return (QuantityFormat.plain(figure.value()) + " " + figure.unit().code()).strip();
  }
}
