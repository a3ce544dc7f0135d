package kelter.cli.readings;

import java.util.Map;
import java.util.Optional;
import kelter.core.log.Window;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;

/**
 * A stretch of a log as a reading of an observable.
 *
 * @param component the id of the component
 * @param observable what was read
 * @param quantity the reading with its combined standard uncertainty
 * @param trend whether it is the trend of the column, not its mean
 * @param conditions the circumstances, means of other columns or stated
 * @param instrument the id of the instrument, if it is known
 * @param parts where the uncertainty comes from
 * @param stretch the stretch
 * @param window the column over the stretch
 */
public record LogReading(
    String component,
    Observable observable,
    Quantity quantity,
    boolean trend,
    Map<String, Quantity> conditions,
    Optional<String> instrument,
    Parts parts,
    Stretch stretch,
    Window window) {

  /**
   * Where the uncertainty of a reading comes from: standard uncertainties in its unit.
   *
   * @param scatter the scatter of the samples, type A, with their autocorrelation
   * @param instrument the limits of error of the instrument
   * @param assumed whether those are the limits of an ordinary instrument
   * @param rounding the last digit that the instrument writes
   */
  public record Parts(double scatter, double instrument, boolean assumed, double rounding) {

    double combined() {
      return Math.hypot(Math.hypot(scatter, instrument), rounding);
    }
  }
}
