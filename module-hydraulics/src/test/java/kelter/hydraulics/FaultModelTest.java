package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.drainpump.DrainPump;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FaultModelTest {

  static Stream<FaultModel> models() {
    return SampleMachines.all().stream()
        .flatMap(appliance -> new HydraulicsModule().parts().faultModels(appliance).stream());
  }

  private static FaultModel drain() {
    return model(SampleMachines.drainPump());
  }

  private static FaultModel wash() {
    return model(SampleMachines.washPump());
  }

  private static double[][] forecast(FaultModel model, List<Question> questions, double... s) {
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    model.forecaster(questions).forecast(s, value, spread);
    return new double[][] {value, spread};
  }

  /** No fault, and everything that the model shares as usual. */
  private static double[] none(FaultModel model) {
    return new double[model.faults().size() + model.shared().size()];
  }

  private static double[] with(FaultModel model, String fault, double severity) {
    double[] s = none(model);
    s[
            IntStream.range(0, model.faults().size())
                .filter(i -> model.faults().get(i).id().equals(fault))
                .findFirst()
                .orElseThrow()] =
        severity;
    return s;
  }

  private static double usual(FaultModel model, String observable) {
    return value(model, observable, none(model));
  }

  private static double value(FaultModel model, String observable, double[] s) {
    List<Question> questions = model.questions();
    int place =
        IntStream.range(0, questions.size())
            .filter(i -> questions.get(i).observable().id().equals(observable))
            .findFirst()
            .orElseThrow();
    return forecast(model, questions, s)[0][place];
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyForecastIsFiniteAndInsideItsSpan(FaultModel model) {
    List<Question> questions = model.questions();
    Forecaster forecaster = model.forecaster(questions);
    Random random = new Random(7);
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    for (int n = 0; n < 3000; n++) {
      double[] s = none(model);
      for (int k = 0; k < 3; k++) {
        s[random.nextInt(model.faults().size())] = random.nextInt(5) == 0 ? 1 : random.nextDouble();
      }
      forecaster.forecast(s, value, spread);
      for (int i = 0; i < value.length; i++) {
        Observable observable = questions.get(i).observable();
        String what = observable.id() + " " + value[i] + " ± " + spread[i];
        assertTrue(
            value[i] >= observable.span().low() && value[i] <= observable.span().high(), what);
        assertTrue(spread[i] > 0 && Double.isFinite(spread[i]), what);
        if (observable.type() == Observable.Type.YES_NO) {
          assertTrue(value[i] > 0 && value[i] < 1, what);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyFaultMovesSomething(FaultModel model) {
    List<Question> questions = model.questions();
    double[][] healthy = forecast(model, questions, none(model));
    for (int f = 0; f < model.faults().size(); f++) {
      double[] s = none(model);
      s[f] = 1;
      double[][] faulty = forecast(model, questions, s);
      boolean moved = false;
      for (int i = 0; i < questions.size(); i++) {
        double by = Math.abs(faulty[0][i] - healthy[0][i]);
        boolean symptom = questions.get(i).observable().type() == Observable.Type.YES_NO;
        moved |= symptom ? by > 0.3 : by > 3 * healthy[1][i];
      }
      assertTrue(moved, model.faults().get(f).key());
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void sameAnswerTwiceAndNothingChanged(FaultModel model) {
    double[] s = none(model);
    s[1] = 0.4;
    double[] kept = s.clone();
    List<Question> questions = model.questions();
    assertArrayEquals(forecast(model, questions, s)[0], forecast(model, questions, s)[0]);
    assertArrayEquals(kept, s);
  }

  /**
   * The good pump shows its own curve: 2.0 m at no flow and 1.55 m at 10 L/min, as the job says.
   */
  @Test
  void healthyHeadIsThatOfTheCurve() {
    FaultModel drain = drain();
    assertEquals(2.0, usual(drain, "head"), 1e-6);
    Question at10 =
        new Question(
            "drain-pump",
            SampleMachines.word(new DrainPump(), "head"),
            new Conditions(Map.of("flow", Quantity.of(10, "L/min", QuantityKind.FLOW))));
    assertEquals(1.55, forecast(drain, List.of(at10), none(drain))[0][0], 1e-6);
    assertEquals(3.4, usual(wash(), "head"), 1e-6);
  }

  @Test
  void healthyPowerIsThatOfTheNameplate() {
    assertEquals(30, usual(drain(), "power"), 0.01);
    assertEquals(75, usual(wash(), "power"), 0.5);
  }

  /** A hose does nothing at no flow; the pump's own faults do (general pump literature). */
  @Test
  void headAtNoFlowTellsPumpFromHose() {
    FaultModel drain = drain();
    for (String path : List.of("hose-clogged", "lift-too-high", "valve-shut", "strainer-clogged")) {
      assertEquals(2.0, value(drain, "head", with(drain, path, 0.8)), 1e-6, path);
      assertTrue(value(drain, "flow", with(drain, path, 0.8)) < 0.75 * usual(drain, "flow"), path);
    }
    for (String pump : List.of("impeller-slips", "internal-leak", "passages-blocked")) {
      assertTrue(value(drain, "head", with(drain, pump, 0.8)) < 1.75, pump);
    }
  }

  /**
   * Low flow with low power: outlet too tight, slipping impeller or air; low flow with usual or
   * high power: something rubs or runs back (general pump literature, from memory).
   */
  @Test
  void powerTellsDragFromTightness() {
    FaultModel wash = wash();
    double usual = usual(wash, "power");
    assertTrue(value(wash, "power", with(wash, "jets-clogged", 0.8)) < 0.95 * usual);
    assertTrue(value(wash, "power", with(wash, "inlet-clogged", 0.9)) < 0.95 * usual);
    assertTrue(value(wash, "power", with(wash, "impeller-slips", 0.8)) < 0.8 * usual);
    assertTrue(value(wash, "power", with(wash, "low-water", 0.8)) < 0.95 * usual);
    assertTrue(value(wash, "power", with(wash, "drag", 0.8)) > 1.2 * usual);
    assertTrue(value(wash, "power", with(wash, "internal-leak", 0.8)) > 0.97 * usual);
  }

  /** Closed jets raise the pressure before them; everything else lowers it. */
  @Test
  void pressureTellsClosedJets() {
    FaultModel wash = wash();
    double usual = usual(wash, "jet-pressure");
    assertTrue(value(wash, "jet-pressure", with(wash, "jets-clogged", 0.6)) > 1.2 * usual);
    for (String other : List.of("passages-blocked", "inlet-clogged", "internal-leak", "slow")) {
      assertTrue(value(wash, "jet-pressure", with(wash, other, 0.8)) < 0.8 * usual, other);
    }
  }

  /** A restriction before the pump shows on the suction side only, by physics. */
  @Test
  void suctionTellsTheInlet() {
    FaultModel wash = wash();
    double usual = usual(wash, "inlet-pressure");
    assertTrue(value(wash, "inlet-pressure", with(wash, "inlet-clogged", 0.7)) < usual - 3000);
    assertTrue(value(wash, "inlet-pressure", with(wash, "jets-clogged", 0.7)) >= usual);
  }

  @Test
  void flowFallsWithEverySeverity() {
    FaultModel drain = drain();
    for (int f = 0; f < drain.faults().size(); f++) {
      double last = Double.MAX_VALUE;
      for (double severity = 0; severity <= 1; severity += 0.05) {
        double[] s = none(drain);
        s[f] = severity;
        double flow = value(drain, "flow", s);
        assertTrue(flow <= last + 1e-9, drain.faults().get(f).id() + " at " + severity);
        last = flow;
      }
    }
  }

  @Test
  void noCurveMeansATypicalOneAndThatIsSaid() {
    Component bare =
        new Component(
            "drain-pump",
            "drain-pump",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            SampleMachines.drainPump().source());
    FaultModel typical = model(bare);
    double[][] known = forecast(drain(), drain().questions(), none(drain()));
    double[][] wide = forecast(typical, typical.questions(), none(typical));
    assertTrue(wide[1][0] > 4 * known[1][0]);
    assertTrue(typical.faults().get(0).source().document().contains("typical pump"));
    assertEquals(drain().questions().size() - 2, typical.questions().size());
  }

  @Test
  void risingCurveIsTold() {
    Component odd =
        new Component(
            "drain-pump",
            "drain-pump",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of("head", SampleMachines.curve(0, 1, 10, 2, 20, 0.5)),
            SampleMachines.drainPump().source());
    InputException refused =
        assertThrows(
            InputException.class,
            () -> new HydraulicsModule().parts().faultModels(SampleMachines.with(odd)));
    assertTrue(refused.getMessage().contains("point 2"), refused.getMessage());
  }

  private static Component madeFor(double hertz) {
    Component pump = SampleMachines.drainPump();
    Nameplate plate =
        new Nameplate(
            Optional.of(RatedRange.parse("230 V", QuantityKind.VOLTAGE)),
            Optional.of(RatedRange.of(Quantity.of(hertz, "Hz", QuantityKind.FREQUENCY))),
            pump.nameplate().power(),
            Optional.empty(),
            Optional.empty());
    return new Component(
        pump.id(), pump.kind(), plate, pump.figures(), pump.curves(), pump.source());
  }

  private static Appliance fiftyHertzMachine(Component component) {
    Nameplate plate =
        new Nameplate(
            Optional.empty(),
            Optional.of(RatedRange.parse("50 Hz", QuantityKind.FREQUENCY)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new Appliance("washer", "", "", "", Optional.empty(), plate, List.of(component));
  }

  /**
   * A pump for 60 Hz in a machine for 50 Hz turns at five sixths of its speed: by the affinity laws
   * 25/36 of 2.0 m are 1.389 m at no flow, and 125/216 of the power on the shaft at a like point.
   */
  @Test
  void sixtyHertzPumpInAFiftyHertzMachine() {
    FaultModel model =
        new HydraulicsModule().parts().faultModels(fiftyHertzMachine(madeFor(60))).get(0);
    assertEquals(1.389, usual(model, "head"), 0.0006);
    assertTrue(usual(model, "flow") < 5 / 6.0 * usual(drain(), "flow"));
    assertTrue(usual(model, "power") < 0.8 * usual(drain(), "power"));
    FaultModel right =
        new HydraulicsModule().parts().faultModels(fiftyHertzMachine(madeFor(50))).get(0);
    assertEquals(2.0, usual(right, "head"), 1e-6);
  }

  /** The frequency that is stated with a reading counts before that of the nameplate. */
  @Test
  void statedFrequencyAndVoltage() {
    FaultModel model =
        new HydraulicsModule().parts().faultModels(fiftyHertzMachine(madeFor(50))).get(0);
    Question at60 = headAt(Quantity.of(60, "Hz", QuantityKind.FREQUENCY), "frequency");
    double[] healthy = none(model);
    assertEquals(1.44 * 2.0, forecast(model, List.of(at60), healthy)[0][0], 1e-6); // (60/50)²
    Question weak = headAt(Quantity.of(120, "V", QuantityKind.VOLTAGE), "voltage");
    double[] drags = with(model, "drag", 0.4);
    assertEquals(2.0, forecast(model, List.of(weak), healthy)[0][0], 1e-6);
    assertEquals(0, forecast(model, List.of(weak), drags)[0][0]); // out of step
    Question odd = headAt(Quantity.of(400, "Hz", QuantityKind.FREQUENCY), "frequency");
    InputException refused =
        assertThrows(InputException.class, () -> model.forecaster(List.of(odd)));
    assertTrue(refused.getMessage().contains("8 times"), refused.getMessage());
  }

  private static Question headAt(Quantity condition, String name) {
    return new Question(
        "drain-pump",
        SampleMachines.word(new DrainPump(), "head"),
        new Conditions(Map.of(name, condition)));
  }

  /** A motor behind an inverter does not notice the mains, and holds its speed up to its limit. */
  @Test
  void inverterDrivenPump() {
    Component pump = madeFor(60);
    Map<String, Quantity> figures = new HashMap<>(pump.figures());
    figures.put("torque-limit", Quantity.of(150, "%", QuantityKind.PERCENT));
    Component driven =
        new Component(
            pump.id(), pump.kind(), pump.nameplate(), figures, pump.curves(), pump.source());
    FaultModel model = new HydraulicsModule().parts().faultModels(fiftyHertzMachine(driven)).get(0);
    assertEquals(2.0, usual(model, "head"), 1e-6);
    double slowed = value(model, "flow", with(model, "drag", 0.5));
    assertTrue(slowed > 0 && slowed < usual(model, "flow"), "gives way, does not stall");
  }

  /**
   * Energy equation: what stands in a clear hose behind the pump is the lift and the loss of the
   * hose, so it falls with the flow if the pump or the strainer is at fault and rises if the way
   * out is.
   */
  @Test
  void headBehindThePump() {
    FaultModel drain = drain();
    double usual = usual(drain, "outlet-head");
    for (String before : List.of("passages-blocked", "strainer-clogged", "internal-leak")) {
      assertTrue(value(drain, "outlet-head", with(drain, before, 0.8)) < 0.9 * usual, before);
    }
    for (String behind : List.of("hose-clogged", "valve-shut", "lift-too-high")) {
      assertTrue(value(drain, "outlet-head", with(drain, behind, 0.8)) > 1.3 * usual, behind);
    }
  }

  /**
   * Behind the check valve the head falls if the valve is shut and rises if the hose is clogged.
   */
  @Test
  void headBehindTheCheckValve() {
    FaultModel drain = drain();
    double usual = usual(drain, "hose-head");
    assertTrue(value(drain, "hose-head", with(drain, "valve-shut", 0.8)) < 0.95 * usual);
    assertTrue(value(drain, "hose-head", with(drain, "hose-clogged", 0.8)) > 1.3 * usual);
    // 15.9 L/min through 19 mm run at 0.935 m/s (circle); a swing check valve of 2 takes 0.089 m.
    assertEquals(0.089, usual(drain, "outlet-head") - usual, 0.0015);
  }

  private static FaultModel model(Component component) {
    return new HydraulicsModule().parts().faultModels(SampleMachines.with(component)).get(0);
  }

  /** A washer of 8 L/min fills with 8 L/min at any ordinary pressure: that is what it is for. */
  @Test
  void regulatorMasksAStrongSupply() {
    FaultModel fill = model(SampleMachines.inletValve());
    assertEquals(8.0 / 60_000, value(fill, "fill-flow", none(fill)), 1e-9);
    assertEquals(8.0 / 60_000, value(fill, "fill-flow", with(fill, "supply-strong", 1)), 1e-9);
    assertTrue(value(fill, "bangs", with(fill, "supply-strong", 0.8)) > 0.7);
  }

  /** A weak supply shows at the tap and on the gauge; a clogged screen shows at neither. */
  @Test
  void gaugeTellsSupplyFromScreen() {
    FaultModel fill = model(SampleMachines.inletValve());
    for (String restriction : List.of("screen-clogged", "hose-kinked", "valve-weak")) {
      double[] s = with(fill, restriction, 0.8);
      assertEquals(300_000, value(fill, "static-pressure", s), 1e-6, restriction);
      assertTrue(value(fill, "fill-flow", s) < 0.8 * 8 / 60_000, restriction);
    }
    assertTrue(value(fill, "static-pressure", with(fill, "supply-weak", 0.8)) < 100_000);
  }

  /**
   * Energy equation: what is half shut takes pressure only while water flows through it. With a
   * gauge at rest it does not show; while the machine fills, and at the bucket, it does.
   */
  @Test
  void halfShutTapShowsOnlyWhileWaterFlows() {
    FaultModel fill = model(SampleMachines.inletValve());
    double[] shut = with(fill, "tap-shut", 0.6);
    assertEquals(300_000, value(fill, "static-pressure", shut), 1e-6);
    assertTrue(value(fill, "tap-flow", shut) < 0.5 * value(fill, "tap-flow", none(fill)));
    assertTrue(
        value(fill, "dynamic-pressure", shut) < 0.5 * value(fill, "dynamic-pressure", none(fill)));
    // 8 of 20 L/min take (8/20)² of 300 kPa: 252 kPa are left (turbulent flow in the pipe).
    assertEquals(252_000, value(fill, "dynamic-pressure", none(fill)), 500);
    double[] clogged = with(fill, "screen-clogged", 0.8);
    assertTrue(value(fill, "dynamic-pressure", clogged) > 252_000, "less flows, more is left");
  }

  /**
   * What blocked vanes cost in head depends on where the debris sits: at worst anything up to all
   * of it, so that neither a tenth nor nine tenths is a surprise (two standard deviations).
   */
  @Test
  void lostHeadOfBlockedVanesIsOpen() {
    FaultModel drain = drain();
    double[][] worst = forecast(drain, drain.questions(), with(drain, "passages-blocked", 1));
    double[][] order = forecast(drain, drain.questions(), none(drain));
    assertEquals("head", drain.questions().get(0).observable().id());
    for (double lost : new double[] {0.1, 0.6, 0.9}) {
      double off = Math.abs(order[0][0] * (1 - lost) - worst[0][0]);
      assertTrue(off < 2 * worst[1][0], lost + ": " + worst[0][0] + " ± " + worst[1][0]);
    }
    assertTrue(worst[1][0] > 3 * order[1][0]);
  }

  /**
   * Revolving fields: a field that turns backward takes the torque of a motor with a weak capacitor
   * away, not its current. It slips more, and the slip draws more current, up to what it draws
   * while it is held (A. E. Fitzgerald and others, Electric Machinery, single-phase motors; from
   * memory).
   */
  @Test
  void slowMotorDrawsMore() {
    FaultModel wash = wash();
    double held = value(wash, "current", with(wash, "jammed", 1));
    double last = usual(wash, "current");
    for (double severity : new double[] {0.2, 0.5, 1}) {
      double[] slow = with(wash, "slow", severity);
      double current = value(wash, "current", slow);
      assertTrue(current > 1.1 * last && current < held, severity + ": " + current + " A");
      assertTrue(value(wash, "power", slow) > 1.2 * usual(wash, "power"));
      assertTrue(value(wash, "jet-pressure", slow) < usual(wash, "jet-pressure"));
      last = current;
    }
    assertTrue(held > 2 * usual(wash, "current"), held + " A, see InductionMachineTest");
  }

  /** A motor behind an inverter that turns slowly is told to by its control, and takes less. */
  @Test
  void slowInverterTakesLess() {
    Component pump = SampleMachines.washPump();
    Map<String, Quantity> figures = new HashMap<>(pump.figures());
    figures.put("torque-limit", Quantity.of(150, "%", QuantityKind.PERCENT));
    FaultModel driven =
        model(
            new Component(
                pump.id(), pump.kind(), pump.nameplate(), figures, pump.curves(), pump.source()));
    assertTrue(value(driven, "power", with(driven, "slow", 0.5)) < 0.7 * usual(driven, "power"));
  }

  /** Only a leak lets the closed tube lose its pressure; a clogged trap holds it. */
  @Test
  void blowUpTellsLeakFromClog() {
    FaultModel level = model(SampleMachines.levelSensor());
    assertTrue(value(level, "pressure-kept", with(level, "tube-leaks", 0.8)) < 0.2);
    assertEquals(
        value(level, "pressure-kept", new double[4]),
        value(level, "pressure-kept", with(level, "trap-clogged", 0.8)));
    // 120 mm of water at 20 °C, less what the air gives way: 1174.7 Pa at most (9.789 Pa for each
    // mm).
    assertEquals(1174.7, value(level, "trap-pressure", new double[4]), 15);
  }

  /** A sensor that shows too little lets too much water in. */
  @Test
  void lowShowingOverfills() {
    FaultModel level = model(SampleMachines.levelSensor());
    assertTrue(value(level, "underfills", with(level, "drifts-high", 0.8)) > 0.9);
    // Shown 0.6 of the height, it fills to 100 mm / 0.6; shown 1.4 of it, to 100 mm / 1.4.
    assertEquals(0.1667, value(level, "filled-height", with(level, "drifts-low", 0.8)), 1e-4);
    assertEquals(0.0714, value(level, "filled-height", with(level, "drifts-high", 0.8)), 1e-4);
  }
}
