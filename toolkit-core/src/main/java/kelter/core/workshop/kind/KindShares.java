package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindMachine;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.CauseShare;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Wear;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom;

/**
 * The shares of all causes in one machine of a kind.
 *
 * <p>A cause has the share that its kind tells, times the factor of {@link Wear} for the age of the
 * machine against the kind's typical age; several components that stand for one part divide it. A
 * fault of one of the kind's parts that the kind does not name is rare. A fault of a component that
 * the job adds has the share that its module tells. Then all are multiplied by one factor so that
 * they sum to what nothing-wrong and something-else leave: a part that is added takes from all
 * others alike, and what a machine lacks gives to all alike.
 */
final class KindShares {

  /** The share of a fault that a kind does not name for one of its parts; from memory. */
  private static final double RARE = 0.0005;

  private final KindMachine machine;
  private final List<FaultModel> models;
  private final Map<String, KindCause> causeOf = new LinkedHashMap<>();
  private final Map<String, Double> share = new LinkedHashMap<>();
  private final boolean aged;

  private KindShares(
      KindMachine machine, Appliance usual, List<FaultModel> models, OptionalDouble age) {
    this.machine = machine;
    this.models = models;
    this.aged = age.isPresent();
    Map<String, Fault> modelled = new HashMap<>();
    for (FaultModel model : models) {
      model.faults().forEach(fault -> modelled.put(fault.key(), fault));
    }
    for (KindCause cause : machine.kind().causes()) {
      List<String> components = new ArrayList<>(machine.standingFor(cause.part()));
      components.removeIf(component -> isAlone(cause, usual.component(component)));
      for (String component : components) {
        String key = component + "." + cause.fault();
        causeOf.put(key, cause);
        double factor = age.isPresent() ? wear(cause, modelled.get(key), age.getAsDouble()) : 1;
        share.put(key, cause.share() * factor / components.size());
      }
    }
    for (Fault fault : modelled.values()) {
      share.computeIfAbsent(
          fault.key(), key -> machine.isOfKind(fault.component()) ? RARE : fault.prior());
    }
    rescale();
  }

  /**
   * Works out the shares.
   *
   * @param machine the machine
   * @param usual the same, in which typical figures stand in
   * @param models the fault models of its components
   * @param age its age in years, if told
   * @return the shares
   */
  public static KindShares of(
      KindMachine machine, Appliance usual, List<FaultModel> models, OptionalDouble age) {
    return new KindShares(machine, usual, models, age);
  }

  /** Whether a cause of several like pieces is told of a component that is one piece. */
  private static boolean isAlone(KindCause cause, Optional<Component> component) {
    return cause.several().isPresent()
        && component.isPresent()
        && !(component.get().figure(cause.several().get()).map(Quantity::si).orElse(1.0) > 1);
  }

  private double wear(KindCause cause, Fault fault, double age) {
    OptionalDouble shape = cause.wear();
    if (shape.isEmpty() && fault != null && fault.wear().isPresent()) {
      shape = OptionalDouble.of(fault.wear().get().shape());
    }
    return shape.isEmpty()
        ? 1
        : new Wear(shape.getAsDouble(), machine.kind().typicalAge(), machine.kind().source())
            .factor(age);
  }

  private void rescale() {
    double sum = 0;
    for (double each : share.values()) {
      sum += each;
    }
    Kind kind = machine.kind();
    double factor = (1 - kind.nothingWrong().share() - kind.somethingElse()) / sum;
    share.replaceAll((key, each) -> each * factor);
  }

  /**
   * The share of a cause.
   *
   * @param key component and fault, joined by a full stop
   * @return the share; 0 for what is no cause here
   */
  public double of(String key) {
    return share.getOrDefault(key, 0.0);
  }

  /**
   * All that is known of the machine before anything is said of it or measured.
   *
   * @param symptoms the symptoms that machines can have
   * @return models with the shares and symptoms of the kind, and the causes without a model
   */
  public Knowledge knowledge(List<Symptom> symptoms) {
    List<FaultModel> ofKind = new ArrayList<>();
    for (FaultModel model : models) {
      ofKind.add(new GivenFaults(model, model.faults().stream().map(this::ofKind).toList()));
    }
    return new Knowledge(ofKind, amongUnfounded(symptoms), brings(), causes());
  }

  /** The chance whose odds are a share: the odds of the causes are then as their shares. */
  private static double asChance(double share) {
    return share / (1 + share);
  }

  private Fault ofKind(Fault fault) {
    KindCause cause = causeOf.get(fault.key());
    return new Fault(
        fault.id(),
        fault.component(),
        title(fault, cause),
        asChance(of(fault.key())),
        source(),
        fault.remedies(),
        Optional.empty(),
        cause == null ? fault.symptoms() : symptoms(cause, fault.symptoms()),
        fault.modelled());
  }

  /** The words of the kind, which name the part, unless several components stand for it. */
  private String title(Fault fault, KindCause cause) {
    return cause != null && machine.standingFor(cause.part()).size() == 1
        ? cause.title()
        : fault.title();
  }

  private Source source() {
    Source source = machine.kind().sharesFrom();
    return aged
        ? new Source(source.document() + ", scaled by the age of the machine", source.standing())
        : source;
  }

  /** The shapes of the module through the chances of the kind. */
  private static List<FaultSymptom> symptoms(KindCause cause, List<FaultSymptom> shapes) {
    List<FaultSymptom> all = new ArrayList<>();
    for (Map.Entry<String, Double> each : new TreeMap<>(cause.symptoms()).entrySet()) {
      all.add(symptom(each.getKey(), each.getValue(), shapes));
    }
    return all;
  }

  private static FaultSymptom symptom(String id, double middle, List<FaultSymptom> shapes) {
    for (FaultSymptom shape : shapes) {
      double now = shape.symptom().equals(id) ? shape.at(FaultSymptom.MIDDLE) : 0;
      if (now > 0 && now < 1 && middle > 0 && middle < 1) {
        return shape.through(middle);
      }
    }
    return new FaultSymptom(id, severity -> middle);
  }

  private List<CauseShare> causes() {
    List<CauseShare> causes = new ArrayList<>();
    for (Map.Entry<String, KindCause> each : causeOf.entrySet()) {
      KindCause cause = each.getValue();
      String component = each.getKey().substring(0, each.getKey().indexOf('.'));
      causes.add(
          new CauseShare(
              component,
              cause.fault(),
              cause.title(),
              asChance(of(each.getKey())),
              cause.symptoms(),
              work(cause),
              cause.mend() == KindCause.Mend.RENEW,
              source()));
    }
    return causes;
  }

  private String work(KindCause cause) {
    String part = machine.kind().part(cause.part()).map(KindPart::title).orElse(cause.part());
    return switch (cause.mend()) {
      case RENEW -> "renew the " + part;
      case CLEAN -> "clean the " + part;
      case ADJUST -> "set right the " + part;
      case HAND_OVER -> "hand over to the licensed trade: " + part;
    };
  }

  private List<Brings> brings() {
    List<Brings> brings = new ArrayList<>();
    for (Brings each : machine.kind().brings()) {
      for (String cause : keys(each.cause())) {
        for (String effect : keys(each.effect())) {
          brings.add(new Brings(cause, effect, each.chance()));
        }
      }
    }
    return brings;
  }

  private List<String> keys(String ofKind) {
    int stop = ofKind.indexOf('.');
    List<String> keys = new ArrayList<>();
    for (String component : machine.standingFor(ofKind.substring(0, stop))) {
      keys.add(component + ofKind.substring(stop));
    }
    return keys;
  }

  /** What is named where nothing is wrong, as the kind tells it. */
  private List<Symptom> amongUnfounded(List<Symptom> symptoms) {
    Map<String, Double> named = machine.kind().nothingWrong().symptoms();
    if (named.isEmpty()) {
      return symptoms;
    }
    List<Symptom> all = new ArrayList<>();
    for (Symptom each : symptoms) {
      all.add(each.amongUnfounded(named.getOrDefault(each.id(), each.leak())));
    }
    return all;
  }
}
