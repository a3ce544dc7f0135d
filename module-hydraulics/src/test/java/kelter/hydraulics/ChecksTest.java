package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
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
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.module.Parts;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
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
    for (Check check : new HydraulicsModule().parts().checks()) {
      findings.addAll(check.apply(job, DecisionRule.USUAL));
    }
    return findings;
  }

  private static Finding only(Job job) {
    List<Finding> findings = findings(job);
    assertEquals(1, findings.size());
    return findings.get(0);
  }

  private static Finding named(Job job, String id) {
    return findings(job).stream()
        .filter(f -> f.id().startsWith(id + "."))
        .findFirst()
        .orElseThrow();
  }

  private static Conditions at(String name, Quantity figure) {
    return new Conditions(Map.of(name, figure));
  }

  private static Component with(Component component, String name, Quantity figure) {
    Map<String, Quantity> figures = new HashMap<>(component.figures());
    figures.put(name, figure);
    return new Component(
        component.id(),
        component.kind(),
        component.nameplate(),
        figures,
        component.curves(),
        component.source());
  }

  private static Measurement suction(double kilopascals, Conditions conditions) {
    Quantity pressure = Quantity.of(kilopascals, "kPa", QuantityKind.GAUGE_PRESSURE);
    return read("wash-pump", "inlet-pressure", pressure, conditions);
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
    assertTrue(finding.remark().contains("60 L/min is outside"), finding.remark());
  }

  /** IEC 335-1:1991, 10.1, Table 1: a motor of 100 W may take 120 W, one of 350 W 410 W. */
  @Test
  void powerOfTheStandard() {
    assertEquals(120, mostPower("100 W"), 1e-9);
    assertEquals(410, mostPower("350 W"), 1e-9);
  }

  private static double mostPower(String rated) {
    Component pump = SampleMachines.drainPump();
    Nameplate plate =
        new Nameplate(
            Optional.empty(),
            Optional.empty(),
            Optional.of(RatedRange.parse(rated, QuantityKind.POWER)),
            Optional.empty(),
            Optional.empty());
    Component made =
        new Component(pump.id(), pump.kind(), plate, pump.figures(), pump.curves(), pump.source());
    return only(job(made, power(made, 30))).limits().high();
  }

  @Test
  void powerAgainstTheNameplate() {
    Quantity high = Quantity.of(45, "W", QuantityKind.POWER);
    Job job = job(SampleMachines.drainPump(), read("drain-pump", "power", high, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }

  /** A pump that runs takes some power: common practice, no source. */
  @Test
  void noPowerDoesNotConform() {
    for (Component pump : List.of(SampleMachines.drainPump(), SampleMachines.washPump())) {
      assertEquals(Verdict.DOES_NOT_CONFORM, only(job(pump, power(pump, 0))).verdict());
      assertEquals(Verdict.CONFORMS, only(job(pump, power(pump, 29))).verdict());
    }
  }

  @Test
  void noPowerIsToldWithoutANameplateToo() {
    Component pump = SampleMachines.drainPump();
    Component bare =
        new Component(
            pump.id(),
            pump.kind(),
            Nameplate.UNREADABLE,
            pump.figures(),
            pump.curves(),
            pump.source());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(bare, power(bare, 0))).verdict());
    Finding runs = only(job(bare, power(bare, 25)));
    assertEquals(Verdict.CONFORMS, runs.verdict());
    assertTrue(runs.remark().contains("No rated power"), runs.remark());
  }

  /** An inverter may turn its motor slowly, so that 20 % of the rated power are in order. */
  @Test
  void slowPumpBehindAnInverter() {
    Component driven =
        with(
            SampleMachines.washPump(), "torque-limit", Quantity.of(150, "%", QuantityKind.PERCENT));
    assertEquals(Verdict.CONFORMS, only(job(driven, power(driven, 15))).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(driven, power(driven, 0))).verdict());
  }

  private static Measurement power(Component pump, double watts) {
    return read(pump.id(), "power", Quantity.of(watts, "W", QuantityKind.POWER), Conditions.NONE);
  }

  /** Within 10 % of its figure (common practice, no source), or neither open nor short. */
  @Test
  void windingOfAPump() {
    Component typical = SampleMachines.drainPump();
    Component known =
        with(typical, "winding-resistance", Quantity.of(150, "Ohm", QuantityKind.RESISTANCE));
    assertEquals(Verdict.CONFORMS, only(job(known, winding(150))).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(known, winding(120))).verdict());
    assertEquals(Verdict.CONFORMS, only(job(typical, winding(120))).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(typical, winding(5))).verdict());
    Measurement open =
        new Measurement(
            "drain-pump",
            "winding-resistance",
            List.of(new Reading.OverRange()),
            Conditions.NONE,
            Optional.empty(),
            "");
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(typical, open)).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job(known, open)).verdict());
  }

  private static Measurement winding(double ohm) {
    return read(
        "drain-pump",
        "winding-resistance",
        Quantity.of(ohm, "Ohm", QuantityKind.RESISTANCE),
        Conditions.NONE);
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
  void waterBelowTheTrapIsNoHeight() {
    Conditions below =
        new Conditions(Map.of("height", Quantity.of(-100, "mm", QuantityKind.LENGTH)));
    Quantity none = Quantity.of(0, "Pa", QuantityKind.GAUGE_PRESSURE);
    Finding finding =
        only(job(SampleMachines.levelSensor(), read("level-sensor", "trap-pressure", none, below)));
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertEquals("Dip the height of the water and state it as 'height'.", finding.remark());
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

  /**
   * At 80 °C an open sump offers (101.325 - 47.415) kPa / (971.79 kg/m3 9.80665 m/s2) = 5.657 m
   * (arithmetic on IAPWS figures); a pump that needs 2 m may be sucked down to 3.657 m, 34.85 kPa.
   */
  @Test
  void hotWaterBoilsBeforeThePump() {
    Conditions hot = at("temperature", Quantity.of(80, "Cel", QuantityKind.TEMPERATURE));
    Component pump =
        with(SampleMachines.washPump(), "npsh-required", Quantity.of(2, "m", QuantityKind.HEAD));
    Finding boils = named(job(pump, suction(-45, hot)), "suction-cavitation");
    assertEquals(-34_850, boils.limits().low(), 15);
    assertEquals(Verdict.DOES_NOT_CONFORM, boils.verdict());
    assertFalse(boils.cautions().isEmpty());
    assertEquals(
        Verdict.CONFORMS, named(job(pump, suction(-5, hot)), "suction-cavitation").verdict());
  }

  @Test
  void suctionWithoutATemperatureHasNoVerdict() {
    Finding finding =
        named(job(SampleMachines.washPump(), suction(-5, Conditions.NONE)), "suction-cavitation");
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertTrue(finding.remark().contains("temperature"), finding.remark());
  }

  /** Common practice, no source: a clean filter takes 0.3 m, 2.9 kPa, at most. */
  @Test
  void cloggedFilter() {
    Component pump = SampleMachines.washPump();
    Job clogged = job(pump, suction(-9, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, named(clogged, "suction-filter").verdict());
    Job clean = job(pump, suction(-0.5, Conditions.NONE));
    assertEquals(Verdict.CONFORMS, named(clean, "suction-filter").verdict());
  }

  /** Common practice, no source: three quarters of 60 mm are 45 mm. */
  @Test
  void lowWaterDrawsAir() {
    Quantity low = Quantity.of(25, "mm", QuantityKind.LENGTH);
    Finding finding =
        only(job(SampleMachines.washPump(), read("wash-pump", "level", low, Conditions.NONE)));
    assertEquals(0.045, finding.limits().low(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
    assertTrue(finding.remark().contains("9.8"), finding.remark());
  }

  /** Common practice, no source: one jet in ten; 60 % of 30 rpm are 18 rpm. */
  @Test
  void sprayArm() {
    Component pump = SampleMachines.washPump();
    Quantity closed = Quantity.of(30, "%", QuantityKind.PERCENT);
    Job clogged = job(pump, read("wash-pump", "jets-closed", closed, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(clogged).verdict());
    Quantity still = Quantity.of(0, "{rev}/min", QuantityKind.ROTATIONAL_SPEED);
    Job stopped = job(pump, read("wash-pump", "arm-speed", still, Conditions.NONE));
    assertEquals(18.0 / 60, only(stopped).limits().low(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, only(stopped).verdict());
  }

  /** 16 L drain in 16 L / (0.85 Q); the weight of 16 L of water is 16 kg. */
  @Test
  void drainTime() {
    Quantity slow = Quantity.of(150, "s", QuantityKind.TIME);
    Finding finding =
        only(
            job(
                SampleMachines.drainPump(),
                read("drain-pump", "drain-time", slow, Conditions.NONE)));
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
    assertTrue(
        finding.cautions().stream().anyMatch(c -> c.text().contains("16 kg")),
        finding.cautions().toString());
    double flow = 16e-3 / finding.limits().high() / 0.85;
    Quantity weak = Quantity.ofSi(0.8 * flow, 0, QuantityKind.FLOW);
    assertEquals(
        0.85 * flow,
        only(job(SampleMachines.drainPump(), read("drain-pump", "flow", weak, Conditions.NONE)))
            .limits()
            .low(),
        1e-12);
  }

  /** Common practice, no source: 0.8 m as the job says, give or take 0.15 m; 0.4 to 1 m else. */
  @Test
  void heightOfTheHose() {
    Quantity high = Quantity.of(1.3, "m", QuantityKind.HEAD);
    Measurement lift = read("drain-pump", "lift", high, Conditions.NONE);
    Finding finding = only(job(SampleMachines.drainPump(), lift));
    assertEquals(0.95, finding.limits().high(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
    assertTrue(finding.remark().contains("2 m at most"), finding.remark());
    Component bare =
        new Component(
            "drain-pump",
            "drain-pump",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            SampleMachines.drainPump().source());
    assertEquals(1, only(job(bare, lift)).limits().high());
  }

  /** A metre of 19 mm bore holds 0.2835 L (arithmetic on the circle), 1.8 m 0.510 L. */
  @Test
  void backflow() {
    Quantity much = Quantity.of(0.45, "L", QuantityKind.VOLUME);
    Finding finding =
        only(
            job(
                SampleMachines.drainPump(),
                read("drain-pump", "returned-volume", much, Conditions.NONE)));
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
    assertEquals(0.25 * 0.510e-3 + 0.02e-3, finding.limits().high(), 0.5e-6);
  }

  /** Common practice, no source: one and a half times 8 L/min are 12 L/min. */
  @Test
  void weakTap() {
    Quantity weak = Quantity.of(9, "L/min", QuantityKind.FLOW);
    Finding finding =
        only(
            job(
                SampleMachines.inletValve(),
                read("inlet-valve", "tap-flow", weak, Conditions.NONE)));
    assertEquals(12.0 / 60_000, finding.limits().low(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
  }

  @Test
  void supplyTooStrong() {
    Quantity strong = Quantity.of(12, "bar", QuantityKind.GAUGE_PRESSURE);
    Job job =
        job(
            SampleMachines.inletValve(),
            read("inlet-valve", "static-pressure", strong, Conditions.NONE));
    assertEquals(Verdict.DOES_NOT_CONFORM, only(job).verdict());
  }

  /**
   * Copper tube handbooks, from memory: the wave runs at about 1300 m/s in copper of 13 mm and 1
   * mm, so each m/s that is suddenly stopped makes 1.3 MPa. 0.9 MPa are left above a supply of 0.3
   * MPa: 0.69 m/s, 5.5 L/min; 30 m of pipe make 30 ms sudden.
   */
  @Test
  void surgeOfTheClosingValve() {
    Component valve =
        with(
            with(
                SampleMachines.inletValve(),
                "pipe-length",
                Quantity.of(30, "m", QuantityKind.DISTANCE)),
            "pipe-bore",
            Quantity.of(13, "mm", QuantityKind.LENGTH));
    Quantity fill = Quantity.of(8, "L/min", QuantityKind.FLOW);
    Measurement flow = read("inlet-valve", "fill-flow", fill, Conditions.NONE);
    Finding bangs = named(job(valve, flow), "fill-surge");
    assertEquals(5.5, bangs.limits().high() * 60_000, 0.3);
    assertEquals(Verdict.DOES_NOT_CONFORM, bangs.verdict());
    Component near = with(valve, "pipe-length", Quantity.of(5, "m", QuantityKind.DISTANCE));
    assertEquals(Verdict.CONFORMS, named(job(near, flow), "fill-surge").verdict());
    Quantity strong = Quantity.of(13, "bar", QuantityKind.GAUGE_PRESSURE);
    Measurement supply = read("inlet-valve", "static-pressure", strong, Conditions.NONE);
    assertEquals(0, named(job(near, flow, supply), "fill-surge").limits().high());
  }

  /** (50/60)² of 2.00 m are 1.389 m, give or take 7 %: 1.292 to 1.486 m. */
  @Test
  void headOnAnotherFrequency() {
    Component pump = SampleMachines.drainPump();
    Nameplate sixty =
        new Nameplate(
            Optional.empty(),
            Optional.of(RatedRange.parse("60 Hz", QuantityKind.FREQUENCY)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Component foreign =
        new Component(pump.id(), pump.kind(), sixty, pump.figures(), pump.curves(), pump.source());
    Conditions fifty = at("frequency", Quantity.of(50, "Hz", QuantityKind.FREQUENCY));
    Finding finding = only(job(foreign, head(1.39, fifty)));
    assertEquals(Verdict.CONFORMS, finding.verdict());
    assertEquals(1.292, finding.limits().low(), 0.0006);
    assertEquals(1.486, finding.limits().high(), 0.0006);
  }

  /** On the frequency it runs on its curve holds: 2.00 m give or take 7 %, 1.86 to 2.14 m. */
  @Test
  void aPumpForTwoFrequenciesIsToldAsSuch() {
    Component pump = SampleMachines.drainPump();
    Nameplate both =
        new Nameplate(
            Optional.of(RatedRange.parse("220-240 V", QuantityKind.VOLTAGE)),
            Optional.of(RatedRange.parse("50/60 Hz", QuantityKind.FREQUENCY)),
            Optional.of(RatedRange.parse("28-34 W", QuantityKind.POWER)),
            Optional.empty(),
            Optional.empty());
    Component made =
        new Component(pump.id(), pump.kind(), both, pump.figures(), pump.curves(), pump.source());
    Conditions sixty = at("frequency", Quantity.of(60, "Hz", QuantityKind.FREQUENCY));
    Finding finding = only(job(made, head(2.0, sixty)));
    assertEquals(1.86, finding.limits().low(), 0.006);
    assertEquals(2.14, finding.limits().high(), 0.006);
    assertTrue(finding.remark().contains("made for 50 Hz to 60 Hz"), finding.remark());
    Quantity watts = Quantity.of(36, "W", QuantityKind.POWER);
    Measurement power = read("drain-pump", "power", watts, Conditions.NONE);
    assertEquals(40.8, only(job(made, power)).limits().high(), 1e-9); // 34 W and 20 %
  }

  /** Common practice, no source: 100 mm give or take 8 % and 5 mm. */
  @Test
  void fillsTooHigh() {
    Quantity high = Quantity.of(150, "mm", QuantityKind.LENGTH);
    Finding finding =
        only(
            job(
                SampleMachines.levelSensor(),
                read("level-sensor", "filled-height", high, Conditions.NONE)));
    assertEquals(0.113, finding.limits().high(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
  }

  /**
   * Energy equation: 0.6 m of brim drive water through 40 mm with a loss of 5 and some friction at
   * less than sqrt(2 g 0.6 / 5) = 1.534 m/s, 115.7 L/min (arithmetic), and at more than nine tenths
   * of it, since 0.6 m of pipe take about 0.02 0.6 / 0.04 = 0.3 on top of 5.
   */
  @Test
  void standpipeOverflows() {
    Component pump =
        with(
            SampleMachines.drainPump(),
            "standpipe-height",
            Quantity.of(0.6, "m", QuantityKind.HEAD));
    Quantity much = Quantity.of(16, "L/min", QuantityKind.FLOW);
    Measurement flow = read("drain-pump", "flow", much, Conditions.NONE);
    Finding wide = named(job(pump, flow), "drain-hose-standpipe");
    assertEquals(Verdict.CONFORMS, wide.verdict());
    assertTrue(wide.limits().high() * 60_000 < 115.7 && wide.limits().high() * 60_000 > 104);
    Component narrow = with(pump, "standpipe-bore", Quantity.of(12, "mm", QuantityKind.LENGTH));
    assertEquals(
        Verdict.DOES_NOT_CONFORM, named(job(narrow, flow), "drain-hose-standpipe").verdict());
  }

  /** 3 m of lift against 2 m at no flow: nothing flows even in order, and that is said. */
  @Test
  void liftAboveTheCurveIsTold() {
    Component high =
        with(SampleMachines.drainPump(), "static-lift", Quantity.of(3, "m", QuantityKind.HEAD));
    Finding flow =
        named(
            job(
                high,
                read(
                    "drain-pump",
                    "flow",
                    Quantity.of(6, "L/min", QuantityKind.FLOW),
                    Conditions.NONE)),
            "drain-flow");
    assertEquals(Verdict.NOT_MEASURED, flow.verdict());
    assertTrue(flow.remark().contains("lifts 2 m at most"), flow.remark());
    assertTrue(flow.remark().contains("static-lift is 3 m"), flow.remark());
    Parts parts = new HydraulicsModule().parts();
    assertTrue(parts.faultModels(SampleMachines.with(high)).isEmpty());
    assertTrue(
        parts.whyNot(SampleMachines.with(high), high).contains("correct the curve"),
        parts.whyNot(SampleMachines.with(high), high));
  }

  /** The same of jets that lie above what a wash pump lifts. */
  @Test
  void jetsAboveTheCurveAreTold() {
    Component high =
        with(SampleMachines.washPump(), "jet-lift", Quantity.of(6, "m", QuantityKind.HEAD));
    Finding pressure =
        named(
            job(
                high,
                read(
                    "wash-pump",
                    "jet-pressure",
                    Quantity.of(9, "kPa", QuantityKind.GAUGE_PRESSURE),
                    Conditions.NONE)),
            "jet-pressure");
    assertTrue(pressure.remark().contains("lifts 3.4 m at most"), pressure.remark());
    assertTrue(pressure.remark().contains("jet-lift is 6 m"), pressure.remark());
  }

  /** Nothing is wrong with the figures of a pump that reaches its outlet. */
  @Test
  void whatIsInReachNeedsNoReason() {
    for (Component pump : List.of(SampleMachines.drainPump(), SampleMachines.washPump())) {
      assertEquals("", new HydraulicsModule().parts().whyNot(SampleMachines.with(pump), pump));
    }
  }

  /** Common practice, no source: 100 mm that were dipped, give or take 8 % and 5 mm. */
  @Test
  void whatTheMachineShowsIsHeldAgainstWhatWasDipped() {
    Conditions dipped = at("height", Quantity.of(100, "mm", QuantityKind.LENGTH));
    Quantity shown = Quantity.of(120, "mm", QuantityKind.LENGTH);
    Finding finding =
        only(job(SampleMachines.levelSensor(), read("level-sensor", "shown-level", shown, dipped)));
    assertEquals(0.087, finding.limits().low(), 1e-9);
    assertEquals(0.113, finding.limits().high(), 1e-9);
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
  }

  @Test
  void aHeadThatGrewIsDoubtedAndALowOneAtNoFlowIsThePumps() {
    Finding high = only(job(SampleMachines.drainPump(), head(2.6, Conditions.NONE)));
    assertTrue(high.remark().contains("does not gain head with age"), high.remark());
    Finding low = only(job(SampleMachines.drainPump(), head(1.2, Conditions.NONE)));
    assertTrue(low.remark().contains("At no flow the hose plays no part"), low.remark());
    Finding flowing =
        only(
            job(
                SampleMachines.drainPump(),
                head(0.8, at("flow", Quantity.of(10, "L/min", QuantityKind.FLOW)))));
    assertEquals("", flowing.remark());
  }
}
