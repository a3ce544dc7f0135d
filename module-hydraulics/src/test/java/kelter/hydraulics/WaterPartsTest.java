package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The small parts that water runs through: what their faults move, and what conforms. */
class WaterPartsTest {

  private static final HydraulicsModule MODULE = new HydraulicsModule();

  static List<Appliance> machines() {
    return SampleWaterParts.all();
  }

  static Stream<FaultModel> models() {
    return machines().stream().flatMap(machine -> MODULE.parts().faultModels(machine).stream());
  }

  private static double[][] forecast(FaultModel model, double... severities) {
    int questions = model.questions().size();
    double[] value = new double[questions];
    double[] spread = new double[questions];
    model.forecaster(model.questions()).forecast(severities, value, spread);
    return new double[][] {value, spread};
  }

  private static double[] none(FaultModel model) {
    return new double[model.faults().size() + model.shared().size()];
  }

  /** Each fault moves a yes by 0.3, or a figure or grade by three spreads. */
  @ParameterizedTest
  @MethodSource("models")
  void everyFaultMovesSomething(FaultModel model) {
    double[][] healthy = forecast(model, none(model));
    for (int f = 0; f < model.faults().size(); f++) {
      double[] worst = none(model);
      worst[f] = 1;
      double[][] faulty = forecast(model, worst);
      boolean moved = false;
      for (int i = 0; i < healthy[0].length; i++) {
        moved |= steps(model.questions().get(i).observable(), healthy, faulty, i) > 1;
      }
      assertTrue(moved, model.faults().get(f).key());
    }
  }

  /** No two faults of a model look alike in all of their readings. */
  @ParameterizedTest
  @MethodSource("models")
  void noTwoFaultsLookAlike(FaultModel model) {
    for (int f = 0; f < model.faults().size(); f++) {
      for (int g = 0; g < f; g++) {
        double[] one = none(model);
        double[] other = none(model);
        one[f] = 0.8;
        other[g] = 0.8;
        double[][] first = forecast(model, one);
        double[][] second = forecast(model, other);
        double most = 0;
        for (int i = 0; i < first[0].length; i++) {
          Observable observable = model.questions().get(i).observable();
          most = Math.max(most, steps(observable, first, second, i));
        }
        assertTrue(most > 1, model.faults().get(f).key() + " like " + model.faults().get(g).key());
      }
    }
  }

  /** How far two forecasts are apart, by 0.3 of a yes or three spreads. */
  private static double steps(Observable observable, double[][] one, double[][] other, int i) {
    if (observable.type() == Observable.Type.YES_NO) {
      return Math.abs(one[0][i] - other[0][i]) / 0.3;
    }
    double by =
        observable.logarithmic() ? Math.log(one[0][i] / other[0][i]) : one[0][i] - other[0][i];
    return Math.abs(by) / (3 * Math.min(one[1][i], other[1][i]));
  }

  /** What a machine in order shows conforms, wherever there is a limit for it. */
  @ParameterizedTest
  @MethodSource("machines")
  void whatIsInOrderConforms(Appliance machine) {
    List<Measurement> read = new ArrayList<>();
    for (FaultModel model : MODULE.parts().faultModels(machine)) {
      double[] healthy = forecast(model, none(model))[0];
      for (int i = 0; i < healthy.length; i++) {
        Question question = model.questions().get(i);
        if (question.observable().type() == Observable.Type.QUANTITY) {
          read.add(reading(question, healthy[i]));
        }
      }
    }
    for (Finding finding : findings(machine, read)) {
      assertTrue(finding.verdict() != Verdict.DOES_NOT_CONFORM, finding.id() + finding.limits());
    }
  }

  private static Measurement reading(Question question, double si) {
    return new Measurement(
        question.component(),
        question.observable().id(),
        List.of(new Reading.Value(Quantity.ofSi(si, 0, question.observable().kind()), 0)),
        Conditions.NONE,
        Optional.empty(),
        "");
  }

  private static List<Finding> findings(Appliance machine, List<Measurement> read) {
    Job job = new Job("test", "", machine, Complaint.NONE, List.of(), read, Optional.empty());
    return MODULE.parts().checks().stream()
        .flatMap(check -> check.apply(job, DecisionRule.USUAL).stream())
        .toList();
  }

  /** Every fault is noticed, and one that can begin slightly is noticed little where it begins. */
  @ParameterizedTest
  @MethodSource("models")
  void everyFaultIsNoticed(FaultModel model) {
    for (Fault fault : model.faults()) {
      boolean wholly =
          Set.of("airlock", "jammed", "coil-open", "dead", "motor-dead", "no-signal", "off-seat")
              .contains(fault.id());
      double worst = 1;
      for (FaultSymptom made : fault.symptoms()) {
        assertEquals(wholly, made.at(1e-6) > 0.101, fault.key() + " " + made.symptom());
        worst *= 1 - made.at(1);
      }
      assertTrue(1 - worst > 0.7, fault.key());
    }
  }

  /**
   * Values in order and at severity 1, in the unit named, by hand: a fifth drawn from a stirred
   * store of 60 °C and 10 °C: 50 (1 - e^-0.2) = 9.06 K; mixing from 0.4 to 0.9 of hot water: 0.5
   * times 50 K = 25 K; a pump of 575 mL/min and 15 bar behind a valve of 10 bar, worn to a quarter:
   * 143.75 mL/min and 3.75 bar; a valve that opens at a third: 3.3 bar; drained through 2 % of its
   * area: 50 times 30 s, told up to 900 s; hard water of 300 mg/L; 300 pulses to a tenth; the rest
   * are the figures of the class.
   */
  @ParameterizedTest
  @CsvSource({
    "dip-tube.broken, dip-tube.early-drop, 0.5, 9.06, K",
    "mixing-valve.stuck, mixing-valve.range, 25, 1, K",
    "brew-pump.worn, brew-pump.free-flow, 575, 143.75, mL/min",
    "brew-pump.worn, brew-pump.blind-pressure, 10, 3.75, bar",
    "over-pressure-valve.drifts, brew-pump.blind-pressure, 10, 3.3, bar",
    "over-pressure-valve.drifts, brew-pump.free-flow, 575, 575, mL/min",
    "tank-valve.stuck, brew-pump.free-flow, 575, 11.5, mL/min",
    "drain-valve.stuck-shut, drain-valve.drain-time, 30, 900, s",
    "softener.salt-out, softener.softened, 30, 300, mg/L",
    "softener-valve.stuck, softener.softened, 30, 300, mg/L",
    "softener.leaks, softener.softened, 30, 30, mg/L",
    "expansion.shut-in, expansion.hot-pressure, 3, 7, bar",
    "anode.spent, anode.current, 1, 0.01, mA",
    "level-probe.scaled, level-probe.in-water, 10, 100000, kOhm",
    "level-probe.scaled, level-probe.dry, 10000, 10000, kOhm",
    "condenser-valve.stuck, condenser-valve.flow, 400, 0, mL/min",
    "steam-path.scaled, steam-path.steam-rate, 25, 2, mL/min",
    "shower-head.clogged, shower-head.share, 88, 8, %",
    "dosing-pump.tube-worn, dosing-pump.delivered, 50, 5, mL/min",
    "dosing-pump.no-signal, dosing-pump.delivered, 50, 50, mL/min",
    "flow-sensor.dirty, flow-sensor.pulses, 300, 30, {pulse}/L",
    "tap.blocked, tap.flow, 6, 0.3, L/min"
  })
  void movedBy(String fault, String observable, double inOrder, double worst, String unit) {
    FaultModel model =
        models()
            .filter(m -> place(m, fault) >= 0 && asked(m, observable) >= 0)
            .findFirst()
            .orElseThrow();
    double[] bad = none(model);
    bad[place(model, fault)] = 1;
    int i = asked(model, observable);
    Observable told = model.questions().get(i).observable();
    double factor = Quantity.of(1, unit, told.kind()).si();
    assertEquals(inOrder * factor, forecast(model, none(model))[0][i], 0.006 * inOrder * factor);
    assertEquals(
        worst * factor, forecast(model, bad)[0][i], 0.006 * Math.max(worst, inOrder) * factor);
  }

  private static int place(FaultModel model, String key) {
    return model.faults().stream().map(Fault::key).toList().indexOf(key);
  }

  private static int asked(FaultModel model, String key) {
    return model.questions().stream()
        .map(question -> question.component() + "." + question.observable().id())
        .toList()
        .indexOf(key);
  }
}
