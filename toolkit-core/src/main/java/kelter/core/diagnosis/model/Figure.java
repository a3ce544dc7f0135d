package kelter.core.diagnosis.model;

/**
 * Something of a part that faults can change. An enum of the part implements it, one constant for
 * each figure, whose Javadoc tells the unit.
 */
public interface Figure {

  /**
   * Its value in a part in order.
   *
   * @return the value, in the unit of the figure
   */
  double inOrder();

  /**
   * Its place in the enum.
   *
   * @return as the enum says
   */
  int ordinal();

  /**
   * A fault adds to it.
   *
   * @param atWorst what is added at severity 1, in the unit of the figure, less in proportion
   *     before
   * @return the effect
   */
  default Effect plus(double atWorst) {
    return plus(Course.line(0, atWorst));
  }

  /**
   * A fault adds to it.
   *
   * @param course what is added, in the unit of the figure
   * @return the effect
   */
  default Effect plus(Course course) {
    return new Effect(this, Effect.Manner.PLUS, course);
  }

  /**
   * A fault multiplies it.
   *
   * @param atWorst by what ratio at severity 1; 1 at severity 0 and in a straight line between
   * @return the effect
   */
  default Effect times(double atWorst) {
    return times(Course.line(1, atWorst));
  }

  /**
   * A fault multiplies it.
   *
   * @param course by what ratio
   * @return the effect
   */
  default Effect times(Course course) {
    return new Effect(this, Effect.Manner.TIMES, course);
  }

  /**
   * A fault raises it to something, unless it is that high already.
   *
   * @param course what it is at least, in the unit of the figure
   * @return the effect
   */
  default Effect atLeast(Course course) {
    return new Effect(this, Effect.Manner.AT_LEAST, course);
  }

  /**
   * A fault raises it to something however bad it is, unless it is that high already.
   *
   * @param value what it is at least, in the unit of the figure
   * @return the effect
   */
  default Effect atLeast(double value) {
    return atLeast(Course.line(value, value));
  }

  /**
   * A fault makes it something, whatever it was.
   *
   * @param course what it becomes, in the unit of the figure
   * @return the effect
   */
  default Effect becomes(Course course) {
    return new Effect(this, Effect.Manner.BECOMES, course);
  }

  /**
   * A fault makes it something however bad it is and whatever it was.
   *
   * @param value what it becomes, in the unit of the figure
   * @return the effect
   */
  default Effect becomes(double value) {
    return becomes(Course.line(value, value));
  }
}
