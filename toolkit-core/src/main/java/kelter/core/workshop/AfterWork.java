package kelter.core.workshop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.job.work.WorkDone;
import kelter.core.source.Source;
import kelter.core.workshop.kind.GivenFaults;

/**
 * What is held of a machine after some work, before anything is read again.
 *
 * <p>A fault that was there with probability P is still there with {@code P (1 - c)}, c the chance
 * that the work cures it; without work for it, with P. That nothing is wrong has the product of
 * what is left over all faults, as if they came by themselves. What is read after the work then
 * weighs all of it, as in any diagnosis. Chances of a cure stand with the remedies. Derived here.
 *
 * @param found what was held of the machine as found
 * @param work what was done
 */
record AfterWork(Diagnosis found, List<WorkDone> work) {

  private static final double LEAST = 1e-6;
  private static final Source SOURCE =
      Source.fromMemory("what was held before the work, less what the work cures by its chance");

  /** A job with what was read and seen after the work only. */
  static Job left(Job job) {
    List<Measurement> left = new ArrayList<>(job.measurements());
    left.removeIf(each -> each.stage() != Stage.AS_LEFT);
    Complaint seen = new Complaint(Complaint.Reason.INSPECTION, "", "", job.progress().symptoms());
    return job.with(seen, left);
  }

  /** The same machine with what is left of the chance of each fault. */
  Knowledge knowledge(Knowledge before) {
    Map<String, Double> chances = new HashMap<>();
    for (Diagnosis.FaultProbability each : found.faults()) {
      chances.put(each.fault().key(), each.probability());
    }
    List<FaultModel> models = new ArrayList<>();
    for (FaultModel model : before.allModels()) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : model.faults()) {
        double chance = chances.getOrDefault(fault.key(), 0.0) * (1 - cured(fault));
        faults.add(with(fault, Math.min(1 - LEAST, Math.max(LEAST, chance))));
      }
      models.add(new GivenFaults(model, faults));
    }
    return new Knowledge(models, before.symptoms(), List.of(), List.of());
  }

  /** The settings under which the chances of that knowledge hold as they stand. */
  EngineSettings settings(EngineSettings usual, Knowledge left) {
    double unknown = found.unexplained().probability() / left.models().size();
    double each = Math.min(1 - LEAST, Math.max(LEAST, unknown));
    double sound = 1;
    for (FaultModel model : left.models()) {
      sound *= 1 - each;
      for (Fault fault : model.faults()) {
        sound *= 1 - fault.prior();
      }
    }
    double nothing = Math.min(1 - LEAST, Math.max(LEAST, sound));
    return new EngineSettings(
        usual.blunder(), each, nothing, nothing, 1, usual.mostHazard(), usual.mostFaults());
  }

  /** The chance that the work cured a fault, if it was there. */
  private double cured(Fault fault) {
    double still = 1;
    Set<String> done = new HashSet<>();
    for (WorkDone each : work) {
      if (each.remedy().filter(done::add).isPresent()) {
        still *= 1 - cured(fault, each.remedy().get());
      }
    }
    return 1 - still;
  }

  private double cured(Fault fault, String remedy) {
    for (Remedy each : fault.remedies()) {
      if (each.key().equals(remedy)) {
        return each.probabilityOfCure();
      }
    }
    return renewed(fault, remedy).map(Remedy::probabilityOfCure).orElse(0.0);
  }

  /** The remedy of another fault that renewed the whole component of this one. */
  private Optional<Remedy> renewed(Fault fault, String remedy) {
    for (Diagnosis.FaultProbability other : found.faults()) {
      for (Remedy each : other.fault().remedies()) {
        if (each.key().equals(remedy)
            && each.restores() == Remedy.Restores.COMPONENT
            && each.component().equals(fault.component())) {
          return Optional.of(each);
        }
      }
    }
    return Optional.empty();
  }

  private static Fault with(Fault fault, double chance) {
    return new Fault(
        fault.id(),
        fault.component(),
        fault.title(),
        chance,
        SOURCE,
        fault.remedies(),
        Optional.empty(),
        fault.symptoms(),
        fault.modelled());
  }
}
