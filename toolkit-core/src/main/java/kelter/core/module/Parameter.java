package kelter.core.module;

import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.vocabulary.Ids;

/**
 * What a calculation takes.
 *
 * @param id the word on the command line
 * @param title the words for a person
 * @param kind what it measures; {@link QuantityKind#RATIO} for a choice
 * @param low the least value allowed, in the coherent SI unit
 * @param high the greatest value allowed, in the coherent SI unit
 * @param choices the words allowed if it is a choice and not a figure; its value is then the place
 *     of the word, from 0
 * @param usual what is taken, and told, where nothing is given, as one would write it; empty if it
 *     must be given
 */
public record Parameter(
    String id,
    String title,
    QuantityKind kind,
    double low,
    double high,
    List<String> choices,
    Optional<String> usual) {

  /**
   * The share of the width of the range that a law still takes beyond an end, so that an uncertain
   * figure can be varied there; dimensionless, own choice.
   */
  private static final double MARGIN = 0.1;

  /** The share of a lower limit above zero below which a law takes nothing; own choice. */
  private static final double LEAST_SHARE = 0.5;

  /**
   * Checks the limits.
   *
   * @throws IllegalArgumentException if the limits are out of order
   */
  public Parameter {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(usual);
    choices = List.copyOf(choices);
    if (!(low <= high)) {
      throw new IllegalArgumentException(id + ": the least value is at most the greatest");
    }
  }

  /**
   * A figure that must be given.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param kind what it measures
   * @param low the least value allowed, in the coherent SI unit
   * @param high the greatest value allowed, in the coherent SI unit
   * @return the parameter
   */
  public static Parameter required(
      String id, String title, QuantityKind kind, double low, double high) {
    return new Parameter(id, title, kind, low, high, List.of(), Optional.empty());
  }

  /**
   * A figure that may be left out.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param kind what it measures
   * @param low the least value allowed, in the coherent SI unit
   * @param high the greatest value allowed, in the coherent SI unit
   * @param usual what is taken where nothing is given, as one would write it
   * @return the parameter
   */
  public static Parameter optional(
      String id, String title, QuantityKind kind, double low, double high, String usual) {
    return new Parameter(id, title, kind, low, high, List.of(), Optional.of(usual));
  }

  /**
   * A choice.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @param choices the words allowed
   * @param usual the word that is taken where nothing is given
   * @return the parameter
   */
  public static Parameter choice(String id, String title, List<String> choices, String usual) {
    return new Parameter(
        id, title, QuantityKind.RATIO, 0, choices.size() - 1.0, choices, Optional.of(usual));
  }

  /**
   * The same figure where it may be left out.
   *
   * @param usually what is taken where nothing is given, as one would write it
   * @return the parameter
   */
  public Parameter optional(String usually) {
    return new Parameter(id, title, kind, low, high, choices, Optional.of(usually));
  }

  /**
   * What is expected.
   *
   * @return the kind and the limits; where there is no limit, what the kind can be on any appliance
   */
  Expected expected() {
    Expected any = Expected.of(kind);
    return new Expected(
        kind,
        Double.isInfinite(low) ? any.least() : low,
        Double.isInfinite(high) ? any.most() : high);
  }

  /** Whether it is a whole number of things. */
  boolean isCount() {
    return kind.name().equals(QuantityKind.COUNT.name());
  }

  /**
   * The same in one currency.
   *
   * @param currency the currency
   * @return the parameter; this one where it is no amount of money
   */
  Parameter in(Currency currency) {
    return new Parameter(id, title, kind.in(currency), low, high, choices, usual);
  }

  /**
   * The same told in another unit.
   *
   * @param unit a unit that fits the kind
   * @return the parameter
   */
  Parameter toldIn(Unit unit) {
    return new Parameter(id, title, kind.toldIn(unit), low, high, choices, usual);
  }

  /**
   * Reads a figure for it; of money a plain number will do. Limits are not looked at.
   *
   * @param text what a person wrote
   * @return the figure in the coherent SI unit, with its uncertainty
   * @throws QuantityFormatException if it cannot be read; the message says what can
   */
  public InputQuantity read(String text) {
    return written(text).quantity();
  }

  /** Reads a figure for it together with its unit. */
  InputText.Written written(String text) {
    if (!kind.isMoney() || Money.currencyIn(text).isPresent()) {
      return InputText.read(text, expected());
    }
    String plain = text.replace(kind.unit().symbol(), "").replace(kind.unit().code(), "");
    InputQuantity amount = InputText.parse(plain, QuantityKind.RATIO);
    return new InputText.Written(amount.times(kind.unit().factor()), kind.unit());
  }

  /**
   * Takes a figure that is written like a limit, as it is printed, for the limit: rounding may have
   * moved it outside.
   *
   * @param figure a figure in the coherent SI unit
   * @return the limit with the errors of the figure, or the figure itself if it is another
   */
  InputQuantity atLimit(InputQuantity figure) {
    double end = figure.value() < low ? low : high;
    boolean outside = figure.value() < low || figure.value() > high;
    return outside && read(Quantity.ofSi(end, 0, kind).display()).value() == figure.value()
        ? new InputQuantity(end, figure.terms())
        : figure;
  }

  /**
   * Checks a figure that a law is to take. A tenth of the width of the range beyond either end is
   * let through, where laws run on smoothly, but nothing that changes the sign of a figure which is
   * above zero.
   *
   * @param si the figure in the coherent SI unit
   * @return the figure
   * @throws IllegalArgumentException if it is not a finite number or farther outside
   */
  public double check(double si) {
    double slack = MARGIN * (high - low);
    double least = low > 0 ? Math.max(low - slack, LEAST_SHARE * low) : low - slack;
    if (!(si >= least && si <= high + slack)) {
      throw new IllegalArgumentException(
          "%s: %s is outside %s to %s".formatted(id, told(si), told(low), told(high)));
    }
    return si;
  }

  private String told(double si) {
    boolean belowZero = kind.equals(QuantityKind.TEMPERATURE) && si < 0;
    return Double.isFinite(si) && !belowZero
        ? Quantity.ofSi(si, 0, kind).display()
        : si + " (not a possible value)";
  }
}
