package kelter.testkit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import org.junit.jupiter.api.Test;

/**
 * What every module must keep. A module's test extends this class and says what the module is and
 * on which appliances it has fault models.
 */
public abstract class ModuleContract {

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
   * each path through its fault models.
   *
   * @return the appliances; empty only if the module has no fault models
   */
  protected abstract List<Appliance> appliances();

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
  protected final void theVocabularyFitsTogether() {
    assertKept(VocabularyRules.words(module(), appliances()));
  }

  @Test
  protected final void checksDoNotPassWhatWasNotMeasured() {
    assertKept(CheckRules.withoutReadings(module(), appliances()));
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

  private static void assertKept(List<String> breaches) {
    if (!breaches.isEmpty()) {
      fail(
          breaches.size()
              + " breaches of the module contract:\n  "
              + String.join("\n  ", breaches));
    }
  }
}
