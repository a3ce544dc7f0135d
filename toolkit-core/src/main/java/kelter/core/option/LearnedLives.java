package kelter.core.option;

import java.util.Objects;
import java.util.Optional;
import kelter.core.source.Source;

/**
 * Lives that somebody has learned from machines of his own, for instance from a job book. It must
 * give the same answers as long as a weigher uses it.
 */
public interface LearnedLives {

  /** Nothing has been learned. */
  LearnedLives NONE =
      new LearnedLives() {
        @Override
        public Optional<LearnedLife> machine(String kind) {
          return Optional.empty();
        }

        @Override
        public Optional<LearnedLife> component(String kind) {
          return Optional.empty();
        }
      };

  /**
   * How long machines of a kind last.
   *
   * @param kind the kind of appliance, as in a job
   * @return the life, if one was learned
   */
  Optional<LearnedLife> machine(String kind);

  /**
   * How long components of a kind last.
   *
   * @param kind the kind of component, as in a job
   * @return the life, if one was learned
   */
  Optional<LearnedLife> component(String kind);

  /**
   * A Weibull life fitted to machines or components, those that still work counted as such.
   *
   * @param scale the characteristic life, in a, above zero
   * @param shape the shape, from 0.2 to 50
   * @param weight how much it counts: one published study counts 1, and for a component so does the
   *     assumption that it lasts as long as its machine; above zero
   * @param source where it comes from
   */
  record LearnedLife(double scale, double shape, double weight, Source source) {

    private static final double LEAST_SHAPE = 0.2;
    private static final double GREATEST_SHAPE = 50;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is outside its range or not finite
     */
    public LearnedLife {
      Objects.requireNonNull(source);
      boolean shaped = shape >= LEAST_SHAPE && shape <= GREATEST_SHAPE;
      if (!(scale > 0 && shaped && weight > 0) || !Double.isFinite(scale * weight)) {
        throw new IllegalArgumentException(
            ("a learned life with a characteristic life of %s a, a shape of %s and a weight of %s;"
                    + " all must be above zero and finite, the shape from 0.2 to 50")
                .formatted(scale, shape, weight));
      }
    }
  }
}
