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
   * The same at any severity.
   *
   * @param value the value
   * @return the value
   */
  static Course constant(double value) {
    return line(value, value);
  }

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
   * A step halfway, for a fault that is one of two things, one as likely as the other: its severity
   * then tells which.
   *
   * @param below the value below severity 1/2
   * @param above the value from severity 1/2 on
   * @return the one or the other
   */
  static Course step(double below, double above) {
    return new Step(below, above);
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

  /**
   * A chance whose log-odds are a parabola over the severity, so that it stays a chance: for what
   * shows only beyond some severity, or what gives way to something worse.
   *
   * @param from the chance at severity 0, above 0 and below 1
   * @param middle the chance at severity 1/2, above 0 and below 1
   * @param to the chance at severity 1, above 0 and below 1
   * @return the course through the three
   * @throws IllegalArgumentException if one is not above 0 and below 1
   */
  static Course chance(double from, double middle, double to) {
    return new Chance(from, middle, to);
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

/** A chance. */
record Chance(double from, double middle, double to) implements Course {
  Chance {
    for (double chance : new double[] {from, middle, to}) {
      if (!(chance > 0 && chance < 1)) {
        throw new IllegalArgumentException("log-odds need a chance above 0 and below 1");
      }
    }
  }

  @Override
  public double at(double severity) {
    double half = logOdds(middle) - logOdds(from);
    double whole = logOdds(to) - logOdds(from);
    double slope = 4 * half - whole;
    double bend = 2 * whole - 4 * half;
    return 1 / (1 + Math.exp(-(logOdds(from) + severity * (slope + severity * bend))));
  }

  private static double logOdds(double chance) {
    return Math.log(chance / (1 - chance));
  }
}

/** A step. */
record Step(double below, double above) implements Course {
  @Override
  public double at(double severity) {
    return severity < 0.5 ? below : above;
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
