package kelter.core.job;

import kelter.core.quantity.Quantity;

/** One reading of an observable. */
public sealed interface Reading {

  /**
   * The reading as it is told to a person.
   *
   * @return for instance {@code 0.62 m}, {@code over range}, {@code yes}
   */
  String display();

  /**
   * A value.
   *
   * @param quantity the value; its uncertainty is zero unless somebody stated one with the reading
   * @param resolution the size of the last digit that was written down, in the unit of the value
   */
  record Value(Quantity quantity, double resolution) implements Reading {
    @Override
    public String display() {
      return quantity.display();
    }
  }

  /**
   * The instrument shows less than it can tell: {@code < 0.1 ohm}.
   *
   * @param limit the value is at most this
   */
  record Below(Quantity limit) implements Reading {
    @Override
    public String display() {
      return "< " + limit.display();
    }
  }

  /**
   * The instrument shows more than it can tell: {@code > 200 MOhm}.
   *
   * @param limit the value is at least this
   */
  record Above(Quantity limit) implements Reading {
    @Override
    public String display() {
      return "> " + limit.display();
    }
  }

  /** Over range with no limit stated: {@code OL}, {@code open}. */
  record OverRange() implements Reading {
    @Override
    public String display() {
      return "over range";
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
    @Override
    public String display() {
      return word;
    }
  }
}
