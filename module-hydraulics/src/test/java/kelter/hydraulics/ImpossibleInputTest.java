package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Question;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be is told as an error or as a finding without a verdict, never as a number. */
class ImpossibleInputTest {

  private static final HydraulicsModule MODULE = new HydraulicsModule();
  private static final double[] ODD = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    0.0,
    -0.0,
    -1,
    1e9
  };

  private static final Map<String, String> AGAINST_A_HOSE =
      Map.ofEntries(
          Map.entry("shut-off-head", "2 m"),
          Map.entry("flow-1", "10 L/min"),
          Map.entry("head-1", "1.55 m"),
          Map.entry("flow-2", "20 L/min"),
          Map.entry("head-2", "0.7 m"),
          Map.entry("lift", "0.8 m"),
          Map.entry("length", "1.8 m"),
          Map.entry("bore", "19 mm"));

  static Stream<Calculation> calculations() {
    return MODULE.calculations().stream();
  }

  private static Calculation calculation(String id) {
    return calculations().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private static String refused(String id, Map<String, String> usual, String name, String odd) {
    Map<String, String> given = new HashMap<>(usual);
    given.put(name, odd);
    return assertThrows(InputException.class, () -> Computation.of(calculation(id), given))
        .getMessage();
  }

  /** Each parameter in turn is no number, endless, huge, zero or below, the others in range. */
  @ParameterizedTest
  @MethodSource("calculations")
  void oddParametersGiveFiguresOrSayWhyNot(Calculation calculation) {
    Random random = new Random(11);
    List<Parameter> parameters = calculation.parameters();
    for (int odd = 0; odd < parameters.size(); odd++) {
      for (double value : ODD) {
        for (int trial = 0; trial < 20; trial++) {
          double[] p = inRange(parameters, random);
          p[odd] = parameters.get(odd).choices().isEmpty() ? value : p[odd];
          requireFigures(calculation, p);
        }
      }
    }
  }

  private static double[] inRange(List<Parameter> parameters, Random random) {
    return parameters.stream()
        .mapToDouble(
            p ->
                p.choices().isEmpty()
                    ? p.low() + random.nextDouble() * (p.high() - p.low())
                    : random.nextInt(p.choices().size()))
        .toArray();
  }

  private static void requireFigures(Calculation calculation, double[] p) {
    try {
      for (double out : calculation.law().apply(p)) {
        assertTrue(Double.isFinite(out), () -> calculation.id() + Arrays.toString(p) + out);
      }
    } catch (IllegalArgumentException told) {
      assertFalse(told.getMessage().isBlank(), calculation.id());
      assertFalse(told.getMessage().contains("null"), told.getMessage());
    }
  }

  /** Water boils at 100 °C in an open sump: no law here holds for it at 140 °C. */
  @ParameterizedTest
  @MethodSource("calculations")
  void waterAt140Degrees(Calculation calculation) {
    List<String> ids = calculation.parameters().stream().map(Parameter::id).toList();
    int place = ids.indexOf("temperature");
    if (place < 0) {
      return;
    }
    double[] p = inRange(calculation.parameters(), new Random(3));
    p[place] = 273.15 + 140;
    assertThrows(IllegalArgumentException.class, () -> calculation.law().apply(p));
    Map<String, String> given = Map.of("temperature", "140 Cel");
    String told =
        assertThrows(InputException.class, () -> Computation.of(calculation, given)).getMessage();
    assertTrue(told.contains("140"), told);
  }

  @ParameterizedTest
  @ValueSource(strings = {"operating-point", "pump-with-motor"})
  void negativeLift(String id) {
    String told = refused(id, AGAINST_A_HOSE, "lift", "-0.3 m");
    assertTrue(told.contains("lift") && told.contains("-0.3"), told);
  }

  @ParameterizedTest
  @ValueSource(strings = {"operating-point", "pump-with-motor"})
  void risingCurve(String id) {
    String told = refused(id, AGAINST_A_HOSE, "head-1", "2.4 m");
    assertTrue(told.contains("point 2"), told);
  }

  @Test
  void flowBeyondTheCurve() {
    Map<String, String> curve = new HashMap<>(AGAINST_A_HOSE);
    curve.keySet().removeAll(List.of("lift", "length", "bore"));
    String told = refused("pump-curve-head", curve, "flow", "60 L/min");
    assertTrue(told.contains("60 L/min is outside"), told);
  }

  private static Component rising(Component pump) {
    Curve curve = SampleMachines.curve(0, 1, 10, 2, 20, 0.5);
    return new Component(
        pump.id(),
        pump.kind(),
        pump.nameplate(),
        pump.figures(),
        Map.of("head", curve),
        pump.source());
  }

  /** Every check of a pump whose curve rises: a finding that says so, and no verdict. */
  @Test
  void risingCurveIsAFindingWithoutVerdict() {
    for (Component pump : List.of(SampleMachines.drainPump(), SampleMachines.washPump())) {
      List<Finding> findings = findings(rising(pump), Conditions.NONE);
      List<Finding> byTheCurve =
          findings.stream().filter(f -> f.remark().contains("point 2")).toList();
      assertTrue(byTheCurve.size() >= 2, findings.toString());
      byTheCurve.forEach(f -> assertEquals(Verdict.NOT_MEASURED, f.verdict(), f.id()));
    }
  }

  /** Every check and every model with a condition that cannot be. */
  @Test
  void impossibleConditionsAreToldByChecksAndModels() {
    Map<String, Quantity> conditions =
        Map.of(
            "temperature", Quantity.of(140, "Cel", QuantityKind.TEMPERATURE),
            "frequency", Quantity.of(5000, "Hz", QuantityKind.FREQUENCY));
    for (Component pump : List.of(SampleMachines.drainPump(), SampleMachines.washPump())) {
      conditions.forEach(
          (name, figure) -> {
            Conditions odd = new Conditions(Map.of(name, figure));
            for (Finding finding : findings(pump, odd)) {
              assertFalse(finding.remark().contains("NaN"), finding.remark());
              assertFalse(Double.isNaN(finding.limits().low()), finding.id());
              assertFalse(Double.isNaN(finding.limits().high()), finding.id());
            }
          });
      Conditions hot = new Conditions(Map.of("temperature", conditions.get("temperature")));
      long told =
          findings(pump, hot).stream()
              .filter(f -> f.verdict() == Verdict.NOT_MEASURED && f.remark().contains("140"))
              .count();
      assertTrue(told >= 2, pump.id() + ": " + told);
      List<Question> asked =
          MODULE.parts().faultModels(SampleMachines.with(pump)).get(0).questions().stream()
              .map(q -> new Question(q.component(), q.observable(), hot))
              .toList();
      InputException refused =
          assertThrows(
              InputException.class,
              () -> MODULE.parts().faultModels(SampleMachines.with(pump)).get(0).forecaster(asked));
      assertTrue(refused.getMessage().contains("140"), refused.getMessage());
    }
  }

  /** A reading of every figure of a component, at its conditions, put before every check. */
  private static List<Finding> findings(Component component, Conditions conditions) {
    List<Measurement> read = new ArrayList<>();
    for (Observable observable :
        new Vocabulary(MODULE.parts().kinds()).kind(component.kind()).orElseThrow().observables()) {
      if (observable.type() == Observable.Type.QUANTITY) {
        double middle = (observable.span().low() + observable.span().high()) / 2;
        Quantity figure = Quantity.ofSi(middle, 0, observable.kind());
        read.add(
            new Measurement(
                component.id(),
                observable.id(),
                List.of(new Reading.Value(figure, 0)),
                conditions,
                Optional.empty(),
                ""));
      }
    }
    Job job =
        new Job(
            "test",
            "",
            SampleMachines.with(component),
            Complaint.NONE,
            List.of(),
            read,
            Optional.empty());
    return MODULE.parts().checks().stream()
        .flatMap(check -> check.apply(job, DecisionRule.USUAL).stream())
        .toList();
  }
}
