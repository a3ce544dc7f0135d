package kelter.core.vocabulary;

import java.util.List;
import java.util.Objects;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;

/**
 * What can be measured or seen on a component.
 *
 * @param id the word in a job file, lower case with hyphens
 * @param title the words for a person
 * @param type whether it is a figure, a yes or no, or a grade
 * @param kind what it measures; {@link QuantityKind#RATIO} unless it is a figure
 * @param logarithmic whether differences count as ratios, as for insulation resistance, which spans
 *     decades: the spread of a forecast is then the standard deviation of the natural logarithm
 * @param span everything that a reading of it can be, in the coherent SI unit; 0 to 1 unless it is
 *     a figure
 * @param grades the words of a grade from least to most, empty otherwise
 * @param conditions what may be stated about the circumstances of a reading
 * @param procedure how it is observed
 */
public record Observable(
    String id,
    String title,
    Type type,
    QuantityKind kind,
    boolean logarithmic,
    Span span,
    List<String> grades,
    List<Characteristic> conditions,
    Procedure procedure) {

  /** What a reading looks like. */
  public enum Type {
    /** A value with a unit. */
    QUANTITY,
    /** A yes or a no. */
    YES_NO,
    /** A word on an ordered scale. */
    GRADE
  }

  /**
   * Checks that the parts fit each other.
   *
   * @throws IllegalArgumentException if a grade has fewer than two words, or a logarithmic
   *     observable a span that touches zero or a shifted scale
   */
  public Observable {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(procedure);
    grades = List.copyOf(grades);
    conditions = List.copyOf(conditions);
    if ((type == Type.GRADE) != (grades.size() >= 2)) {
      throw new IllegalArgumentException(id + ": a grade, and nothing else, has two words or more");
    }
    if (logarithmic && (span.low() <= 0 || kind.scale() == Scale.TEMPERATURE)) {
      throw new IllegalArgumentException(id + ": a logarithmic span lies above zero");
    }
  }

  /**
   * An observable with a value and a unit, on a linear scale.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @param kind what it measures
   * @param span everything that it can be, in the coherent SI unit
   * @param conditions what may be stated about the circumstances
   * @param procedure how it is observed
   * @return the observable
   */
  public static Observable quantity(
      String id,
      String title,
      QuantityKind kind,
      Span span,
      List<Characteristic> conditions,
      Procedure procedure) {
    return new Observable(
        id, title, Type.QUANTITY, kind, false, span, List.of(), conditions, procedure);
  }

  /**
   * An observable with a value and a unit whose differences count as ratios.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @param kind what it measures
   * @param span everything that it can be, in the coherent SI unit, above zero
   * @param conditions what may be stated about the circumstances
   * @param procedure how it is observed
   * @return the observable
   */
  public static Observable logarithmic(
      String id,
      String title,
      QuantityKind kind,
      Span span,
      List<Characteristic> conditions,
      Procedure procedure) {
    return new Observable(
        id, title, Type.QUANTITY, kind, true, span, List.of(), conditions, procedure);
  }

  /**
   * Something that is there or not.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @param procedure how it is observed
   * @return the observable
   */
  public static Observable yesNo(String id, String title, Procedure procedure) {
    return new Observable(
        id,
        title,
        Type.YES_NO,
        QuantityKind.RATIO,
        false,
        new Span(0, 1),
        List.of(),
        List.of(),
        procedure);
  }

  /**
   * Something told by a word on an ordered scale.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @param grades the words from least to most, two or more
   * @param procedure how it is observed
   * @return the observable
   */
  public static Observable graded(
      String id, String title, List<String> grades, Procedure procedure) {
    return new Observable(
        id,
        title,
        Type.GRADE,
        QuantityKind.RATIO,
        false,
        new Span(0, 1),
        grades,
        List.of(),
        procedure);
  }
}
