package kelter.testkit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.testkit.trial.CautionRules;
import kelter.testkit.trial.FoundModules;
import kelter.testkit.trial.KindRules;
import kelter.testkit.trial.LoadingRules;
import kelter.testkit.trial.ReadingRules;
import kelter.testkit.trial.SameAnswers;
import kelter.testkit.trial.TimeRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * What every module must keep. A module's test extends this class and says what the module is and
 * on which appliances it has fault models.
 */
@Timeout(value = ModuleContract.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
public abstract class ModuleContract {

  /** How long one rule may take, s; a module that never comes back must not hold up a build. */
  static final int SECONDS = 60;

  /** For subclasses. */
  protected ModuleContract() {}

  /**
   * The module, made anew at each call.
   *
   * @return the module
   */
  protected abstract CalculationModule module();

  /**
   * Appliances on which the module has something to say, with the figures that it needs; one for
   * each path through its fault models, and one at least for each of its kinds of components.
   *
   * @return the appliances; empty only if the module speaks of no part
   */
  protected abstract List<Appliance> appliances();

  /**
   * The modules beside which it will be loaded.
   *
   * @return all that the class path and the module path of the test have; for a test of the kit
   *     others
   */
  protected List<CalculationModule> beside() {
    return FoundModules.beside(module().getClass());
  }

  /**
   * The files of kinds of machines that come with the module.
   *
   * @return none unless a subclass names some
   */
  protected List<Path> kindFiles() {
    return List.of();
  }

  /**
   * Whether the module is one of Kelter itself, which are held against each other elsewhere.
   *
   * @return false unless a subclass says otherwise
   */
  protected boolean isShipped() {
    return false;
  }

  /**
   * Whether the module is a demonstration, whose figures may be invented.
   *
   * @return false unless a subclass says otherwise
   */
  protected boolean isDemonstration() {
    return false;
  }

  @Test
  protected final void canBeFoundByServiceLoader() {
    assertKept(IdentityRules.construction(module().getClass()));
  }

  @Test
  protected final void isProvidedByItsDescriptor() {
    assertKept(LoadingRules.provided(module().getClass()));
  }

  @Test
  protected final void everyKindOfComponentIsTried() {
    assertKept(LoadingRules.reached(module(), appliances()));
    assertKept(LoadingRules.modelled(module(), appliances()));
  }

  @Test
  protected final void idsAreNotThoseOfOthers() {
    if (!isShipped()) {
      assertKept(LoadingRules.claims(module(), beside()));
    }
  }

  @Test
  protected final void wordsOfKindFilesAreKnown() {
    assertKept(KindRules.files(kindFiles(), module(), beside(), appliances()));
  }

  @Test
  protected final void idsAreWellFormedAndUnique() {
    assertKept(IdentityRules.ids(module(), appliances()));
  }

  @Test
  protected final void idsAndTheirOrderStayTheSame() {
    assertKept(IdentityRules.order(module(), module(), appliances()));
  }

  @Test
  protected final void textsSaySomethingAndNeverTooMuch() {
    assertKept(TextRules.texts(module(), appliances()));
  }

  @Test
  protected final void everySourceIsNamed() {
    assertKept(TextRules.sources(module(), appliances(), isDemonstration()));
  }

  @Test
  protected final void parametersAreSane() {
    assertKept(CalculationRules.parameters(module()));
  }

  @Test
  protected final void calculationsGiveFiguresOrSayWhyNot() {
    assertKept(CalculationRules.results(module()));
  }

  @Test
  protected final void calculationsKeepNoState() {
    assertKept(CalculationRules.memory(module()));
  }

  @Test
  protected final void dangerousProceduresCarryCautions() {
    assertKept(VocabularyRules.cautions(module(), appliances()));
  }

  @Test
  protected final void cautionsAreListed() {
    assertKept(CautionRules.listed(module(), appliances()));
  }

  @Test
  protected final void theVocabularyFitsTogether() {
    assertKept(VocabularyRules.words(module(), appliances()));
  }

  @Test
  protected final void checksDoNotPassWhatWasNotMeasured() {
    assertKept(CheckRules.withoutReadings(module(), appliances()));
  }

  @Test
  protected final void checksTakeAnyReading() {
    assertKept(ReadingRules.checks(module(), appliances()));
  }

  @Test
  protected final void checksPassAMachineInOrder() {
    assertKept(ReadingRules.inOrder(module(), appliances()));
  }

  @Test
  protected final void thereAreModelsToTry() {
    assertFalse(
        !appliances().isEmpty()
            && appliances().stream().allMatch(a -> module().parts().faultModels(a).isEmpty())
            && module().parts().checks().isEmpty(),
        "none of the appliances of this test makes the module say anything");
  }

  @Test
  protected final void faultsAreOfTheApplianceAndTheirPriorsLeaveRoom() {
    assertKept(FaultRules.faults(module(), appliances()));
  }

  @Test
  protected final void questionsAreOfTheApplianceAndAskedByOneModel() {
    assertKept(FaultRules.questions(module(), appliances()));
  }

  @Test
  protected final void forecastsAreFiniteAndInsideTheirSpans() {
    assertKept(ForecastRules.figures(module(), appliances()));
  }

  @Test
  protected final void everyFaultShows() {
    assertKept(ForecastRules.effects(module(), appliances()));
  }

  @Test
  protected final void forecastsKeepNoState() {
    assertKept(ForecastRules.memory(module(), appliances()));
  }

  @Test
  protected final void answersAreTheSameEverywhere() {
    assertKept(SameAnswers.everywhere(this::module, appliances()));
  }

  @Test
  protected final void nothingIsWritten() {
    assertKept(SameAnswers.inSilence(this::module, appliances()));
  }

  @Test
  protected final void answersDoNotDependOnEarlierOnes() {
    assertKept(SameAnswers.whateverWasAsked(this::module, appliances()));
  }

  @Test
  protected final void answersComeQuickly() {
    assertKept(TimeRules.quick(TimeRules.measured(module(), appliances())));
  }

  private static void assertKept(List<String> breaches) {
    if (!breaches.isEmpty()) {
      fail(
          breaches.size()
              + (breaches.size() == 1 ? " breach" : " breaches")
              + " of the module contract:\n  "
              + String.join("\n  ", breaches));
    }
  }
}
