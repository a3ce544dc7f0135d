package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindMachine;
import kelter.core.catalogue.TypicalMachine;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.CauseShare;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.job.Appliance;
import kelter.core.job.Market;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Symptom;

/**
 * What is known of one machine before anything is said of it or measured.
 *
 * @param machine the machine, in which typical figures stand in
 * @param market where it stands, or is taken to stand
 * @param marketTaken whether neither the job nor a nameplate tells the market
 * @param knowledge models, symptoms, causes and what brings what
 * @param settings what the engine takes for granted of such machines
 * @param modules by the id of a model the id of the module that it comes from
 * @param moved remedies and readings of which the shop's book knows more
 */
public record MachineKnowledge(
    TypicalMachine machine,
    Market market,
    boolean marketTaken,
    Knowledge knowledge,
    EngineSettings settings,
    Map<String, String> modules,
    List<LearnedWork.Moved> moved) {

  /**
   * Puts together what is known.
   *
   * @param modules the modules
   * @param usual what the engine takes for granted of any machine
   * @param symptoms the symptoms that machines can have
   * @param whole the machine with all its parts
   * @param kindMachine the same as one of its kind, if that is known
   * @param told where it stands, if that is told
   * @param learned what the shop's book taught of work and readings
   * @return what is known
   */
  public static MachineKnowledge of(
      List<CalculationModule> modules,
      EngineSettings usual,
      List<Symptom> symptoms,
      Appliance whole,
      Optional<KindMachine> kindMachine,
      Optional<Market> told,
      Optional<Learned> learned) {
    Optional<Market> known = told.or(() -> Market.of(whole.nameplate()));
    Market market = known.orElse(Market.EU);
    Optional<KindMachine> ofKind = kindMachine.map(each -> each.in(market));
    TypicalMachine machine =
        ofKind
            .map(each -> TypicalMachine.of(each, market))
            .orElseGet(() -> TypicalMachine.asStated(whole));
    Map<String, String> moduleOf = new HashMap<>();
    List<FaultModel> models = new ArrayList<>();
    for (CalculationModule module : modules) {
      for (FaultModel model : MachineModels.of(machine, module.parts())) {
        moduleOf.put(model.id(), module.about().id());
        models.add(model);
      }
    }
    Knowledge ofModules =
        ofKind.isPresent()
            ? KindShares.of(ofKind.get(), machine.usual(), models, years(whole)).knowledge(symptoms)
            : new Knowledge(models, symptoms, List.of(), List.of());
    Optional<LearnedWork> work = learned.map(each -> new LearnedWork(each, machine.usual()));
    Knowledge knowledge = work.isPresent() ? work.get().in(ofModules) : ofModules;
    return new MachineKnowledge(
        machine,
        market,
        known.isEmpty(),
        knowledge,
        ofKind.isPresent() ? settings(usual, ofKind.get().kind(), knowledge) : usual,
        moduleOf,
        work.map(LearnedWork::moved).orElse(List.of()));
  }

  private static EngineSettings settings(EngineSettings usual, Kind kind, Knowledge knowledge) {
    int groups = Math.max(1, knowledge.allModels().size());
    return usual.forKind(kind.nothingWrong().share(), kind.somethingElse(), groups);
  }

  private static OptionalDouble years(Appliance appliance) {
    return appliance.age().isPresent()
        ? OptionalDouble.of(QuantityKind.AGE.unit().fromSi(appliance.age().get().si()))
        : OptionalDouble.empty();
  }

  /**
   * The same with other causes than those of the kind.
   *
   * @param brings which causes bring others
   * @param causes the causes
   * @return what is then known
   */
  public Knowledge with(List<Brings> brings, List<CauseShare> causes) {
    return new Knowledge(knowledge.models(), knowledge.symptoms(), brings, causes);
  }

  /**
   * Which module a model comes from.
   *
   * @param model the id of the model
   * @return the id of the module
   */
  public String moduleOf(String model) {
    return modules.getOrDefault(model, "unknown");
  }
}
