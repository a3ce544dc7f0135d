package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.log.Window;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.uncertainty.Shape;

/**
 * A stretch of a log as a reading of an observable.
 *
 * @param component the id of the component
 * @param observable the word for the observable
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
    String observable,
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

    /**
     * The parts for a person.
     *
     * @param ordinary what to call an ordinary instrument
     * @return for instance {@code scatter 0.02, instrument 0.1, last digit 0.03}
     */
    public String words(String ordinary) {
      List<String> words = new ArrayList<>();
      words.add("scatter " + QuantityFormat.plain(scatter));
      words.add((assumed ? ordinary : "instrument") + " " + QuantityFormat.plain(instrument));
      if (rounding > 0) {
        words.add("last digit " + QuantityFormat.plain(rounding));
      }
      return String.join(", ", words);
    }
  }

  /**
   * The reading as a measurement of a job.
   *
   * @param log the name of the log, for the note
   * @return the measurement; its uncertainty has the last digit in it already
   */
  public Measurement measurement(String log) {
    return new Measurement(
        component,
        observable,
        List.of(new Reading.Value(quantity, 0, Shape.NORMAL)),
        new Conditions(conditions),
        instrument,
        note(log));
  }

  private String note(String log) {
    return "%s of rows %s to %s of %s, %s samples%s; standard uncertainty from %s, in %s"
        .formatted(
            trend ? "trend" : "mean",
            window.firstRow(),
            window.lastRow(),
            log,
            window.samples(),
            trend ? "" : " worth " + QuantityFormat.plain(window.effective()),
            parts.words("an ordinary instrument"),
            quantity.unit().code());
  }
}
