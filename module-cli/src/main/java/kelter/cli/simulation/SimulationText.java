package kelter.cli.simulation;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.simulation.CalibrationTable;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.job.Appliance;
import kelter.core.quantity.QuantityFormat;

/** How good the diagnosis is, for a person. */
public final class SimulationText {

  private static final int CONFUSIONS = 10;
  private static final int PLOT = 40;

  private final Layout layout;

  private SimulationText(Terminal terminal) {
    layout = new Layout(terminal);
  }

  /**
   * Writes a simulation.
   *
   * @param appliance the kind of machine
   * @param plan how much was tried
   * @param wrongBy how much higher the curves of the machines were than what the diagnosis was
   *     told, as a ratio
   * @param report what came out
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(
      Appliance appliance,
      SimulationPlan plan,
      double wrongBy,
      SimulationReport report,
      Terminal terminal) {
    SimulationText text = new SimulationText(terminal);
    text.drawn(appliance, plan, wrongBy, report);
    text.unmeasured(report);
    text.measured(report.measured());
    text.calibration(report.measured());
    text.sureness(report.measured().sureness());
    text.confusions(report);
    if (!report.walks().isEmpty()) {
      text.walks(report.walks());
    }
    return text.layout.toString();
  }

  private void drawn(
      Appliance appliance, SimulationPlan plan, double wrongBy, SimulationReport report) {
    World world = plan.world();
    layout.heading("Machines drawn: " + appliance.kind());
    layout.hanging(
        "  ",
        ("%s machines with seed %s. The owner of each is asked for %s %s, then it has %s %s by"
                + " ordinary instruments. Faults come by their"
                + " priors, with odds of %s of them since mostly one cause is behind a complaint, up"
                + " to %s in a group of parts, at any severity alike; %s have nothing wrong, %s of the"
                + " groups do what no known fault explains, %s of the readings are wrong altogether"
                + " (%s).")
            .formatted(
                report.jobs(),
                plan.seed(),
                report.asked().size(),
                report.asked().size() == 1 ? "symptom" : "symptoms",
                report.readings(),
                report.readings() == 1 ? "reading" : "readings",
                percent(world.coincidence()),
                world.mostTogether(),
                percent(world.nothingWrong()),
                percent(world.beside(world.unexplained())),
                percent(world.blunder()),
                EngineSettings.SOURCE.standing().words()));
    if (wrongBy != 0) {
      layout.hanging(
          "  ",
          "Their curves lie %s %s those that the diagnosis is told."
              .formatted(percent(Math.abs(wrongBy)), wrongBy > 0 ? "above" : "below"));
    }
  }

  private void unmeasured(SimulationReport report) {
    layout.heading("How often it is right before any reading");
    scores(report.unmeasured());
    layout.hanging(
        "  ",
        "Asked for: %s."
            .formatted(report.asked().isEmpty() ? "nothing" : String.join(", ", report.asked())));
    expectedErrors(report.unmeasured());
  }

  private void measured(SimulationReport.Quality quality) {
    layout.heading("How often it is right with all readings");
    scores(quality);
    layout.hanging(
        "  ",
        "One clear fault: a single fault of severity %s or more, and nothing else."
            .formatted(fixed(SimulationReport.CLEAR, 1)));
  }

  private void scores(SimulationReport.Quality quality) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "all machines", "one clear fault"));
    SimulationReport.Scores all = quality.all();
    SimulationReport.Scores single = quality.clearSingles();
    rows.add(List.of("machines", Integer.toString(all.jobs()), Integer.toString(single.jobs())));
    rows.add(row("likeliest state is the truth", all.first(), single.first()));
    rows.add(row("truth among the three likeliest", all.amongThree(), single.amongThree()));
    rows.add(row("likeliest fault is there", all.faultFirst(), single.faultFirst()));
    rows.add(
        row("one of three likeliest is there", all.faultAmongThree(), single.faultAmongThree()));
    rows.add(plain("Brier score, likeliest state", all.brier(), single.brier()));
    rows.add(plain("log loss, likeliest state (nats)", all.logLoss(), single.logLoss()));
    rows.add(plain("Brier score, every fault", all.faultBrier(), single.faultBrier()));
    rows.add(plain("log loss, every fault (nats)", all.faultLogLoss(), single.faultLogLoss()));
    layout.figures("  ", rows);
  }

  private void calibration(SimulationReport.Quality quality) {
    layout.heading("Whether it is right as often as it says");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("said", "machines", "came", "0" + " ".repeat(PLOT - 2) + "1"));
    for (CalibrationTable.Bin bin : quality.states().bins()) {
      if (bin.cases() > 0) {
        rows.add(
            List.of(
                fixed(bin.said(), 3),
                Integer.toString(bin.cases()),
                fixed(bin.came(), 3),
                plot(bin)));
      }
    }
    layout.figures("  ", rows);
    layout.hanging("  ", "Plot: o what was said, x what came, # both alike.");
    expectedErrors(quality);
  }

  private void expectedErrors(SimulationReport.Quality quality) {
    layout.hanging(
        "  ",
        ("Expected calibration error: %s for the likeliest state, %s over the probabilities of every"
                + " fault.")
            .formatted(
                fixed(quality.states().expectedError(), 4),
                fixed(quality.faults().expectedError(), 4)));
  }

  private static String plot(CalibrationTable.Bin bin) {
    char[] cells = ".".repeat(PLOT).toCharArray();
    int said = cell(bin.said());
    int came = cell(bin.came());
    cells[said] = 'o';
    cells[came] = said == came ? '#' : 'x';
    return new String(cells);
  }

  private static int cell(double probability) {
    return (int) Math.min(PLOT - 1, PLOT * probability);
  }

  private void sureness(SimulationReport.Sureness sureness) {
    layout.heading("Sure and wrong");
    layout.hanging(
        "  ",
        ("Sure (%s or more) of %s machines, and wrong of %s of them; by what it said it should have"
                + " been wrong of %s. A fault that is not there was named on %s of them.")
            .formatted(
                percent(SimulationReport.SURE),
                sureness.sure(),
                sureness.wrong(),
                fixed(sureness.wrongExpected(), 1),
                sureness.absentFault()));
  }

  private void confusions(SimulationReport report) {
    layout.heading("Most confused");
    if (report.confusions().isEmpty()) {
      layout.hanging("  ", "Nothing was taken for anything else.");
    }
    for (SimulationReport.Confusion confusion :
        report.confusions().subList(0, Math.min(CONFUSIONS, report.confusions().size()))) {
      layout.hanging(
          "  ",
          "%s taken for %s: %s\u00a0of\u00a0%s"
              .formatted(
                  confusion.truth(), confusion.said(), confusion.jobs(), confusion.ofJobs()));
    }
  }

  private void walks(List<SimulationReport.Walks> walks) {
    layout.heading("How soon it is sure");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("order", "sure", "and right", "readings", "minutes", "readings*", "minutes*"));
    for (SimulationReport.Walks each : walks) {
      rows.add(
          List.of(
              each.order().words(),
              Integer.toString(each.reached()),
              Integer.toString(each.right()),
              fixed(each.readings(), 1),
              fixed(each.minutes(), 1),
              fixed(each.readingsIfReached(), 1),
              fixed(each.minutesIfReached(), 1)));
    }
    layout.figures("  ", rows);
    SimulationReport.Walks led = walks.get(0);
    SimulationReport.Walks fixed = walks.get(1);
    layout.hanging(
        "  ",
        ("Of %s machines. Means over all of them, one that it was never sure of with all its"
                + " readings; * over the %s of which it became sure in every order.%s")
            .formatted(led.jobs(), led.reachedByAll(), saved(led, fixed)));
  }

  private static String saved(SimulationReport.Walks led, SimulationReport.Walks fixed) {
    if (led.reachedByAll() == 0) {
      return " Of none, so no minutes are compared.";
    }
    return " Led it takes %s fewer minutes* than in the fixed order (%s over all)."
        .formatted(
            percent(1 - led.minutesIfReached() / fixed.minutesIfReached()),
            percent(1 - led.minutes() / fixed.minutes()));
  }

  private static List<String> row(String words, double all, double single) {
    return List.of(words, percent(all), percent(single));
  }

  private static List<String> plain(String words, double all, double single) {
    return List.of(words, fixed(all, 4), fixed(single, 4));
  }

  private static String percent(double share) {
    return Double.isFinite(share) ? fixed(100 * share, 1) + "\u00a0%" : "none";
  }

  private static String fixed(double value, int places) {
    return Double.isFinite(value) ? QuantityFormat.fixed(value, places) : "none";
  }
}
