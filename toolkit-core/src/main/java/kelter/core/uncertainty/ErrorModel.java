package kelter.core.uncertainty;

/** How far a reading may be off that is taken with some instrument or by some method. */
@FunctionalInterface
public interface ErrorModel {

  /**
   * The standard uncertainty of a reading.
   *
   * @param readingSi the reading in the coherent SI unit
   * @return the standard uncertainty, in the coherent SI unit
   */
  double standardUncertainty(double readingSi);
}
