package kelter.core.vocabulary;

import java.util.Optional;
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
   * @param span the span of a temperature, if it has one of its own
   * @return the figure
   * @throws QuantityFormatException if it cannot be; the message says what can
   */
  public static Quantity require(Quantity figure, Optional<Span> span) {
    QuantityKind kind = figure.kind();
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
