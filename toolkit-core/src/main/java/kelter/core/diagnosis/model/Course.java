package kelter.core.diagnosis.model;

/** How something runs over the severity of a fault, or over the deviate of a shared quantity. */
@FunctionalInterface
public interface Course {

  /**
   * The value at a severity.
   *
   * @param severity how bad the fault is, above 0, at most 1; for a shared quantity its deviate, in
   *     standard deviations
   * @return the value
   */
  double at(double severity);

  /**
   * A straight line.
   *
   * @param from the value at severity 0
   * @param to the value at severity 1
   * @return from + (to - from) s
   */
  static Course line(double from, double to) {
    return new Line(from, to);
  }

  /**
   * A parabola that starts level, for what shows late.
   *
   * @param from the value at severity 0
   * @param to the value at severity 1
   * @return from + (to - from) s²
   */
  static Course square(double from, double to) {
    return new Square(from, to);
  }

  /**
   * A parabola that ends level, for what shows early.
   *
   * @param from the value at severity 0
   * @param to the value at severity 1
   * @return from + (to - from) (2 s - s²)
   */
  static Course early(double from, double to) {
    return new Early(from, to);
  }

  /**
   * A power, for what runs over decades.
   *
   * @param from the value at severity 0
   * @param ratio by what it has changed at severity 1, above 0
   * @return from ratio^s
   */
  static Course power(double from, double ratio) {
    return new Power(from, ratio);
  }
}

/** A straight line. */
record Line(double from, double to) implements Course {
  @Override
  public double at(double severity) {
    return from + (to - from) * severity;
  }
}

/** A parabola. */
record Square(double from, double to) implements Course {
  @Override
  public double at(double severity) {
    return from + (to - from) * severity * severity;
  }
}

/** A parabola that ends level. */
record Early(double from, double to) implements Course {
  @Override
  public double at(double severity) {
    return from + (to - from) * severity * (2 - severity);
  }
}

/** A power. */
record Power(double from, double ratio) implements Course {
  @Override
  public double at(double severity) {
    return from * Math.pow(ratio, severity);
  }
}
