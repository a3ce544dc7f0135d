package kelter.core.diagnosis.simulation;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.vocabulary.Symptom;

/**
 * With which chances a machine has symptoms. Causes combine by noisy-OR: a symptom is absent with
 * the product of the chances with which each of them, the leak too, does not make it. What no known
 * fault explains makes a symptom as the faults of its group do on average by their priors, at
 * severity {@link FaultSymptom#MIDDLE}.
 */
final class MachineSymptoms {

  /** Over so many severities, alike far from each other, a chance is averaged. */
  private static final int SEVERITIES = 50;

  private final List<FaultModel> models;
  private final List<double[]> priors;
  private final World world;

  /**
   * Prepares a kind of machine.
   *
   * @param models its faults
   * @param priors for each model the chance of each of its faults, in the order of the faults
   * @param world how often machines have nothing wrong and groups are unexplained
   */
  MachineSymptoms(List<FaultModel> models, List<double[]> priors, World world) {
    this.models = List.copyOf(models);
    this.priors = List.copyOf(priors);
    this.world = world;
  }

  /** The chance that a machine has a symptom. */
  double chance(Machine machine, Symptom symptom) {
    double absent = 1 - (machine.isSound() ? symptom.amongUnfounded() : symptom.leak());
    for (int g = 0; g < models.size(); g++) {
      double[] severity = machine.severity().get(g);
      if (machine.unexplained().get(g)) {
        absent *= 1 - ofUnexplained(g, symptom.id());
      }
      for (int i = 0; i < severity.length; i++) {
        absent *= severity[i] > 0 ? 1 - ofFault(g, i, symptom.id(), severity[i]) : 1;
      }
    }
    return 1 - absent;
  }

  /**
   * The chance that a machine has a symptom of which nothing is known. Within a group faults are
   * taken as independent, also those that cannot meet.
   */
  double prior(Symptom symptom) {
    double sound = 1;
    double quiet = 1;
    double unexplained = world.beside(world.unexplained());
    for (int g = 0; g < models.size(); g++) {
      double noFault = 1;
      double noneMakes = 1;
      for (int i = 0; i < priors.get(g).length; i++) {
        noFault *= 1 - priors.get(g)[i];
        noneMakes *= 1 - priors.get(g)[i] * mean(g, i, symptom.id());
      }
      sound *= (1 - unexplained) * noFault;
      quiet *= (1 - unexplained) * noneMakes + unexplained * (1 - ofUnexplained(g, symptom.id()));
    }
    double absentIfWrong = (1 - symptom.leak()) * (quiet - sound) / (1 - sound);
    return world.nothingWrong() * symptom.amongUnfounded()
        + (1 - world.nothingWrong()) * (1 - absentIfWrong);
  }

  /** Whether some fault makes a symptom. */
  boolean isMade(String symptom) {
    return models.stream()
        .flatMap(model -> model.faults().stream())
        .anyMatch(fault -> of(fault, symptom).isPresent());
  }

  private double ofUnexplained(int group, String symptom) {
    double mass = 0;
    double sum = 0;
    for (int i = 0; i < priors.get(group).length; i++) {
      mass += priors.get(group)[i];
      sum += priors.get(group)[i] * ofFault(group, i, symptom, FaultSymptom.MIDDLE);
    }
    return sum / mass;
  }

  private double mean(int group, int fault, String symptom) {
    double sum = 0;
    for (int k = 0; k < SEVERITIES; k++) {
      sum += ofFault(group, fault, symptom, (k + 0.5) / SEVERITIES);
    }
    return sum / SEVERITIES;
  }

  private double ofFault(int group, int fault, String symptom, double severity) {
    return of(models.get(group).faults().get(fault), symptom)
        .map(own -> own.at(severity))
        .orElse(0.0);
  }

  private static Optional<FaultSymptom> of(Fault fault, String symptom) {
    return fault.symptoms().stream().filter(own -> own.symptom().equals(symptom)).findFirst();
  }
}
