package kelter.core.vocabulary;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
 * @param proof what by itself proves a fault of the component; never of a grade
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
    Optional<Proof> proof,
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
   * @throws IllegalArgumentException if a grade has fewer than two words, one twice, or proves
   *     something, a logarithmic observable has a span that touches zero or a shifted scale, or
   *     what proves lies at no place inside the span of a figure
   */
  public Observable {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(proof);
    Objects.requireNonNull(procedure);
    grades = List.copyOf(grades);
    conditions = List.copyOf(conditions);
    if ((type == Type.GRADE) != (grades.size() >= 2)) {
      throw new IllegalArgumentException(id + ": a grade, and nothing else, has two words or more");
    }
    if (new HashSet<>(grades).size() < grades.size()) {
      throw new IllegalArgumentException(id + ": a grade has each word once, not " + grades);
    }
    if (logarithmic && (span.low() <= 0 || kind.scale() == Scale.TEMPERATURE)) {
      throw new IllegalArgumentException(id + ": a logarithmic span lies above zero");
    }
    if (proof.isPresent() && !proves(type, span, proof.get().from())) {
      throw new IllegalArgumentException(id + ": a yes proves, or a value inside the span");
    }
  }

  /**
   * The same where it takes another time to observe it.
   *
   * @param minutes greater than zero
   * @return the observable
   */
  public Observable taking(double minutes) {
    return new Observable(
        id,
        title,
        type,
        kind,
        logarithmic,
        span,
        grades,
        conditions,
        proof,
        procedure.taking(minutes));
  }

  private static boolean proves(Type type, Span span, double from) {
    return switch (type) {
      case YES_NO -> from == 1;
      case QUANTITY -> from > span.low() && from < span.high();
      case GRADE -> false;
    };
  }

  /**
   * Begins an observable: a yes or a no, unless its draft is told otherwise.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @return the draft
   */
  public static Draft named(String id, String title) {
    return new Draft(id, title);
  }

  /** An observable of which not all is said yet. */
  public static final class Draft {
    private final String id;
    private final String title;
    private Type type = Type.YES_NO;
    private QuantityKind kind = QuantityKind.RATIO;
    private boolean logarithmic;
    private Span span = new Span(0, 1);
    private List<String> grades = List.of();
    private List<Characteristic> conditions = List.of();
    private Optional<Proof> proof = Optional.empty();
    private String how = "";

    private Draft(String id, String title) {
      this.id = id;
      this.title = title;
    }

    /**
     * It has a value and a unit, on a linear scale.
     *
     * @param measured what it measures
     * @param low the least that it can be, in the coherent SI unit
     * @param high the most that it can be, in the coherent SI unit
     * @return this draft
     */
    public Draft quantity(QuantityKind measured, double low, double high) {
      type = Type.QUANTITY;
      kind = measured;
      span = new Span(low, high);
      return this;
    }

    /**
     * It has a value and a unit, and its differences count as ratios.
     *
     * @param measured what it measures
     * @param all everything that it can be, in the coherent SI unit, above zero
     * @return this draft
     */
    public Draft logarithmic(QuantityKind measured, Span all) {
      logarithmic = true;
      return quantity(measured, all.low(), all.high());
    }

    /**
     * It is told by a word on an ordered scale.
     *
     * @param fromLeast the words from least to most, two or more
     * @return this draft
     */
    public Draft graded(String... fromLeast) {
      type = Type.GRADE;
      grades = List.of(fromLeast);
      return this;
    }

    /**
     * What may be stated about the circumstances of a reading.
     *
     * @param stated the figures
     * @return this draft
     */
    public Draft at(Characteristic... stated) {
      return at(List.of(stated));
    }

    /**
     * What may be stated about the circumstances of a reading.
     *
     * @param stated the figures
     * @return this draft
     */
    public Draft at(List<Characteristic> stated) {
      conditions = stated;
      return this;
    }

    /**
     * A yes by itself proves a fault of the component.
     *
     * @return this draft
     */
    public Draft proving() {
      return provingFrom(1);
    }

    /**
     * A value from a limit on by itself proves a fault of the component.
     *
     * @param least the limit, in the coherent SI unit, inside the span
     * @return this draft
     */
    public Draft provingFrom(double least) {
      proof = Optional.of(Proof.from(least));
      return this;
    }

    /**
     * What to do.
     *
     * @param text one or two sentences
     * @return this draft
     */
    public Draft how(String text) {
      how = text;
      return this;
    }

    /**
     * Ends the draft of what is asked, or looked at with nothing opened.
     *
     * @param minutes how long it takes, greater than zero
     * @param text what to ask or to look at, one or two sentences
     * @return the observable
     * @throws IllegalArgumentException if the parts do not fit each other
     */
    public Observable asked(double minutes, String text) {
      return how(text).by(Procedure.look(minutes));
    }

    /**
     * Ends the draft with what it takes to observe it.
     *
     * @param procedure the procedure, with what all such work begins with, if anything
     * @return the observable
     * @throws IllegalArgumentException if the parts do not fit each other
     */
    public Observable by(Procedure procedure) {
      return new Observable(
          id, title, type, kind, logarithmic, span, grades, conditions, proof, procedure.then(how));
    }
  }
}
