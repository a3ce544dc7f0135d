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
import java.util.concurrent.locks.LockSupport;
import kelter.core.check.Allowed;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Conditions;
import kelter.core.job.Instrument;
import kelter.core.module.About;
import kelter.core.module.CalculationModule;
import kelter.core.module.Claims;
import kelter.core.module.Parameter;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptom;
import kelter.testkit.CalculationRules;
import kelter.testkit.CheckRules;
import kelter.testkit.FaultRules;
import kelter.testkit.ForecastRules;
import kelter.testkit.IdentityRules;
import kelter.testkit.TextRules;
import kelter.testkit.VocabularyRules;
import kelter.testkit.trial.CautionRules;
import kelter.testkit.trial.LoadingRules;
import kelter.testkit.trial.ReadingRules;
import kelter.testkit.trial.SameAnswers;
import kelter.testkit.trial.TimeRules;
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

  @Nested
  class SymptomsAndCautions {

    private final Symptom mute =
        new Symptom("mute", " ", "", 0.1, 0.1, Symptom.Misreports.PLAIN, List.of());

    private final Caution other = new Caution("unplug", Signal.NOTICE, "A cord lies about.");

    @Test
    void aSymptomThatSaysNothing() {
      List<String> told = TextRules.texts(new Telling(List.of(mute), List.of(), 0), APPLIANCES);
      assertTold("title of symptom mute is blank", told);
      assertTold("question of symptom mute is blank", told);
    }

    @Test
    void aCautionThatPromises() {
      Caution promise = new Caution("calm", Signal.NOTICE, "It is safe to touch.");
      assertTold(
          "caution calm says 'safe'",
          TextRules.texts(new Telling(List.of(), List.of(promise), 0), APPLIANCES));
    }

    /** Whoever knows a caution by its id would show the mild one for the deadly one. */
    @Test
    void aCautionWithTheIdOfAnother() {
      CalculationModule taken = new Telling(List.of(), List.of(other), 0);
      assertEquals(
          List.of("the caution 'unplug' has another meaning already"),
          new Claims(List.of()).claimedBy(taken));
      CalculationModule same = new Telling(List.of(), List.of(Caution.UNPLUG), 0);
      assertEquals(List.of(), new Claims(List.of()).claimedBy(same));
      Caution own = new Caution("own", Signal.NOTICE, "A cord lies about.");
      Caution foreign = new Caution("own", Signal.DANGER, "Gas.");
      assertTold(
          "the caution 'own' has another meaning already",
          new Claims(List.of(new Telling(List.of(), List.of(own), 0)))
              .claimedBy(new Telling(List.of(), List.of(foreign), 0)));
    }

    @Test
    void aListThatComesSlowly() {
      assertTold(
          "symptoms() took",
          TimeRules.quick(TimeRules.measured(new Telling(List.of(), List.of(), 8), List.of())));
    }

    @Test
    void whatIsWrittenWhereResultsGo() {
      CalculationModule chatty =
          SampleModule.with(
              model(
                  (severity, value, spread) -> {
                    System.out.println("ten ohms");
                    value[0] = 10;
                    spread[0] = 1;
                  }));
      assertEquals(
          List.of("writes to standard output: 'ten ohms'"),
          SameAnswers.inSilence(() -> chatty, APPLIANCES));
    }
  }

  @Nested
  class Limiting {

    /** In order the model forecasts 10 ohm. */
    private List<String> inOrder(Limits limits) {
      return ReadingRules.inOrder(limited("resistance", LAW, limits), APPLIANCES);
    }

    private CalculationModule limited(String title, Source source, Limits limits) {
      return new SampleModule(
          calculation(),
          SampleModule.KIND,
          LimitCheck.named("limits", "Is the coil whole?")
              .on(SampleModule.KIND, SampleModule.RESISTANCE, Allowed.of(title, source, limits)),
          model());
    }

    @Test
    void limitsInAnotherUnitOrTheWrongWayRound() {
      assertEquals(List.of(), inOrder(Limits.atMost(20)));
      assertTold("fails buzzer.resistance = 10 ohm", inOrder(Limits.atMost(0.02)));
      assertTold("fails buzzer.resistance = 10 ohm", inOrder(Limits.atLeast(20)));
    }

    @Test
    void wordsAndSourcesOfLimits() {
      Limits most = Limits.atMost(20);
      assertTold(
          "title of finding limits.buzzer is blank",
          TextRules.texts(limited(" ", LAW, most), APPLIANCES));
      assertTold(
          "title of finding limits.buzzer says 'safe'",
          TextRules.texts(limited("a safe coil", LAW, most), APPLIANCES));
      assertTold(
          "limits of finding limits.buzzer is invented",
          TextRules.sources(
              limited("coil", new Source("a guess", Standing.INVENTED), most), APPLIANCES, false));
    }
  }

  @Nested
  class Remedies {

    private FaultModel of(Caution... cautions) {
      return model(
          "m",
          List.of(renewed("open", "renew", cautions), renewed("short", "exchange", cautions)),
          List.of(question(SampleModule.RESISTANCE)),
          (severity, value, spread) -> {
            value[0] = 10;
            spread[0] = 1;
          });
    }

    private Fault renewed(String id, String work, Caution... cautions) {
      Remedy remedy =
          new Remedy(
              work,
              "buzzer",
              "renew the buzzer",
              10,
              Remedy.Restores.COMPONENT,
              true,
              0.9,
              List.of(cautions));
      return new Fault(
          id, "buzzer", id, 0.1, practice(), List.of(remedy), Optional.empty(), List.of());
    }

    @Test
    void workWithoutACautionOnWhatIsReadDead() {
      assertTold(
          "remedy buzzer.renew carries no caution",
          FaultRules.faults(SampleModule.with(of()), APPLIANCES));
    }

    @Test
    void twoWorksOfOneTitle() {
      assertEquals(
          List.of("buzzer.renew and buzzer.exchange have the same title, 'renew the buzzer'"),
          FaultRules.faults(SampleModule.with(of(Caution.UNPLUG)), APPLIANCES));
    }

    @Test
    void aPartOfWhichNoModelSpeaks() {
      assertTold(
          "no machine of the test has a model that speaks of a 'buzzer'",
          LoadingRules.modelled(SampleModule.with(new FaultModel[0]), APPLIANCES));
      assertEquals(List.of(), LoadingRules.modelled(SampleModule.with(model()), APPLIANCES));
    }
  }

  private record Telling(List<Symptom> symptoms, List<Caution> cautions, long milliseconds)
      implements CalculationModule {

    @Override
    public About about() {
      return new About("telling", "tells", "1");
    }

    @Override
    public List<Symptom> symptoms() {
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(milliseconds));
      return symptoms;
    }
  }

  private static final class Hidden {}
}
