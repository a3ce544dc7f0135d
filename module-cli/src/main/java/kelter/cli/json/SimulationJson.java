package kelter.cli.json;

import java.io.IOException;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.simulation.CalibrationTable;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.job.Appliance;

/** How good the diagnosis is, as JSON. */
public final class SimulationJson {

  private SimulationJson() {}

  /**
   * A simulation.
   *
   * @param appliance the kind of machine
   * @param plan how much was tried
   * @param wrongBy how much higher the curves of the machines were than what the diagnosis was
   *     told, as a ratio
   * @param report what came out
   * @return the result
   */
  public static JsonResult of(
      Appliance appliance, SimulationPlan plan, double wrongBy, SimulationReport report) {
    return new JsonResult(
        ResultFormat.SIMULATION.id(),
        out -> {
          out.text("appliance", appliance.kind());
          out.object("drawn", () -> drawn(out, plan, wrongBy, report));
          out.object("unmeasured", () -> quality(out, report.unmeasured()));
          quality(out, report.measured());
          out.objects("confusions", report.confusions(), confusion -> confusion(out, confusion));
          out.objects("orders", report.walks(), walks -> walks(out, walks));
        });
  }

  private static void drawn(
      JsonOutput out, SimulationPlan plan, double wrongBy, SimulationReport report)
      throws IOException {
    World world = plan.world();
    out.number("jobs", report.jobs());
    out.number("led", plan.ledJobs());
    out.text("seed", Long.toString(plan.seed()));
    out.texts("symptoms", report.asked());
    out.number("readings", report.readings());
    out.number("nothing-wrong", world.nothingWrong());
    out.number("unexplained", world.unexplained());
    out.number("coincidence", world.coincidence());
    out.number("blunder", world.blunder());
    out.number("most-together", world.mostTogether());
    out.number("curves-wrong-by", wrongBy);
    out.source(EngineSettings.SOURCE);
  }

  private static void quality(JsonOutput out, SimulationReport.Quality quality) throws IOException {
    out.object("all", () -> scores(out, quality.all()));
    out.object("clear-singles", () -> scores(out, quality.clearSingles()));
    out.object("sureness", () -> sureness(out, quality.sureness()));
    out.object("calibration", () -> calibration(out, quality.states()));
    out.object("calibration-of-faults", () -> calibration(out, quality.faults()));
  }

  private static void scores(JsonOutput out, SimulationReport.Scores scores) throws IOException {
    out.number("jobs", scores.jobs());
    out.number("first", scores.first());
    out.number("among-three", scores.amongThree());
    out.number("fault-first", scores.faultFirst());
    out.number("fault-among-three", scores.faultAmongThree());
    out.number("brier", scores.brier());
    out.number("log-loss", scores.logLoss());
    out.number("fault-brier", scores.faultBrier());
    out.number("fault-log-loss", scores.faultLogLoss());
  }

  private static void sureness(JsonOutput out, SimulationReport.Sureness sureness)
      throws IOException {
    out.number("level", SimulationReport.SURE);
    out.number("sure", sureness.sure());
    out.number("wrong", sureness.wrong());
    out.number("wrong-expected", sureness.wrongExpected());
    out.number("absent-fault", sureness.absentFault());
  }

  private static void calibration(JsonOutput out, CalibrationTable table) throws IOException {
    out.number("expected-error", table.expectedError());
    out.number("rms-error", table.rmsError());
    out.number("greatest-error", table.greatestError());
    out.objects(
        "bins",
        table.bins(),
        bin -> {
          out.number("low", bin.low());
          out.number("high", bin.high());
          out.number("cases", bin.cases());
          out.number("said", bin.said());
          out.number("came", bin.came());
        });
  }

  private static void confusion(JsonOutput out, SimulationReport.Confusion confusion)
      throws IOException {
    out.text("truth", confusion.truth());
    out.text("said", confusion.said());
    out.number("jobs", confusion.jobs());
    out.number("of-jobs", confusion.ofJobs());
  }

  private static void walks(JsonOutput out, SimulationReport.Walks walks) throws IOException {
    out.word("order", walks.order().id(), walks.order().words());
    out.number("jobs", walks.jobs());
    out.number("reached", walks.reached());
    out.number("right", walks.right());
    out.number("readings", walks.readings());
    out.number("minutes", walks.minutes());
    out.number("reached-by-all", walks.reachedByAll());
    out.number("readings-if-reached", walks.readingsIfReached());
    out.number("minutes-if-reached", walks.minutesIfReached());
  }
}
