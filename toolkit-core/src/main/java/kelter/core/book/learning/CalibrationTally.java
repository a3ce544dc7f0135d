package kelter.core.book.learning;

import java.io.Serializable;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.learned.Calibration;
import kelter.core.diagnosis.simulation.BrierScore;
import kelter.core.diagnosis.simulation.CalibrationTable;
import kelter.core.diagnosis.simulation.LogLoss;

/** What was told of causes before the work, and what was confirmed. */
final class CalibrationTally implements Serializable {

  private static final long serialVersionUID = 1;

  private static final int BINS = 5;
  private static final double LEAST = 0.001;

  private final int[] cases = new int[BINS];
  private final int[] came = new int[BINS];
  private final double[] said = new double[BINS];
  private double logLoss;
  private double brier;

  /** Counts an entry that has both. */
  void add(BookEntry entry) {
    if (entry.predictions().isEmpty() || entry.causes().isEmpty()) {
      return;
    }
    Set<String> there = new HashSet<>();
    for (ConfirmedCause cause : entry.causes()) {
      there.add(cause.key());
    }
    String first = "";
    double highest = -1;
    double truth = 0;
    for (Map.Entry<String, Double> each : entry.predictions().entrySet()) {
      if (each.getValue() > highest) {
        first = each.getKey();
        highest = each.getValue();
      }
      if (there.contains(each.getKey())) {
        truth = Math.max(truth, each.getValue());
      }
    }
    add(Math.max(LEAST, truth), highest, there.contains(first));
  }

  private void add(double ofTruth, double ofFirst, boolean firstCame) {
    int bin = CalibrationTable.bin(ofFirst, BINS);
    cases[bin]++;
    came[bin] += firstCame ? 1 : 0;
    said[bin] += ofFirst;
    logLoss += LogLoss.of(ofTruth);
    brier += BrierScore.ofEvents(new double[] {ofFirst}, new boolean[] {firstCame});
  }

  CalibrationTally plus(CalibrationTally other) {
    CalibrationTally both = new CalibrationTally();
    for (int i = 0; i < BINS; i++) {
      both.cases[i] = cases[i] + other.cases[i];
      both.came[i] = came[i] + other.came[i];
      both.said[i] = said[i] + other.said[i];
    }
    both.logLoss = logLoss + other.logLoss;
    both.brier = brier + other.brier;
    return both;
  }

  Optional<Calibration> calibration() {
    CalibrationTable table = CalibrationTable.of(cases, said, came);
    int all = table.cases();
    if (all == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Calibration(
            all,
            logLoss / all,
            brier / all,
            table.expectedError(),
            table.bins().stream()
                .filter(bin -> bin.cases() > 0)
                .map(bin -> new Calibration.Bin(bin.cases(), bin.said(), bin.came()))
                .toList()));
  }
}
