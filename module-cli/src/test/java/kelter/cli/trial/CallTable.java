package kelter.cli.trial;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import kelter.cli.trial.Calls.Call;
import kelter.core.diagnosis.simulation.CalibrationTable;
import kelter.core.file.catalogue.KindFile;

/** What came out of many calls, as tables. */
final class CallTable {

  private static final int FEW = 3;
  private static final int BINS = 5;

  /** A probability of the truth below this counts as this in the log loss. */
  private static final double LEAST = 1e-6;

  private final List<Call> calls;

  CallTable(List<Call> calls) {
    this.calls = List.copyOf(calls);
  }

  /** Where a class of causes that no reading tells apart counts as one. */
  CallTable byClass() {
    return new CallTable(calls.stream().map(Call::byClass).toList());
  }

  private CallTable only(Predicate<Call> counts) {
    return new CallTable(calls.stream().filter(counts).toList());
  }

  /** Those of one kind of machine. */
  CallTable only(String kind) {
    return only(call -> call.kind().equals(kind));
  }

  int size() {
    return calls.size();
  }

  /** The share of calls with the truth first at a stage, 0 to 1. */
  double first(int stage) {
    return mean(call -> call.stages().get(stage).place() == 1 ? 1 : 0);
  }

  /** The share of calls with the truth among the first three at a stage, 0 to 1. */
  double amongThree(int stage) {
    return mean(call -> call.stages().get(stage).place() <= FEW ? 1 : 0);
  }

  /** The mean of what is said of the cause named first at a stage, 0 to 1. */
  double saidOfFirst(int stage) {
    return mean(call -> call.stages().get(stage).ofFirst());
  }

  /** The share of calls in which the cause named first at a stage is there, 0 to 1. */
  double right(int stage) {
    return mean(call -> call.stages().get(stage).right() ? 1 : 0);
  }

  /** The mean log loss at a stage, nats. */
  double logLoss(int stage) {
    return mean(call -> logLoss(call, stage));
  }

  /** The log loss of each call at a stage, nats. */
  double[] logLosses(int stage) {
    return calls.stream().mapToDouble(call -> logLoss(call, stage)).toArray();
  }

  private static double logLoss(Call call, int stage) {
    return -Math.log(Math.max(LEAST, call.stages().get(stage).ofTruth()));
  }

  /** What is said of the cause named first against how often it is there. */
  CalibrationTable calibration(int stage) {
    double[] said =
        calls.stream().mapToDouble(call -> call.stages().get(stage).ofFirst()).toArray();
    boolean[] came = new boolean[said.length];
    for (int i = 0; i < came.length; i++) {
      came[i] = calls.get(i).stages().get(stage).right();
    }
    return CalibrationTable.of(said, came, BINS);
  }

  private double mean(ToDoubleFunction<Call> figure) {
    return calls.stream().mapToDouble(figure).average().orElse(Double.NaN);
  }

  /** Prints one line for each kind and for some groups of all, then the calibration. */
  void print(String title, PrintStream out) {
    out.println(title + ", " + size() + " calls");
    out.println(
        "                             no            first            among three"
            + "          log loss");
    out.println(
        "                      n   model  said  1st  2nd  3rd  said  1st  2nd  3rd"
            + "   said  1st  2nd  3rd readings");
    for (String kind : KindFile.shipped()) {
      only(call -> call.kind().equals(kind)).line(kind, out);
    }
    line("all", out);
    byClass().line("classes as one", out);
    only(call -> call.isCause() && call.modelled()).line("cause with a model", out);
    only(call -> call.isCause() && !call.modelled()).line("cause without", out);
    only(call -> call.truth().equals(TrueKind.NOTHING_WRONG)).line("nothing wrong", out);
    only(call -> call.truth().equals(TrueKind.SOMETHING_ELSE)).line("something else", out);
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      printCalibration(stage, out);
    }
    out.println();
  }

  private void line(String name, PrintStream out) {
    if (calls.isEmpty()) {
      return;
    }
    String shortened = name.substring(0, Math.min(18, name.length()));
    StringBuilder line = new StringBuilder();
    line.append(
        String.format(Locale.ROOT, "%-18s %5d %5.0f%% ", shortened, size(), 100 * unmodelled()));
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * first(stage)));
    }
    line.append(' ');
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * amongThree(stage)));
    }
    line.append("  ");
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      line.append(String.format(Locale.ROOT, "%5.2f", logLoss(stage)));
    }
    out.println(line + String.format(Locale.ROOT, "%6.1f", mean(Call::readings)));
  }

  private double unmodelled() {
    return mean(call -> call.isCause() && !call.modelled() ? 1 : 0);
  }

  private void printCalibration(int stage, PrintStream out) {
    List<String> bins = new ArrayList<>();
    CalibrationTable table = calibration(stage);
    for (CalibrationTable.Bin bin : table.bins()) {
      bins.add(
          String.format(
              Locale.ROOT, "%3.0f/%3.0f (%d)", 100 * bin.said(), 100 * bin.came(), bin.cases()));
    }
    out.println(
        (stage == 0 ? "said    " : "reading " + stage)
            + "  first named, said/came in per cent (calls): "
            + String.join("  ", bins)
            + String.format(Locale.ROOT, "  off by %.1f", 100 * table.expectedError()));
  }
}
