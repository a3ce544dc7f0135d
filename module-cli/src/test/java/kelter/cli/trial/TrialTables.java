package kelter.cli.trial;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import kelter.cli.trial.Calls.Call;
import kelter.core.file.catalogue.KindFile;

/** How good the diagnosis is by kind, as the page on the method has it. */
final class TrialTables {

  static final int CALLS = 2000;
  static final long SEED = 1;

  private static final int WORLDS = 10;
  private static final int LAST = Calls.STAGES - 1;

  private TrialTables() {}

  /** What was drawn; it stands above the tables. */
  static String drawn() {
    return "%d calls, seed %d, to %d kinds of machines"
        .formatted(CALLS, SEED, KindFile.shipped().size());
  }

  /** Draws the calls twice and makes the tables; minutes of work. */
  static String made() {
    return drawn()
        + "; per cent.\n\nWhere machines are as the files tell:\n\n"
        + table(Calls.asTold(SEED).run(CALLS))
        + "\nWhere every share and chance is another than the files tell ("
        + WORLDS
        + " such worlds):\n\n"
        + table(Calls.moved(SEED, WORLDS).run(CALLS));
  }

  private static String table(List<Call> calls) {
    CallTable table = new CallTable(calls);
    StringBuilder text = new StringBuilder();
    text.append("| kind | calls | first | among three | said of the first, and right | off by |\n");
    text.append("|---|---|---|---|---|---|\n");
    for (String kind : KindFile.shipped()) {
      text.append(row(kind, table.only(kind)));
    }
    return text.append(row("all", table)).toString();
  }

  private static String row(String name, CallTable table) {
    StringJoiner first = new StringJoiner(" ");
    StringJoiner amongThree = new StringJoiner(" ");
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      first.add(percent(table.first(stage)));
      amongThree.add(percent(table.amongThree(stage)));
    }
    return "| %s | %d | %s | %s | %s %s | %s |\n"
        .formatted(
            name,
            table.size(),
            first,
            amongThree,
            percent(table.saidOfFirst(LAST)),
            percent(table.right(LAST)),
            percent(table.calibration(LAST).expectedError()));
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f", 100 * share);
  }
}
