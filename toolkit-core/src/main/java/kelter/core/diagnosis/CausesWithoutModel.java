package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Causes of which no other model speaks, as one group of faults: nothing of them can be measured,
 * so that only what is reported of the machine and what is found elsewhere tell of them. Two of
 * them are never there together, unless one brings the other; any may be there beside the faults of
 * other models.
 *
 * @param faults the causes
 * @param related the keys of any two faults of which one brings the other
 */
record CausesWithoutModel(List<Fault> faults, Set<Set<String>> related) implements FaultModel {

  /** How long it takes to find and mend what nothing is known of, min; from memory. */
  private static final double MINUTES = 45;

  /** How often that succeeds; from memory. */
  private static final double CURE = 0.8;

  /**
   * Those of some causes that no model speaks of.
   *
   * @param causes the causes
   * @param models the models, which take over the causes that are faults of theirs
   * @param brings which faults bring others
   * @return a model of the causes, or empty if none is left
   */
  static Optional<FaultModel> of(
      List<CauseShare> causes, List<FaultModel> models, List<Brings> brings) {
    Set<String> modelled = new HashSet<>();
    for (FaultModel model : models) {
      model.faults().forEach(fault -> modelled.add(fault.key()));
    }
    List<Fault> faults = new ArrayList<>();
    for (CauseShare cause : causes) {
      if (!modelled.contains(cause.key())) {
        faults.add(fault(cause));
      }
    }
    Set<Set<String>> related = new HashSet<>();
    brings.forEach(each -> related.add(Set.of(each.cause(), each.effect())));
    return faults.isEmpty()
        ? Optional.empty()
        : Optional.of(new CausesWithoutModel(List.copyOf(faults), Set.copyOf(related)));
  }

  private static Fault fault(CauseShare cause) {
    List<FaultSymptom> makes = new ArrayList<>();
    for (Map.Entry<String, Double> each : new TreeMap<>(cause.symptoms()).entrySet()) {
      double chance = each.getValue();
      makes.add(new FaultSymptom(each.getKey(), severity -> chance));
    }
    return new Fault(
        cause.fault(),
        cause.component(),
        cause.title(),
        cause.share(),
        cause.source(),
        List.of(findAndMend(cause)),
        Optional.empty(),
        makes,
        false);
  }

  private static Remedy findAndMend(CauseShare cause) {
    return new Remedy(
        cause.fault(),
        cause.component(),
        cause.work(),
        MINUTES,
        cause.needsPart() ? Remedy.Restores.PART : Remedy.Restores.FUNCTION,
        cause.needsPart(),
        CURE,
        List.of());
  }

  @Override
  public String id() {
    return "causes-without-model";
  }

  @Override
  public List<Question> questions() {
    return List.of();
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return one == other || related.contains(Set.of(faults.get(one).key(), faults.get(other).key()));
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    return (severity, value, spread) -> {};
  }
}
