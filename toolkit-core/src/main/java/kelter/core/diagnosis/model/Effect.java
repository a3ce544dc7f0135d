package kelter.core.diagnosis.model;

import java.util.Objects;

/**
 * What a fault, or a shared quantity, does to a figure; {@link Figure} makes it. Effects of one
 * figure follow each other in their order.
 */
public final class Effect {

  /** In which way a figure is changed. */
  enum Manner {
    PLUS,
    TIMES,
    AT_LEAST,
    BECOMES
  }

  private final Figure figure;
  private final Manner manner;
  private final Course course;

  Effect(Figure figure, Manner manner, Course course) {
    this.figure = Objects.requireNonNull(figure);
    this.manner = manner;
    this.course = Objects.requireNonNull(course);
  }

  Figure figure() {
    return figure;
  }

  /** What the figure is after it. */
  double on(double before, double severity) {
    double by = course.at(severity);
    return switch (manner) {
      case PLUS -> before + by;
      case TIMES -> before * by;
      case AT_LEAST -> Math.max(before, by);
      case BECOMES -> by;
    };
  }
}
