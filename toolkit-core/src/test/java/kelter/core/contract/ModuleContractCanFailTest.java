package kelter.core.contract;

import static kelter.core.contract.SampleModule.LAW;
import static kelter.core.contract.SampleModule.calculation;
import static kelter.core.contract.SampleModule.check;
import static kelter.core.contract.SampleModule.fault;
import static kelter.core.contract.SampleModule.model;
import static kelter.core.contract.SampleModule.procedure;
import static kelter.core.contract.SampleModule.question;
import static kelter.core.contract.SampleModule.voltage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Conditions;
import kelter.core.job.Instrument;
import kelter.core.module.About;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parameter;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.testkit.CalculationRules;
import kelter.testkit.CheckRules;
import kelter.testkit.FaultRules;
import kelter.testkit.ForecastRules;
import kelter.testkit.IdentityRules;
import kelter.testkit.TextRules;
import kelter.testkit.VocabularyRules;
import kelter.testkit.trial.CautionRules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule of the contract, broken by a module of its own, is told. */
class ModuleContractCanFailTest {

  private static final List<Appliance> APPLIANCES = List.of(SampleModule.appliance());

  private static void assertTold(String part, List<String> breaches) {
    assertTrue(
        breaches.stream().anyMatch(breach -> breach.contains(part)),
        "'" + part + "' expected in " + breaches);
  }

  private static Source practice() {
    return Source.commonPractice("one in ten");
  }

  @Nested
  class Identity {

    @Test
    void aModuleThatCannotBeMade() {
      assertTold("must be public", IdentityRules.construction(Hidden.class));
      assertEquals(List.of(), IdentityRules.construction(SampleModule.class));
    }

    @Test
    void anIdThatOccursTwice() {
      CalculationModule twice = SampleModule.with(calculation(), calculation());
      assertTold("calculation 'ohms-law' occurs twice", IdentityRules.ids(twice, APPLIANCES));
      CalculationModule models = SampleModule.with(model(), model());
      assertTold("fault model 'coil' occurs twice", IdentityRules.ids(models, APPLIANCES));
      assertTold("fault 'buzzer.open' occurs twice", IdentityRules.ids(models, APPLIANCES));
    }

    @Test
    void anIdThatIsNone() {
      CalculationModule module =
          new SampleModule(calculation(), SampleModule.KIND, check("Not An Id", List.of()));
      assertTold("check 'Not An Id' does not have", IdentityRules.ids(module, APPLIANCES));
    }

    @Test
    void orderThatChanges() {
      CalculationModule first =
          SampleModule.with(calculation(), calculation("second", voltage("1 V"), x -> x));
      CalculationModule second =
          SampleModule.with(calculation("second", voltage("1 V"), x -> x), calculation());
      assertTold("change from call to call", IdentityRules.order(first, second, APPLIANCES));
    }
  }

  @Nested
  class Texts {

    private List<String> texts(String title) {
      return TextRules.texts(
          SampleModule.with(calculation("x", title, LAW, voltage("1 V"), x -> x)), APPLIANCES);
    }

    @Test
    void aBlankTitle() {
      assertTold("title of calculation x is blank", texts(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"the machine is safe", "Safe to use", "it is compliant", "it complies"})
    void aPromise(String title) {
      assertTold("not for a calculation to say", texts(title));
    }

    @Test
    void aWordThatOnlyContainsOne() {
      assertEquals(List.of(), texts("a safety valve, unsafe, safeguarded"));
    }

    @Test
    void aSourceWithoutYearOrClause() {
      assertTold("names no year", sources(Source.published("some handbook")));
      assertEquals(List.of(), sources(LAW));
      assertEquals(List.of(), sources(Source.published("Ohm's law")));
      assertEquals(List.of(), sources(practice()));
    }

    @Test
    void anInstrumentTwiceAndWithoutASource() {
      Instrument gauge = new Instrument("gauge", "a gauge", List.of());
      CalculationModule module =
          new CalculationModule() {
            @Override
            public About about() {
              return new About("gauges", "gauges", "1.0.0");
            }

            @Override
            public List<Instrument> instruments() {
              return List.of(gauge, gauge);
            }
          };
      assertTold("instrument 'gauge' occurs twice", IdentityRules.ids(module, List.of()));
      assertTold("instrument gauge has no source", TextRules.sources(module, List.of(), false));
    }

    @Test
    void anInventedFigure() {
      assertTold("is invented", sources(SampleModule.INVENTED));
    }

    private List<String> sources(Source source) {
      CalculationModule module =
          SampleModule.with(calculation("x", "x", source, voltage("1 V"), x -> x));
      return TextRules.sources(module, APPLIANCES, false);
    }
  }

  @Nested
  class Calculations {

    private List<String> parameters(Parameter parameter) {
      return CalculationRules.parameters(
          SampleModule.with(calculation("x", parameter, x -> new double[] {1})));
    }

    private List<String> results(kelter.core.module.Calculation.Law law) {
      return CalculationRules.results(SampleModule.with(calculation("x", voltage("1 V"), law)));
    }

    @Test
    void aUsualValueThatCannotBeReadOrLiesOutside() {
      assertTold("cannot be read", parameters(voltage("twelve")));
      assertTold("cannot be read", parameters(voltage("12 A")));
      assertTold("outside", parameters(voltage("2 kV")));
    }

    @Test
    void aRangeThatIsAPointOrBelowAbsoluteZero() {
      assertTold(
          "is a point", parameters(Parameter.required("v", "v", QuantityKind.VOLTAGE, 5, 5)));
      assertTold(
          "below absolute zero",
          parameters(Parameter.required("t", "t", QuantityKind.TEMPERATURE, -40, 100)));
    }

    @Test
    void aChoiceThatIsNone() {
      assertTold("two words", parameters(Parameter.choice("c", "c", List.of("a"), "a")));
      assertTold("two words", parameters(Parameter.choice("c", "c", List.of("a", "a"), "a")));
      assertTold("is not one of", parameters(Parameter.choice("c", "c", List.of("a", "b"), "d")));
      assertTold("blank", parameters(Parameter.choice("c", "c", List.of("a", ""), "a")));
    }

    @Test
    void aResultThatIsNotFinite() {
      assertTold("is NaN", results(x -> new double[] {Double.NaN}));
      assertTold("is Infinity", results(x -> new double[] {1 / x[0]}));
    }

    @Test
    void aResultTooMany() {
      assertTold("2 results for 1 outputs", results(x -> new double[2]));
    }

    @Test
    void aRefusalWithoutAWord() {
      assertTold(
          "without saying why",
          results(
              x -> {
                throw new IllegalArgumentException();
              }));
      assertEquals(
          List.of(),
          results(
              x -> {
                throw new IllegalArgumentException("the resistance is too small");
              }));
    }

    @Test
    void aDefect() {
      assertTold("threw java.lang.Arithmetic", results(x -> new double[] {1 / (int) (0 * x[0])}));
    }

    @Test
    void valuesThatAreChanged() {
      assertTold(
          "changed the values",
          results(
              x -> {
                x[0] = -1;
                return new double[] {1};
              }));
    }

    @Test
    void memory() {
      AtomicInteger calls = new AtomicInteger();
      CalculationModule module =
          SampleModule.with(
              calculation("x", voltage("1 V"), x -> new double[] {calls.incrementAndGet()}));
      assertTold("x answers differently", CalculationRules.memory(module));
    }

    /** Answers differently while a second thread is inside, for which it waits. */
    @Test
    void memoryThatShowsOnlyWithTwoThreads() {
      Thread alone = Thread.currentThread();
      CountDownLatch both = new CountDownLatch(2);
      CalculationModule module =
          SampleModule.with(
              calculation(
                  "x",
                  voltage("1 V"),
                  x -> {
                    if (Thread.currentThread() == alone) {
                      return new double[] {1};
                    }
                    both.countDown();
                    return new double[] {met(both) ? 2 : 1};
                  }));
      assertTold("x answers differently", CalculationRules.memory(module));
    }

    private boolean met(CountDownLatch both) {
      try {
        return both.await(60, TimeUnit.SECONDS);
      } catch (InterruptedException interrupted) {
        return false;
      }
    }
  }

  @Nested
  class Words {

    private List<String> cautions(Hazard hazard, List<Caution> cautions) {
      return VocabularyRules.cautions(
          SampleModule.with(Observable.named("noise", "noise").by(procedure(hazard, cautions))),
          APPLIANCES);
    }

    @Test
    void aDangerousProcedureWithoutCaution() {
      Caution notice = new Caution("wet-floor", Caution.Signal.NOTICE, "The floor may get wet.");
      assertTold("running machine", cautions(Hazard.RUNNING, List.of()));
      assertTold("live parts", cautions(Hazard.LIVE, List.of()));
      assertTold("live parts", cautions(Hazard.LIVE, List.of(notice)));
      assertEquals(List.of(), cautions(Hazard.RUNNING, List.of(notice)));
      assertEquals(List.of(), cautions(Hazard.LIVE, List.of(Caution.UNPLUG)));
      assertEquals(List.of(), cautions(Hazard.DEAD, List.of()));
    }

    @Test
    void aCautionThatIsNotListed() {
      Caution notice = new Caution("wet-floor", Caution.Signal.NOTICE, "The floor may get wet.");
      Observable observable =
          Observable.named("noise", "noise").by(procedure(Hazard.RUNNING, List.of(notice)));
      assertTold(
          "'wet-floor' is not in", CautionRules.listed(SampleModule.with(observable), APPLIANCES));
      Observable common =
          Observable.named("noise", "noise").by(procedure(Hazard.DEAD, List.of(Caution.UNPLUG)));
      assertEquals(List.of(), CautionRules.listed(SampleModule.with(common), APPLIANCES));
    }

    @Test
    void anInstrumentThatIsExact() {
      Procedure exact = new Procedure("Look.", 1, Hazard.NONE, new Accuracy(0, 0), List.of());
      Observable observable =
          Observable.named("level", "level").quantity(QuantityKind.LENGTH, 0, 1).by(exact);
      assertTold(
          "no limits of error", VocabularyRules.words(SampleModule.with(observable), APPLIANCES));
    }

    @Test
    void aWordWithTwoMeanings() {
      Observable other =
          Observable.named("resistance", "resists").by(procedure(Hazard.NONE, List.of()));
      ComponentKind again =
          new ComponentKind("buzzer", "buzzer", List.of(other), List.of(), List.of());
      CalculationModule module =
          new SampleModule(
              new About("sample", "a sample", "1"),
              List.of(),
              List.of(SampleModule.KIND, again),
              List.of(),
              List.of());
      assertTold("two meanings", VocabularyRules.words(module, APPLIANCES));
    }
  }

  @Nested
  class Checks {

    @Test
    void aCheckThatPassesWhatWasNotMeasured() {
      Finding passed =
          new Finding(
              "x",
              "buzzer",
              "resistance",
              "resistance",
              "",
              QuantityKind.RESISTANCE,
              QuantityKind.RESISTANCE.unit(),
              new Judgement(Optional.empty(), 1, Verdict.CONFORMS, false),
              Limits.atLeast(0),
              LAW,
              List.of(),
              "");
      CalculationModule module =
          new SampleModule(calculation(), SampleModule.KIND, check("x", List.of(passed)));
      assertTold("of which nothing was read", CheckRules.withoutReadings(module, APPLIANCES));
    }

    @Test
    void aCheckThatFails() {
      CalculationModule module =
          new SampleModule(calculation(), SampleModule.KIND, check("x", null));
      assertTold("x threw", CheckRules.withoutReadings(module, APPLIANCES));
    }
  }

  @Nested
  class Faults {

    private final Forecaster nothing = (severity, value, spread) -> {};

    private FaultModel knows(Fault... faults) {
      return model("m", List.of(faults), List.of(question(SampleModule.RESISTANCE)), nothing);
    }

    private FaultModel asks(String id, Question... questions) {
      return model(
          id, List.of(fault("open", "buzzer", 0.1, practice())), List.of(questions), nothing);
    }

    private List<String> questions(FaultModel... models) {
      return FaultRules.questions(SampleModule.with(models), APPLIANCES);
    }

    private List<String> faults(FaultModel... models) {
      return FaultRules.faults(SampleModule.with(models), APPLIANCES);
    }

    @Test
    void aModelThatKnowsOrAsksNothing() {
      assertTold("knows no fault", faults(knows()));
      assertTold("asks nothing", questions(asks("m")));
    }

    @Test
    void priorsThatLeaveNoRoom() {
      assertTold(
          "add up to 1",
          faults(
              knows(
                  fault("open", "buzzer", 0.6, practice()),
                  fault("short", "buzzer", 0.5, practice()))));
    }

    @Test
    void aComponentThatTheApplianceLacks() {
      assertTold("the appliance lacks", faults(knows(fault("open", "bell", 0.1, practice()))));
      Question elsewhere = new Question("bell", SampleModule.RESISTANCE, Conditions.NONE);
      assertTold("the appliance lacks", questions(asks("m", elsewhere)));
    }

    @Test
    void anObservableThatIsNotListed() {
      Observable unlisted =
          Observable.named("glow", "a glow").by(procedure(Hazard.NONE, List.of()));
      assertTold("is not the observable", questions(asks("m", question(unlisted))));
    }

    @Test
    void aConditionThatIsNotListed() {
      Quantity flow = Quantity.of(0, "L/min", QuantityKind.FLOW);
      Question question =
          new Question("buzzer", SampleModule.RESISTANCE, new Conditions(Map.of("flow", flow)));
      assertTold("none of its conditions", questions(asks("m", question)));
    }

    @Test
    void anObservableThatTwoModelsForecast() {
      Question shared = question(SampleModule.HUM);
      assertTold("asked by two models", questions(asks("one", shared), asks("two", shared)));
    }
  }

  @Nested
  class Forecasts {

    private List<String> figures(Forecaster forecaster) {
      return ForecastRules.figures(SampleModule.with(model(forecaster)), APPLIANCES);
    }

    @Test
    void aForecastThatIsLeftOutOrNotFinite() {
      assertTold("the forecast is NaN", figures((severity, value, spread) -> {}));
      assertTold("the spread is NaN", figures((severity, value, spread) -> value[0] = 1));
      assertTold(
          "the forecast is Infinity",
          figures((severity, value, spread) -> value[0] = 1 / (1 - severity[0])));
    }

    @Test
    void aForecastOutsideItsSpan() {
      assertTold(
          "outside Span",
          figures(
              (severity, value, spread) -> {
                value[0] = -1;
                spread[0] = 1;
              }));
    }

    @Test
    void aSpreadOfZero() {
      assertTold(
          "the spread is 0.0",
          figures(
              (severity, value, spread) -> {
                value[0] = 10;
                spread[0] = 0;
              }));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.5})
    void aCertainty(double probability) {
      FaultModel certain =
          model(
              "m",
              List.of(fault("open", "buzzer", 0.1, practice())),
              List.of(question(SampleModule.HUM)),
              (severity, value, spread) -> value[0] = probability);
      assertTold(
          "the probability of a yes is",
          ForecastRules.figures(SampleModule.with(certain), APPLIANCES));
    }

    @Test
    void severitiesThatAreChanged() {
      assertTold(
          "changes the severities",
          figures(
              (severity, value, spread) -> {
                severity[0] = 0.3;
                value[0] = 10;
                spread[0] = 1;
              }));
    }

    @Test
    void aFaultThatDoesNotShow() {
      FaultModel faint =
          model(
              (severity, value, spread) -> {
                value[0] = 10 + 0.9 * severity[0];
                spread[0] = 1;
              });
      assertTold(
          "buzzer.open at its worst moves no",
          ForecastRules.effects(SampleModule.with(faint), APPLIANCES));
      FaultModel doubtful =
          model(
              "m",
              List.of(fault("open", "buzzer", 0.1, practice())),
              List.of(question(SampleModule.HUM)),
              (severity, value, spread) -> value[0] = 0.5 + 0.09 * severity[0]);
      assertTold("moves no", ForecastRules.effects(SampleModule.with(doubtful), APPLIANCES));
    }

    @Test
    void memory() {
      AtomicInteger calls = new AtomicInteger();
      FaultModel forgetful =
          model(
              (severity, value, spread) -> {
                value[0] = calls.incrementAndGet();
                spread[0] = 1;
              });
      assertTold(
          "answers differently", ForecastRules.memory(SampleModule.with(forgetful), APPLIANCES));
    }

    @Test
    void anAnswerThatDependsOnWhatElseIsAsked() {
      FaultModel positional =
          model(
              "m",
              List.of(fault("open", "buzzer", 0.1, practice())),
              List.of(question(SampleModule.RESISTANCE), question(SampleModule.HUM)),
              (severity, value, spread) -> {
                for (int i = 0; i < value.length; i++) {
                  value[i] = 0.1 + i / 10.0;
                  spread[i] = 1;
                }
              });
      assertTold("alone", ForecastRules.memory(SampleModule.with(positional), APPLIANCES));
    }
  }

  private static final class Hidden {}
}
