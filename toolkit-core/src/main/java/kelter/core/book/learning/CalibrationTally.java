package kelter.core.book.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.learned.Calibration;
import kelter.core.diagnosis.simulation.BrierScore;
import kelter.core.diagnosis.simulation.CalibrationTable;
import kelter.core.diagnosis.simulation.LogLoss;

/** What was told of causes before the work, and what was confirmed. */
final class CalibrationTally {

  private static final int BINS = 5;
  private static final double LEAST = 0.001;

  private final List<Double> ofTruth = new ArrayList<>();
  private final List<Double> ofFirst = new ArrayList<>();
  private final List<Boolean> came = new ArrayList<>();

  /** Counts an entry that has both. */
  void add(BookEntry entry) {
    if (entry.predictions().isEmpty() || entry.causes().isEmpty()) {
      return;
    }
    Set<String> there =
        entry.causes().stream().map(ConfirmedCause::key).collect(Collectors.toSet());
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
    ofTruth.add(Math.max(LEAST, truth));
    ofFirst.add(highest);
    came.add(there.contains(first));
  }

  Optional<Calibration> calibration() {
    if (ofTruth.isEmpty()) {
      return Optional.empty();
    }
    double[] said = ofFirst.stream().mapToDouble(Double::doubleValue).toArray();
    boolean[] happened = new boolean[said.length];
    for (int i = 0; i < happened.length; i++) {
      happened[i] = came.get(i);
    }
    CalibrationTable table = CalibrationTable.of(said, happened, BINS);
    return Optional.of(
        new Calibration(
            said.length,
            LogLoss.of(ofTruth.stream().mapToDouble(Double::doubleValue).toArray()),
            BrierScore.ofEvents(said, happened),
            table.expectedError(),
            table.bins().stream()
                .filter(bin -> bin.cases() > 0)
                .map(bin -> new Calibration.Bin(bin.cases(), bin.said(), bin.came()))
                .toList()));
  }
}
