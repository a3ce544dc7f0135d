package kelter.core.uncertainty.montecarlo;

import java.util.function.DoubleSupplier;
import kelter.core.uncertainty.ErrorEffect;
import kelter.core.uncertainty.Shape;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.TSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Draws from the shapes, each scaled to one standard uncertainty (JCGM 101:2008, 6.4). */
final class Draw {

  private Draw() {}

  static DoubleSupplier of(ErrorEffect effect, UniformRandomProvider random) {
    Shape shape = effect.shape();
    double halfWidth = shape.divisor();
    return switch (shape) {
      case RECTANGULAR -> () -> halfWidth * (2 * random.nextDouble() - 1); // 6.4.2.4
      case TRIANGULAR -> () -> halfWidth * (random.nextDouble() + random.nextDouble() - 1); // 6.4.5
      case U_SHAPED -> () -> halfWidth * Math.sin(2 * Math.PI * random.nextDouble()); // 6.4.6.4
      case NORMAL -> ZigguratSampler.NormalizedGaussian.of(random)::sample; // 6.4.7
      case STUDENT_T -> TSampler.of(random, effect.degreesOfFreedom())::sample; // 6.4.9
    };
  }
}
