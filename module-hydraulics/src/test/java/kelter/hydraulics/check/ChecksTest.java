package kelter.hydraulics.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleMachines;
import org.junit.jupiter.api.Test;

class ChecksTest {

  private static Job job(Component component, Measurement... measurements) {
    return new Job(
        "test",
        "",
        SampleMachines.with(component),
        Complaint.NONE,
        List.of(),
        List.of(measurements),
        Optional.empty());
  }

  private static Measurement read(
      String component, String observable, Quantity quantity, Conditions conditions) {
    return new Measurement(
        component,
        observable,
        List.of(new Reading.Value(quantity, 0)),
        conditions,
        Optional.empty(),
        "");
  }

  private static List<Finding> findings(Job job) {
    List<Finding> findings = new ArrayList<>();
    for (Check check : new HydraulicsModule().checks()) {
      findings.addAll(check.apply(job, DecisionRule.USUAL));
    }
    return findings;
  }

  private static Finding only(Job job) {
    List<Finding> findings = findings(job);
    assertEquals(1, findings.size());
    return findings.get(0);
  }

  private static Measurement head(double metres, Conditions conditions) {
    return read("drain-pump", "head", Quantity.of(metres, "m", QuantityKind.HEAD), conditions);
  }

  /** ISO 9906:2012, Table 8, grade 3B, from memory: ±7 % of 2.00 m is 1.86 to 2.14 m. */
  @Test
  void headAtNoFlow() {
    Finding finding = only(job(SampleMachines.drainPump(), head(1.95, Conditions.NONE)));
    assertEquals(Verdict.CONFORMS, finding.verdict());
    assertEquals(1.86, finding.limits().low(), 1e-5);
    assertEquals(2.14, finding.limits().high(), 1e-5);
    assertFalse(finding.cautions().isEmpty());
  }

  @Test
  void lowHeadDoesNotConform() {
    assertEquals(
        Verdict.DOES_NOT_CONFORM,
        only(job(SampleMachines.drainPump(), head(0.62, Conditions.NONE))).verdict());
  }

  @Test
  void headAtTheLimitIsUndecided() {
    assertEquals(
        Verdict.UNDECIDED,
        only(job(SampleMachines.drainPump(), head(1.861, Conditions.NONE))).verdict());
  }

  @Test
  void flowBeyondTheCurveIsAFindingWithoutVerdict() {
    Conditions beyond = new Conditions(Map.of("flow", Quantity.of(60, "L/min", QuantityKind.FLOW)));
    Finding finding = only(job(SampleMachines.drainPump(), head(1, beyond)));
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertTrue(finding.remark().contains("60.0 L/min is outside"), finding.remark());
  }

  /** IEC 335-1:1991, 10.1, Table 1: a motor of 100 W may take 120 W, one of 350 W 410 W. */
  @Test
  void powerOfTheStandard() {
    assertEquals(120, PumpPowerCheck.most(100), 1e-9);
    assertEquals(410, PumpPowerCheck.most(350), 1e-9);
  }

  @Test
  void powerAgainstTheNameplate() {
    Quantity high = Quantity.of(45, "W", QuantityKind.POWER);
    Job job = job(SampleMachines.drainPump(), read("drain-pump", "power", high, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }

  @Test
  void weakFlowDoesNotConform() {
    Quantity weak = Quantity.of(5, "L/min", QuantityKind.FLOW);
    Job job = job(SampleMachines.drainPump(), read("drain-pump", "flow", weak, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }

  @Test
  void jetPressure() {
    Quantity weak = Quantity.of(2, "kPa", QuantityKind.GAUGE_PRESSURE);
    Job job =
        job(SampleMachines.washPump(), read("wash-pump", "jet-pressure", weak, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }

  @Test
  void nothingReadNothingFound() {
    assertEquals(List.of(), findings(job(SampleMachines.drainPump())));
  }

  /** Common practice, no source: 75 % of 8 L/min are 6 L/min. */
  @Test
  void slowFillDoesNotConform() {
    Quantity slow = Quantity.of(4, "L/min", QuantityKind.FLOW);
    Job job =
        job(SampleMachines.inletValve(), read("inlet-valve", "fill-flow", slow, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
    assertEquals(6.0 / 60_000, only(job).limits().low(), 1e-9);
  }

  @Test
  void supplyPressure() {
    Quantity usual = Quantity.of(3, "bar", QuantityKind.GAUGE_PRESSURE);
    Job job =
        job(
            SampleMachines.inletValve(),
            read("inlet-valve", "static-pressure", usual, Conditions.NONE));
    assertEquals(Verdict.CONFORMS, only(job).verdict());
  }

  /** 100 mm of water at 20 °C are 978.9 Pa (arithmetic on IAPWS R6-95). */
  @Test
  void trapPressureAgainstTheWater() {
    Conditions at100 =
        new Conditions(Map.of("height", Quantity.of(100, "mm", QuantityKind.LENGTH)));
    Quantity right = Quantity.of(970, "Pa", QuantityKind.GAUGE_PRESSURE);
    Finding finding =
        only(
            job(SampleMachines.levelSensor(), read("level-sensor", "trap-pressure", right, at100)));
    assertEquals(Verdict.CONFORMS, finding.verdict());
    assertEquals(978.9, (finding.limits().low() + finding.limits().high()) / 2, 0.05);
    Quantity low = Quantity.of(500, "Pa", QuantityKind.GAUGE_PRESSURE);
    assertEquals(
        Verdict.DOES_NOT_CONFORM,
        only(job(SampleMachines.levelSensor(), read("level-sensor", "trap-pressure", low, at100)))
            .verdict());
  }

  @Test
  void leakingTube() {
    Quantity kept = Quantity.of(40, "%", QuantityKind.PERCENT);
    Job job =
        job(
            SampleMachines.levelSensor(),
            read("level-sensor", "pressure-kept", kept, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }
}
