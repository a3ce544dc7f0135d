package kelter.cli.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Models;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.SymptomReport;
import kelter.core.module.CalculationModule;
import kelter.core.owner.Use;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;

/**
 * Calls to machines of all kinds: the owner says what is plainly wrong, answers the first three
 * questions, and three times the reading that is proposed first is taken. The tool knows the kind,
 * its age and the market, and no figure of the machine.
 */
final class Calls {

  /** After what the owner said, and after each reading. */
  static final int STAGES = 4;

  private static final int QUESTIONS = 3;

  /** The standard deviation of the natural logarithm of the age at a call; from memory. */
  private static final double SD_OF_AGE = 0.4;

  /** The tool as it is shipped. */
  static final Workshop TOOL = Workshop.of(ServiceLoader.load(CalculationModule.class));

  private final long seed;
  private final List<Workshop> worlds;
  private final Map<String, TrueKind> known = new ConcurrentHashMap<>();

  private Calls(long seed, List<Workshop> worlds) {
    this.seed = seed;
    this.worlds = worlds;
  }

  /** Calls to machines as the files tell them. */
  static Calls asTold(long seed) {
    return new Calls(seed, List.of(TOOL));
  }

  /** Calls in one world. */
  static Calls in(long seed, Workshop world) {
    return new Calls(seed, List.of(world));
  }

  /** Calls in worlds in which every share and chance is another than the files tell. */
  static Calls moved(long seed, int worlds) {
    List<Workshop> moved = new ArrayList<>();
    for (int world = 0; world < worlds; world++) {
      RandomGenerator ofWorld = new SplittableRandom(seed + 7919L * (world + 1));
      Workshop modules = Workshop.of(ServiceLoader.load(CalculationModule.class));
      List<Kind> kinds = new ArrayList<>();
      for (String id : KindFile.shipped()) {
        kinds.add(MovedKind.of(KindFile.shipped(id, modules.vocabulary()).orElseThrow(), ofWorld));
      }
      moved.add(modules.in(Shop.UNKNOWN.with(Optional.empty(), List.of(), Models.NONE, kinds)));
    }
    return new Calls(seed, moved);
  }

  /**
   * One call.
   *
   * @param kind the id of the kind of machine
   * @param modelled whether a fault model speaks of the cause
   * @param truth the key of the cause, or one of the two words of {@link TrueKind}
   * @param readings how many readings were proposed and taken
   * @param stages how the diagnosis stood at each stage
   * @param classes the same, where a cause that no reading tells from the truth counts as it
   */
  record Call(
      String kind,
      boolean modelled,
      String truth,
      int readings,
      List<Standing> stages,
      List<Standing> classes) {

    /** The call, where a class counts as one cause. */
    Call byClass() {
      return new Call(kind, modelled, truth, readings, classes, classes);
    }

    boolean isCause() {
      return !truth.equals(TrueKind.NOTHING_WRONG) && !truth.equals(TrueKind.SOMETHING_ELSE);
    }
  }

  /** So many calls, all kinds in turn; the same seed gives the same calls. */
  List<Call> run(int calls) {
    return IntStream.range(0, calls).parallel().mapToObj(this::call).toList();
  }

  /**
   * A machine of which somebody complains.
   *
   * @param kind the id of its kind
   * @param years its age
   * @param machine how it truly is
   * @param owner what its owner says
   * @param alike the causes that no reading tells from its own
   * @param random draws what is read
   */
  record Drawn(
      String kind,
      int years,
      TrueMachine machine,
      Owner owner,
      Set<String> alike,
      RandomGenerator random) {

    Standing standing(Diagnosis diagnosis) {
      return Standing.of(diagnosis, machine.truth(), machine.present());
    }

    Standing byClass(Diagnosis diagnosis) {
      Set<String> counted = new HashSet<>(machine.present());
      counted.addAll(alike);
      return Standing.of(diagnosis, machine.truth(), counted);
    }
  }

  /** The machine behind one call. */
  Drawn draw(int number) {
    RandomGenerator random = new SplittableRandom(seed * 1_000_003 + number);
    List<String> kinds = KindFile.shipped();
    String id = kinds.get(number % kinds.size());
    int world = number / kinds.size() % worlds.size();
    double usual = TOOL.kinds().kind(id).orElseThrow().typicalAge();
    int years = (int) Math.max(1, Math.round(usual * Math.exp(SD_OF_AGE * random.nextGaussian())));
    TrueKind kind =
        known.computeIfAbsent(
            id + " " + years + " " + world, key -> new TrueKind(worlds.get(world), id, years));
    TrueMachine machine = kind.draw(random);
    Owner owner = Owner.of(kind, machine, random);
    return new Drawn(id, years, machine, owner, Alike.of(id).to(machine.truth()), random);
  }

  private Call call(int number) {
    Drawn drawn = draw(number);
    Appliance appliance = appliance(drawn.kind(), drawn.years());
    List<SymptomReport> said = new ArrayList<>(drawn.owner().volunteers());
    List<Measurement> read = new ArrayList<>();
    Diagnosis diagnosis = diagnose(appliance, said, read);
    for (int i = 0; i < QUESTIONS && !diagnosis.ask().isEmpty(); i++) {
      said.add(drawn.owner().answer(diagnosis.ask().get(0).symptom()));
      diagnosis = diagnose(appliance, said, read);
    }
    List<Diagnosis> stages = new ArrayList<>(List.of(diagnosis));
    while (stages.size() < STAGES) {
      Optional<Question> proposed =
          diagnosis.next().stream()
              .map(Diagnosis.NextMeasurement::question)
              .filter(drawn.machine()::has)
              .findFirst();
      if (proposed.isPresent()) {
        read.add(drawn.machine().read(proposed.get(), drawn.random()));
        diagnosis = diagnose(appliance, said, read);
      }
      stages.add(diagnosis);
    }
    return new Call(
        drawn.kind(),
        drawn.machine().modelled(),
        drawn.machine().truth(),
        read.size(),
        stages.stream().map(drawn::standing).toList(),
        stages.stream().map(drawn::byClass).toList());
  }

  private static Diagnosis diagnose(
      Appliance appliance, List<SymptomReport> said, List<Measurement> read) {
    return TOOL.open(job(appliance, said, read)).diagnosis();
  }

  static Appliance appliance(String kind, int years) {
    Quantity age = Quantity.of(years, "a", QuantityKind.AGE);
    return new Appliance(kind, "", "", "", Optional.of(age), Nameplate.UNREADABLE, List.of());
  }

  static Job job(Appliance appliance, List<SymptomReport> said, List<Measurement> read) {
    Complaint complaint = new Complaint(Complaint.Reason.FAULT, "", "", said);
    return new Job(
        "call",
        "",
        appliance,
        complaint,
        List.of(),
        read,
        Optional.empty(),
        Use.UNKNOWN,
        Optional.of(Market.EU));
  }
}
