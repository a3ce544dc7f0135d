package kelter.core.job;

import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.uncertainty.Shape;

/** One reading of an observable. */
public sealed interface Reading {

  /**
   * The reading as it is told to a person.
   *
   * @return for instance {@code 0.62 m}, {@code over range}, {@code yes}
   */
  String display();

  /**
   * The least that the quantity can be by what was read, the error of the instrument left out.
   *
   * @return in the coherent SI unit: the value, the limit of {@link Above}, 0 for {@link Below},
   *     infinite for {@link OverRange}; NaN where no quantity was read
   */
  default double least() {
    return Double.NaN;
  }

  /**
   * The most that the quantity can be by what was read, the error of the instrument left out.
   *
   * @return in the coherent SI unit: the value, the limit of {@link Below}, infinite for {@link
   *     Above} and {@link OverRange}; NaN where no quantity was read
   */
  default double most() {
    return Double.NaN;
  }

  /**
   * A value.
   *
   * @param quantity the value; its uncertainty is zero unless somebody stated one with the reading
   * @param resolution the size of the last digit that was written down, in the unit of the value,
   *     finite and not negative
   * @param shape how an uncertainty that was stated with the reading is distributed
   */
  record Value(Quantity quantity, double resolution, Shape shape) implements Reading {

    /**
     * Checks the resolution.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Value {
      Required.value(quantity, "value of a reading");
      if (!(resolution >= 0) || Double.isInfinite(resolution)) {
        throw new IllegalArgumentException(
            "a resolution of "
                + QuantityFormat.plain(resolution)
                + "; it must be finite and not negative");
      }
      Required.value(shape, "distribution of a reading");
    }

    /**
     * A value whose uncertainty, if one is stated, is that of limits of error.
     *
     * @param quantity the value
     * @param resolution the size of the last digit that was written down, in the unit of the value
     */
    public Value(Quantity quantity, double resolution) {
      this(quantity, resolution, Shape.RECTANGULAR);
    }

    @Override
    public String display() {
      return quantity.display();
    }

    @Override
    public double least() {
      return quantity.si();
    }

    @Override
    public double most() {
      return quantity.si();
    }
  }

  /**
   * The instrument shows less than it can tell: {@code < 0.1 ohm}.
   *
   * @param limit the value is at most this
   */
  record Below(Quantity limit) implements Reading {

    /** Checks that nothing is null. */
    public Below {
      Required.value(limit, "limit of a reading");
    }

    @Override
    public String display() {
      return "< " + limit.display();
    }

    @Override
    public double least() {
      return 0;
    }

    @Override
    public double most() {
      return limit.si();
    }
  }

  /**
   * The instrument shows more than it can tell: {@code > 200 MOhm}.
   *
   * @param limit the value is at least this
   */
  record Above(Quantity limit) implements Reading {

    /** Checks that nothing is null. */
    public Above {
      Required.value(limit, "limit of a reading");
    }

    @Override
    public String display() {
      return "> " + limit.display();
    }

    @Override
    public double least() {
      return limit.si();
    }

    @Override
    public double most() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /** Over range with no limit stated: {@code OL}, {@code open}. */
  record OverRange() implements Reading {
    @Override
    public String display() {
      return "over range";
    }

    @Override
    public double least() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public double most() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A yes or a no.
   *
   * @param yes true for yes
   */
  record YesNo(boolean yes) implements Reading {
    @Override
    public String display() {
      return yes ? "yes" : "no";
    }
  }

  /**
   * A word on the ordered scale of the observable.
   *
   * @param word one of the words
   * @param rank its place on the scale, from 0
   */
  record Grade(String word, int rank) implements Reading {

    /** Checks that nothing is null. */
    public Grade {
      Required.value(word, "word of a grade");
    }

    @Override
    public String display() {
      return word;
    }
  }
}
