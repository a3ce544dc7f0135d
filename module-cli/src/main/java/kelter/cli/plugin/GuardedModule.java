package kelter.cli.plugin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import kelter.core.job.Instrument;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Part;
import kelter.core.module.Parts;
import kelter.core.option.Weigher;
import kelter.core.problem.Required;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptom;

/**
 * A module of a plugin. What it is and what it knows is asked once, while it is loaded; what it
 * works out later is asked under guard.
 */
public final class GuardedModule implements CalculationModule {

  private final About about;
  private final List<Calculation> calculations;
  private final Parts parts;
  private final List<Symptom> symptoms;
  private final List<Caution> cautions;
  private final List<Instrument> instruments;
  private final Optional<Weigher> weigher;
  private final AtomicBoolean weigherFailed = new AtomicBoolean();

  private GuardedModule(Guard guard, CalculationModule module, List<CalculationModule> others) {
    about = guard.ask("about()", module::about);
    calculations =
        guard.ask(
            "calculations()",
            () -> guarded(guard, Required.list(module.calculations(), "the list of calculations")));
    List<Part> own =
        guard.ask("parts()", () -> Required.value(module.parts(), "the list of parts").all());
    List<Part> guarded = new ArrayList<>();
    for (Part part : own) {
      guarded.add(GuardedPart.of(guard, part, others));
    }
    parts = new Parts(guarded);
    symptoms =
        guard.ask("symptoms()", () -> Required.list(module.symptoms(), "the list of symptoms"));
    cautions =
        guard.ask("cautions()", () -> Required.list(module.cautions(), "the list of cautions"));
    instruments =
        guard.ask(
            "instruments()", () -> Required.list(module.instruments(), "the list of instruments"));
    weigher =
        guard
            .ask("weigher()", module::weigher)
            .map(one -> new GuardedWeigher(guard, one, weigherFailed));
  }

  /**
   * Asks a module what it is and what it knows.
   *
   * @param guard calls the plugin
   * @param module a module of it
   * @param others the modules that are loaded already
   * @return the module, asked and guarded
   * @throws Guard.Failed if it fails to answer
   */
  public static GuardedModule of(
      Guard guard, CalculationModule module, List<CalculationModule> others) {
    return new GuardedModule(guard, module, List.copyOf(others));
  }

  private static List<Calculation> guarded(Guard guard, List<Calculation> calculations) {
    List<Calculation> guarded = new ArrayList<>();
    for (Calculation one : calculations) {
      guarded.add(
          new Calculation(
              one.id(),
              one.title(),
              one.formula(),
              one.range(),
              one.source(),
              one.parameters(),
              one.outputs(),
              one.cautions(),
              new GuardedLaw(guard, one)));
    }
    return guarded;
  }

  @Override
  public About about() {
    return about;
  }

  @Override
  public List<Calculation> calculations() {
    return calculations;
  }

  @Override
  public Parts parts() {
    return parts;
  }

  @Override
  public List<Symptom> symptoms() {
    return symptoms;
  }

  @Override
  public List<Caution> cautions() {
    return cautions;
  }

  @Override
  public List<Instrument> instruments() {
    return instruments;
  }

  @Override
  public Optional<Weigher> weigher() {
    return weigherFailed.get() ? Optional.empty() : weigher;
  }
}
