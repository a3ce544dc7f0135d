package kelter.cli.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindMachine;
import kelter.core.catalogue.TypicalMachine;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.job.Appliance;
import kelter.core.job.Market;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Workshop;

/** Machines of one kind and age as they truly are, in the EU. */
final class TrueKind {

  static final String NOTHING_WRONG = "nothing wrong";
  static final String SOMETHING_ELSE = "something else";

  /** Stands for all causes of which no module has a model. */
  private static final String WITHOUT_MODEL = "without model";

  private final Workshop world;
  private final Kind kind;
  private final TypicalMachine typical;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Double> share = new HashMap<>();
  private final Map<String, String> group = new HashMap<>();
  private final List<String> groups = new ArrayList<>();

  /**
   * Prepares it.
   *
   * @param world knows the true shares and chances
   * @param kind the id of the kind
   * @param years the age
   */
  TrueKind(Workshop world, String kind, int years) {
    this.world = world;
    this.kind = world.kinds().kind(kind).orElseThrow();
    Appliance appliance = Calls.appliance(kind, years);
    this.typical =
        TypicalMachine.of(
            KindMachine.of(this.kind, appliance, this::isObserved).in(Market.EU), Market.EU);
    for (FaultModel model : usualModels()) {
      groups.add(model.id());
      model.faults().forEach(fault -> group.put(fault.key(), model.id()));
    }
    Diagnosis unasked = world.open(Calls.job(appliance, List.of(), List.of())).diagnosis();
    unasked.faults().forEach(each -> faults.add(each.fault()));
    faults.sort((one, other) -> one.key().compareTo(other.key()));
    for (Fault fault : faults) {
      share.put(fault.key(), fault.prior() / (1 - fault.prior()));
      if (!fault.modelled() && !groups.contains(WITHOUT_MODEL)) {
        groups.add(WITHOUT_MODEL);
      }
    }
  }

  private boolean isObserved(String component) {
    return world
        .vocabulary()
        .kind(component)
        .filter(known -> !known.observables().isEmpty())
        .isPresent();
  }

  private List<FaultModel> models(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (CalculationModule module : world.modules()) {
      models.addAll(module.parts().faultModels(appliance));
    }
    return models;
  }

  private String groupOf(Fault fault) {
    return group.getOrDefault(fault.key(), WITHOUT_MODEL);
  }

  /** What its modules say of a usual machine. */
  List<FaultModel> usualModels() {
    return models(typical.usual());
  }

  /** Draws a machine of which somebody complains. */
  TrueMachine draw(RandomGenerator random) {
    List<FaultModel> models = models(figures(random));
    double place = random.nextDouble();
    if (place < kind.nothingWrong().share()) {
      return TrueMachine.of(NOTHING_WRONG, false, Map.of(), Optional.empty(), models, random);
    }
    if (place < kind.nothingWrong().share() + kind.somethingElse()) {
      Optional<String> strange = Optional.of(groups.get(random.nextInt(groups.size())));
      return TrueMachine.of(SOMETHING_ELSE, false, Map.of(), strange, models, random);
    }
    Fault cause = byShare(random);
    Map<String, Double> severity = new HashMap<>();
    severity.put(cause.key(), 1 - random.nextDouble());
    beside(cause, random).ifPresent(other -> severity.put(other, 1 - random.nextDouble()));
    return TrueMachine.of(
        cause.key(), cause.modelled(), severity, Optional.empty(), models, random);
  }

  /** The machine with every typical figure drawn. */
  private Appliance figures(RandomGenerator random) {
    TypicalMachine drawn = typical;
    for (int j = 0; j < typical.open().size(); j++) {
      if (typical.open().get(j).figure().isOpen()) {
        drawn = new TypicalMachine(drawn.at(j, random.nextGaussian()), drawn.open());
      }
    }
    return drawn.usual();
  }

  private Fault byShare(RandomGenerator random) {
    double left =
        random.nextDouble() * share.values().stream().mapToDouble(Double::doubleValue).sum();
    for (Fault fault : faults) {
      left -= share.get(fault.key());
      if (left < 0) {
        return fault;
      }
    }
    return faults.get(faults.size() - 1);
  }

  /** What the cause brings, or what is there beside it by coincidence, of another group. */
  private Optional<String> beside(Fault cause, RandomGenerator random) {
    double place = random.nextDouble();
    for (Brings each : kind.brings()) {
      if (each.cause().equals(cause.key()) && share.containsKey(each.effect())) {
        place -= each.chance();
        if (place < 0) {
          return Optional.of(each.effect());
        }
      }
    }
    double coincidence = random.nextDouble();
    for (Fault other : faults) {
      if (!groupOf(other).equals(groupOf(cause))) {
        coincidence -= EngineSettings.USUAL.beside(other.prior());
        if (coincidence < 0) {
          return Optional.of(other.key());
        }
      }
    }
    return Optional.empty();
  }

  /** The chance, 0 to 1, that a machine has a symptom. */
  double chance(TrueMachine machine, Symptom symptom) {
    boolean sound = machine.truth().equals(NOTHING_WRONG);
    double absent = 1 - (sound ? unfounded(symptom) : symptom.leak());
    for (Fault fault : faults) {
      Double severity = machine.severity().get(fault.key());
      if (severity != null) {
        absent *= 1 - makes(fault, symptom, severity);
      }
    }
    if (machine.strange().isPresent()) {
      absent *= 1 - strangely(machine.strange().get(), symptom);
    }
    return 1 - absent;
  }

  private double unfounded(Symptom symptom) {
    Map<String, Double> named = kind.nothingWrong().symptoms();
    return named.isEmpty()
        ? symptom.amongUnfounded()
        : named.getOrDefault(symptom.id(), symptom.leak());
  }

  private static double makes(Fault fault, Symptom symptom, double severity) {
    for (FaultSymptom each : fault.symptoms()) {
      if (each.symptom().equals(symptom.id())) {
        return each.at(severity);
      }
    }
    return 0;
  }

  /** As the faults of the group do on average. */
  private double strangely(String strange, Symptom symptom) {
    double sum = 0;
    double weight = 0;
    for (Fault fault : faults) {
      if (groupOf(fault).equals(strange)) {
        sum += fault.prior() * makes(fault, symptom, FaultSymptom.MIDDLE);
        weight += fault.prior();
      }
    }
    return weight > 0 ? sum / weight : 0;
  }

  /** The symptoms that such machines have, in the order of the vocabulary. */
  List<Symptom> symptoms() {
    return world.vocabulary().symptoms().stream()
        .filter(symptom -> kind.symptoms().contains(symptom.id()))
        .toList();
  }

  Kind kind() {
    return kind;
  }
}
