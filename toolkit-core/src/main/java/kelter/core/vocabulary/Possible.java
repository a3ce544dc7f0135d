package kelter.core.vocabulary;

import java.util.Optional;
import kelter.core.quantity.Dimension;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;

/**
 * What can be at all, whatever the machine: a figure beyond it is a slip, of the pen or of the
 * leads, and no measurement. It is settled by the kind of quantity. Magnitudes, effective values of
 * voltage and current among them, are not negative; differences, gauge pressures, heads and ratios
 * may be. Nothing exceeds what its kind can be on any appliance ({@link QuantityKind#greatest}),
 * nor its own span where it has one. Temperatures have a span, of their own or the one of parts of
 * a machine. A count is a whole number.
 */
public final class Possible {

  /** What parts of a machine, their windings and heaters switched off, can have, K. */
  private static final Span PARTS = new Span(233.15, 473.15);

  private Possible() {}

  /**
   * Refuses what cannot be.
   *
   * @param figure what somebody wrote
   * @param kind what is expected
   * @param span everything that it can be, if it has a span of its own
   * @return the figure
   * @throws QuantityFormatException if it is of another kind or cannot be; the message says what
   *     can
   */
  public static Quantity require(Quantity figure, QuantityKind kind, Optional<Span> span) {
    requireKind(figure, kind);
    if (kind.scale() == Scale.TEMPERATURE) {
      return within(kind, span.orElse(PARTS)).require(figure);
    }
    if (figure.si() < 0 && !kind.mayBeNegative()) {
      throw new QuantityFormatException(
          told(figure)
              + " cannot be: "
              + QuantityFormat.withArticle(kind.name())
              + " is never negative; a slip of the pen, or the leads the wrong way round");
    }
    if (isCount(kind) && figure.si() != Math.rint(figure.si())) {
      throw new QuantityFormatException(told(figure) + " cannot be: it is a whole number");
    }
    return (span.isPresent() ? within(kind, span.get()) : Expected.of(kind)).require(figure);
  }

  private static boolean isCount(QuantityKind kind) {
    return kind.name().equals(QuantityKind.COUNT.name());
  }

  /**
   * What a figure is expected to be.
   *
   * @param kind its kind
   * @param span everything that it can be
   * @return that
   */
  public static Expected within(QuantityKind kind, Span span) {
    return new Expected(kind, span.low(), span.high());
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

  private static String told(Quantity figure) {
    return (QuantityFormat.plain(figure.value()) + " " + figure.unit().symbol()).strip();
  }
}
