package kelter.core.workshop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import kelter.core.book.BookedMachine;
import kelter.core.book.learned.LearnedKind;
import kelter.core.catalogue.Completed;
import kelter.core.catalogue.Completion;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindMachine;
import kelter.core.catalogue.Kinds;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.CauseShare;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.simulation.Simulation;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.diagnosis.simulation.WrongCurves;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Part;
import kelter.core.module.Parts;
import kelter.core.option.Weigher;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.shop.Shop;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.kind.MachineKnowledge;

/**
 * Modules and the rules of a shop together. It keeps nothing between jobs and is safe for several
 * threads.
 */
public final class Workshop {

  private static final Source NAMED = Source.commonPractice("a part that is read is there");

  private final List<CalculationModule> modules;
  private final Shop shop;
  private final Parts parts;
  private final Vocabulary vocabulary;
  private final EngineSettings settings;
  private final Kinds kinds;

  private Workshop(List<CalculationModule> modules, Parts parts, Vocabulary vocabulary, Shop shop) {
    this.modules = List.copyOf(modules);
    this.parts = parts;
    this.vocabulary = vocabulary;
    this.shop = Objects.requireNonNull(shop);
    this.kinds =
        new Kinds(shop.kinds(), KindFile.shipped(), id -> KindFile.shipped(id, vocabulary));
    this.settings = EngineSettings.USUAL.forLiveWork(shop.competentForLiveWork());
  }

  private static Workshop made(List<CalculationModule> modules, Shop shop) {
    List<Part> all = new ArrayList<>();
    List<Symptom> symptoms = new ArrayList<>();
    for (CalculationModule module : modules) {
      all.addAll(module.parts().all());
      symptoms.addAll(module.symptoms());
    }
    Parts parts = new Parts(all);
    return new Workshop(modules, parts, new Vocabulary(parts.kinds(), symptoms), shop);
  }

  /**
   * A workshop of a shop of which nothing is known.
   *
   * @param modules the modules, as a {@link java.util.ServiceLoader} finds them or as a program
   *     makes them
   * @return the workshop
   * @throws IllegalArgumentException if two modules give one word two meanings
   */
  public static Workshop of(Iterable<CalculationModule> modules) {
    return of(modules, Shop.UNKNOWN);
  }

  /**
   * A workshop.
   *
   * @param modules the modules, as a {@link java.util.ServiceLoader} finds them or as a program
   *     makes them
   * @param shop the shop whose rules hold
   * @return the workshop, with its modules in the order of their ids
   * @throws IllegalArgumentException if two modules give one word two meanings
   */
  public static Workshop of(Iterable<CalculationModule> modules, Shop shop) {
    List<CalculationModule> sorted = new ArrayList<>();
    modules.forEach(sorted::add);
    sorted.sort((one, other) -> one.about().id().compareTo(other.about().id()));
    return made(sorted, shop);
  }

  /**
   * The same workshop under the rules of another shop.
   *
   * @param other the shop
   * @return a workshop with the same modules and words
   */
  public Workshop in(Shop other) {
    return new Workshop(modules, parts, vocabulary, other);
  }

  /**
   * The modules.
   *
   * @return the modules, by id
   */
  public List<CalculationModule> modules() {
    return modules;
  }

  /**
   * The shop whose rules hold.
   *
   * @return the shop
   */
  public Shop shop() {
    return shop;
  }

  /**
   * The words that a job may use.
   *
   * @return the vocabulary of all modules
   */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /**
   * Every caution that a result may tell, for programs that want to know the ids beforehand.
   *
   * @return those of the core first, then those of the modules; what depends on a machine or a
   *     reading is left open in the text, as {@code %s} or in braces
   */
  public List<Caution> cautions() {
    List<Caution> all = new ArrayList<>(Caution.COMMON);
    all.addAll(Shop.CAUTIONS);
    all.addAll(Locking.vocabulary());
    modules.forEach(module -> all.addAll(module.cautions()));
    return List.copyOf(all);
  }

  /**
   * The instruments that a job may name without describing them, beside those of any trade.
   *
   * @return those of the shop, then those of all modules
   */
  public List<Instrument> instruments() {
    List<Instrument> known = new ArrayList<>(shop.jobInstruments());
    known.addAll(typicalInstruments());
    return known;
  }

  /** The instruments of the modules, typical of their class. */
  List<Instrument> typicalInstruments() {
    List<Instrument> typical = new ArrayList<>();
    for (CalculationModule module : modules) {
      typical.addAll(module.instruments());
    }
    return typical;
  }

  /**
   * All calculations.
   *
   * @return calculations, by id
   */
  public List<Calculation> calculations() {
    List<Calculation> calculations = new ArrayList<>();
    for (CalculationModule module : modules) {
      calculations.addAll(module.calculations());
    }
    calculations.sort((one, other) -> one.id().compareTo(other.id()));
    return calculations;
  }

  /**
   * How options are weighed.
   *
   * @return the weigher of the first module that has one
   */
  public Optional<Weigher> weigher() {
    for (CalculationModule module : modules) {
      Optional<Weigher> weigher = module.weigher();
      if (weigher.isPresent()) {
        return weigher;
      }
    }
    return Optional.empty();
  }

  /**
   * Reads a job file.
   *
   * @param path the file
   * @return the job
   * @throws InputException with every mistake of the file and the line in which it stands
   */
  public Job read(Path path) {
    Json content = JobFile.content(path);
    try {
      return read(content).job();
    } catch (InputException mistakes) {
      throw JobFile.placed(path, mistakes);
    }
  }

  /**
   * Reads a job that is kept elsewhere than in a file, as in a database, like {@link #read(Json)}.
   *
   * @param text the content of a job file
   * @return the job with that content
   * @throws InputException with every mistake of it
   */
  public JobDocument read(String text) {
    return read(JobFile.content(text));
  }

  /**
   * Reads a job from the content of a job file. What the shop knows of the model of the machine,
   * its prices and its market stand in where the job is silent.
   *
   * @param content the content
   * @return the job with that content
   * @throws InputException with every mistake of it
   */
  public JobDocument read(Json content) {
    JobDocument read = JobFile.document(content, vocabulary, instruments(), completion());
    Optional<Market> market = shop.offering().market();
    JobDocument placed =
        read.job().market().isEmpty() && market.isPresent() ? read.in(market.get()) : read;
    return (shop.prices().isPresent() ? placed.at(shop.prices().get()) : placed)
        .noting(unknownKind(read.stated()));
  }

  /** A kind that is written wrongly has no parts, no causes and no typical figures. */
  private Optional<String> unknownKind(Appliance stated) {
    if (kinds.ids().contains(stated.kind())) {
      return Optional.empty();
    }
    Optional<String> near = Nearest.of(stated.kind(), kinds.ids());
    if (near.isEmpty() && !stated.components().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "no kind of machine '%s' is known%s Only parts that the job lists are weighed"
            .formatted(
                stated.kind(), near.map(word -> "; did you mean '" + word + "'?").orElse(".")));
  }

  /** What fills a machine where its job is silent. */
  private Completion completion() {
    return stated -> {
      Completed known = shop.models().complete(stated);
      return new Completed(whole(known.appliance()), known.model(), known.notes());
    };
  }

  /**
   * The kinds of machines that are known.
   *
   * @return those of the shop and those that come with Kelter
   */
  public Kinds kinds() {
    return kinds;
  }

  /**
   * How much of what is behind calls the modules have models of.
   *
   * @return the coverage of each kind, by id
   */
  public List<Coverage> coverage() {
    return kinds.ids().stream().map(id -> Coverage.of(this, kinds.kind(id).orElseThrow())).toList();
  }

  /**
   * What can be wrong with kinds of components, and what mends it, on machines of all known kinds.
   * It makes the models of all of them, which takes a moment.
   *
   * @return what is known, by kind of component
   */
  public List<PartFaults> faults() {
    return PartFaults.of(
        this, kinds.ids().stream().flatMap(id -> kinds.kind(id).stream()).toList());
  }

  /**
   * A machine with the parts that machines of its kind have.
   *
   * @param stated the machine as a job tells it
   * @return the machine; the same if its kind is not known
   * @see KindMachine
   */
  public Appliance whole(Appliance stated) {
    return machine(stated).map(KindMachine::appliance).orElse(stated);
  }

  /**
   * The machine of a job with the parts that machines of its kind have in its market. A part that
   * is read is there, whatever the market.
   *
   * @param job the job
   * @return the machine
   */
  Appliance whole(Job job) {
    Set<String> read =
        job.measurements().stream().map(Measurement::component).collect(Collectors.toSet());
    Market market = job.market().or(() -> Market.of(job.appliance().nameplate())).orElse(Market.EU);
    return machine(job.appliance())
        .map(
            machine ->
                new KindMachine(machine.kind(), named(machine, read), machine.components())
                    .in(market)
                    .appliance())
        .orElse(job.appliance());
  }

  /** The same machine, in which a part that is read counts as named by the job. */
  private static Appliance named(KindMachine machine, Set<String> read) {
    List<Component> all = new ArrayList<>();
    for (Component each : machine.appliance().components()) {
      boolean added = machine.isOnlyAdded(each) && read.contains(each.id());
      all.add(
          added
              ? new Component(each.id(), each.kind(), each.nameplate(), Map.of(), Map.of(), NAMED)
              : each);
    }
    return machine.appliance().with(all);
  }

  /** A machine as one of its kind; empty if the kind is not known. */
  Optional<KindMachine> machine(Appliance stated) {
    return kinds
        .kind(stated.kind())
        .map(kind -> KindMachine.of(learned(kind, stated), stated, this::isObserved));
  }

  /** A kind with what the shop's book taught of such machines. */
  private Kind learned(Kind kind, Appliance machine) {
    Optional<LearnedKind> learned = learned(kind.id());
    return learned.isPresent()
        ? learned
            .get()
            .in(kind, BookedMachine.sameModel(machine.maker(), machine.model()), years(machine))
        : kind;
  }

  /** What the shop's book taught of a kind of machine. */
  Optional<LearnedKind> learned(String kind) {
    return shop.learned().isPresent()
        ? Optional.ofNullable(shop.learned().get().kinds().get(kind))
        : Optional.empty();
  }

  static OptionalDouble years(Appliance machine) {
    return machine.age().isPresent()
        ? OptionalDouble.of(QuantityKind.AGE.unit().fromSi(machine.age().get().si()))
        : OptionalDouble.empty();
  }

  /** Whether anything can be observed on a kind of component. */
  private boolean isObserved(String component) {
    return vocabulary.kind(component).filter(kind -> !kind.observables().isEmpty()).isPresent();
  }

  /**
   * Takes on a job.
   *
   * @param job the job, from a file or made by a program
   * @return the case, of which nothing is worked out until somebody asks
   * @throws InputException with every word, unit and kind of the job that does not fit
   */
  public Case open(Job job) {
    return new Case(this, job, Optional.empty());
  }

  /**
   * Takes on a job with causes and what they bring in place of those that its kind tells.
   *
   * @param job the job, from a file or made by a program
   * @param causes causes of complaints, each once; those that a module has a model of are left to
   *     it
   * @param brings which causes bring others, each two once; those that are not known count for
   *     nothing
   * @return the case, of which nothing is worked out until somebody asks
   * @throws InputException with every word, unit and kind of the job that does not fit
   * @throws IllegalArgumentException if a cause, or the same two as cause and effect, is named
   *     twice
   */
  public Case open(Job job, List<CauseShare> causes, List<Brings> brings) {
    return new Case(
        this, job, Optional.of(new Knowledge(List.of(), vocabulary.weighed(), brings, causes)));
  }

  /**
   * By which chances machines are drawn to try the diagnosis.
   *
   * @param appliance the machine
   * @return what the engine takes for granted of such machines that somebody complains of
   */
  public World world(Appliance appliance) {
    return World.of(known(appliance, Optional.empty()).settings());
  }

  /**
   * Tries the diagnosis on machines that are drawn.
   *
   * @param appliance the machine
   * @param curves how the curves of the machines lie to those that the diagnosis is told, as a
   *     ratio; 1 where it is told the truth
   * @param plan how much is tried
   * @param progress told the number of machines done, from any thread
   * @return what came out
   * @throws IllegalArgumentException if no fault model speaks of such a machine, or it has no curve
   *     although the ratio is not 1
   */
  public SimulationReport simulate(
      Appliance appliance, double curves, SimulationPlan plan, IntConsumer progress) {
    Appliance whole = whole(appliance);
    MachineKnowledge told = known(whole, Optional.empty());
    MachineKnowledge truth =
        curves == 1 ? told : known(WrongCurves.scaled(whole, curves), Optional.empty());
    return Simulation.run(
        told.machine().usual(),
        told.knowledge(),
        truth.knowledge().allModels(),
        told.settings(),
        plan,
        progress);
  }

  /**
   * What is known of a machine before anything is said of it or measured.
   *
   * @param whole the machine with all its parts
   * @param market where it stands, if that is told
   */
  MachineKnowledge known(Appliance whole, Optional<Market> market) {
    return MachineKnowledge.of(
        modules, settings, vocabulary.weighed(), whole, machine(whole), market, shop.learned());
  }

  Parts parts() {
    return parts;
  }

  EngineSettings settings() {
    return settings;
  }
}
