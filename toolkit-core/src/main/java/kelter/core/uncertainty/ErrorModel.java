package kelter.core.uncertainty;

import java.util.List;

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

  /**
   * The errors of a reading, one by one.
   *
   * @param readingSi the reading in the coherent SI unit
   * @return errors that are independent of each other, whose standard uncertainties combine to that
   *     of the reading; a single normal one where several causes are not told apart
   */
  default List<ErrorTerm> terms(double readingSi) {
    return List.of(ErrorTerm.normal(standardUncertainty(readingSi)));
  }
}
