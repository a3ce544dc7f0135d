package kelter.core.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Scale;
import kelter.core.uncertainty.Shape;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Possible;
import kelter.core.vocabulary.Span;

/** Reads a reading as a person writes it, and holds readings against what was read. */
public final class ReadingParser {

  private static final Set<String> OVER_RANGE =
      Set.of(
          "ol",
          "o.l",
          "o.l.",
          "0l",
          "0.l",
          "0.l.",
          "ofl",
          "open",
          "overload",
          "over load",
          "over range",
          "overrange",
          "over-range",
          "inf",
          "infinite",
          "infinity",
          "∞");

  private ReadingParser() {}

  /**
   * Reads a reading.
   *
   * @param text what a person wrote: a quantity; {@code < 0.1 ohm} or {@code > 200 MOhm} for a
   *     value beyond what the instrument tells; {@code OL}, {@code open}, {@code infinite} or
   *     {@code over range}; {@code yes} or {@code no}; or a word on the scale of the observable
   * @param observable what was read
   * @return the reading
   * @throws QuantityFormatException if the text is not a reading of that observable; the message
   *     says what would be; or if it is one that cannot be ({@link Possible})
   */
  public static Reading parse(String text, Observable observable) {
    return switch (observable.type()) {
      case QUANTITY -> require(figure(text.strip(), observable), observable);
      case YES_NO -> yesNo(text.strip());
      case GRADE -> grade(text.strip(), observable.grades());
    };
  }

  /**
   * Refuses a reading that cannot be one of an observable.
   *
   * @param reading the reading
   * @param observable what was read
   * @return the reading
   * @throws QuantityFormatException if it is of another type or kind, a grade that is not on the
   *     scale, or one that cannot be ({@link Possible}); the message says what would be
   */
  public static Reading require(Reading reading, Observable observable) {
    switch (observable.type()) {
      case QUANTITY -> requireFigure(reading, observable);
      case YES_NO -> {
        if (!(reading instanceof Reading.YesNo)) {
          throw neitherYesNorNo(reading.display());
        }
      }
      case GRADE -> requireGrade(reading, observable.grades());
    }
    return reading;
  }

  private static void requireFigure(Reading reading, Observable observable) {
    if (reading instanceof Reading.Value value) {
      Possible.require(value.quantity(), observable.kind(), taken(observable));
    } else if (reading instanceof Reading.Below below) {
      Possible.require(below.limit(), observable.kind(), taken(observable));
    } else if (reading instanceof Reading.Above above) {
      Possible.require(above.limit(), observable.kind(), Optional.empty());
    } else if (!(reading instanceof Reading.OverRange)) {
      throw QuantityParser.notANumber(reading.display(), observable.kind());
    }
  }

  /**
   * What is taken as a reading: as much again beyond either end of the span, where a machine that
   * is out of the ordinary may lie (own choice); of what is told in decades, all that its kind can
   * be.
   */
  private static Optional<Span> taken(Observable observable) {
    Span span = observable.span();
    if (observable.logarithmic()) {
      return Optional.empty();
    }
    double width = span.high() - span.low();
    double least = observable.kind().mayBeNegative() ? span.low() - width : 0;
    return observable.kind().scale() == Scale.TEMPERATURE
        ? Optional.of(span)
        : Optional.of(new Span(least, span.high() + width));
  }

  private static void requireGrade(Reading reading, List<String> words) {
    int rank = words.indexOf(reading.display());
    if (!(reading instanceof Reading.Grade grade) || rank < 0) {
      throw noGrade(reading.display(), words);
    }
    if (grade.rank() != rank) {
      throw new QuantityFormatException(
          "'%s' has rank %s of %s, counted from 0, not %s"
              .formatted(grade.word(), rank, String.join(", ", words), grade.rank()));
    }
  }

  private static Reading figure(String text, Observable observable) {
    QuantityKind kind = observable.kind();
    Expected expected = Possible.within(kind, observable.span());
    if (isOverRange(text.toLowerCase(Locale.ROOT), kind)) {
      return new Reading.OverRange();
    }
    if (text.startsWith("<") || text.startsWith("≤")) {
      return new Reading.Below(QuantityParser.parse(text.substring(1), expected));
    }
    if (text.startsWith(">") || text.startsWith("≥")) {
      return new Reading.Above(QuantityParser.parse(text.substring(1), expected));
    }
    QuantityParser.Parsed parsed = QuantityParser.parsePart(text, expected);
    Shape shape = parsed.covered() ? Shape.NORMAL : Shape.RECTANGULAR;
    return new Reading.Value(parsed.quantity(), parsed.resolution(), shape);
  }

  /** A zero for an O is a slip of the finger, but of a volume it is nought litres. */
  private static boolean isOverRange(String text, QuantityKind kind) {
    boolean volume = kind.accepts(QuantityKind.VOLUME.unit());
    return OVER_RANGE.contains(text) && !(volume && text.startsWith("0"));
  }

  private static Reading yesNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "y", "true" -> new Reading.YesNo(true);
      case "no", "n", "false" -> new Reading.YesNo(false);
      default -> throw neitherYesNorNo(text);
    };
  }

  private static QuantityFormatException neitherYesNorNo(String text) {
    return new QuantityFormatException("'" + text + "' is neither yes nor no");
  }

  private static Reading grade(String text, List<String> words) {
    List<String> spoken = words.stream().map(ReadingParser::spoken).toList();
    int rank = spoken.indexOf(spoken(text));
    if (rank >= 0) {
      return new Reading.Grade(words.get(rank), rank);
    }
    throw noGrade(text, words);
  }

  /** A grade as it is spoken: half-full and half full are one. */
  private static String spoken(String grade) {
    return grade.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ");
  }

  private static QuantityFormatException noGrade(String text, List<String> words) {
    String word = text.toLowerCase(Locale.ROOT);
    String near = Nearest.of(word, words).map(w -> "; did you mean '" + w + "'?").orElse("");
    return new QuantityFormatException(
        "'%s' is not one of %s%s".formatted(text, String.join(", ", words), near));
  }
}
