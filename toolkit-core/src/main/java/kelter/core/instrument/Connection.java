package kelter.core.instrument;

import java.util.ArrayList;
import java.util.List;
import kelter.core.uncertainty.ErrorModel;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Shape;

/**
 * What the way of connecting adds to the error of an instrument: the resistance of the test leads
 * that is left after they were read with their tips together and taken off, or where in the jaws of
 * a clamp the conductor lies. It is rectangular and adds to that of the instrument as a square.
 *
 * @param instrument the error of the instrument itself
 * @param fixed the part that does not grow with the reading, in the coherent SI unit of the reading
 * @param ofReading the part that does, as a ratio of the reading
 */
record Connection(ErrorModel instrument, double fixed, double ofReading) implements ErrorModel {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a part is negative or not finite
   */
  public Connection {
    if (!(fixed >= 0 && ofReading >= 0) || Double.isInfinite(fixed + ofReading)) {
      throw new IllegalArgumentException("what a connection adds is finite and not negative");
    }
  }

  @Override
  public double standardUncertainty(double readingSi) {
    return Math.hypot(instrument.standardUncertainty(readingSi), limit(readingSi) / Math.sqrt(3));
  }

  @Override
  public List<ErrorTerm> terms(double readingSi) {
    List<ErrorTerm> terms = new ArrayList<>(instrument.terms(readingSi));
    terms.add(ErrorTerm.within(Shape.RECTANGULAR, limit(readingSi)));
    return terms;
  }

  private double limit(double readingSi) {
    return fixed + ofReading * Math.abs(readingSi);
  }
}
