package kelter.core.diagnosis.model;

import java.util.Objects;

/** Something of a part that faults can change; a {@link FigureSet} makes it. */
public final class Figure {

  private final FigureSet set;
  private final int place;
  private final String title;
  private final double inOrder;

  Figure(FigureSet set, int place, String title, double inOrder) {
    this.set = set;
    this.place = place;
    this.title = Objects.requireNonNull(title);
    this.inOrder = inOrder;
  }

  FigureSet set() {
    return set;
  }

  /** Its place in the set. */
  int place() {
    return place;
  }

  /**
   * Its value in a part in order.
   *
   * @return the value, in the unit of the figure
   */
  public double inOrder() {
    return inOrder;
  }

  /**
   * What is read in proportion to it.
   *
   * @param value what is read where the figure is 1, in the coherent SI unit
   * @return how it is read
   */
  public Look of(double value) {
    return new Look.InProportion(this, value);
  }

  /**
   * A fault adds to it.
   *
   * @param atWorst what is added at severity 1, in the unit of the figure, less in proportion
   *     before
   * @return the effect
   */
  public Effect plus(double atWorst) {
    return plus(Course.line(0, atWorst));
  }

  /**
   * A fault adds to it.
   *
   * @param course what is added, in the unit of the figure
   * @return the effect
   */
  public Effect plus(Course course) {
    return new Effect(this, Effect.Manner.PLUS, course);
  }

  /**
   * A fault multiplies it.
   *
   * @param atWorst by what ratio at severity 1; 1 at severity 0 and in a straight line between
   * @return the effect
   */
  public Effect times(double atWorst) {
    return times(Course.line(1, atWorst));
  }

  /**
   * A fault multiplies it.
   *
   * @param course by what ratio
   * @return the effect
   */
  public Effect times(Course course) {
    return new Effect(this, Effect.Manner.TIMES, course);
  }

  /**
   * A fault raises it to something, unless it is that high already.
   *
   * @param course what it is at least, in the unit of the figure
   * @return the effect
   */
  public Effect atLeast(Course course) {
    return new Effect(this, Effect.Manner.AT_LEAST, course);
  }

  /**
   * A fault raises it to something however bad it is, unless it is that high already.
   *
   * @param value what it is at least, in the unit of the figure
   * @return the effect
   */
  public Effect atLeast(double value) {
    return atLeast(Course.constant(value));
  }

  /**
   * A fault makes it something, whatever it was.
   *
   * @param course what it becomes, in the unit of the figure
   * @return the effect
   */
  public Effect becomes(Course course) {
    return new Effect(this, Effect.Manner.BECOMES, course);
  }

  /**
   * A fault makes it something however bad it is and whatever it was.
   *
   * @param value what it becomes, in the unit of the figure
   * @return the effect
   */
  public Effect becomes(double value) {
    return becomes(Course.constant(value));
  }

  @Override
  public String toString() {
    return set + ", " + title;
  }
}
