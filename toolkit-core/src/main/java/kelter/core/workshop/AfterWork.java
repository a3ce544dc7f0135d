package kelter.core.workshop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.WorkDone;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.kind.GivenFaults;

/**
 * What is held of a machine after some work, before anything is read again.
 *
 * <p>A fault that was there with probability P is still there with {@code P (1 - c)}, c the chance
 * that the work cures it; without work for it, with P. Causes of one complaint exclude each other,
 * so that nothing is wrong with what their sum leaves. What is read after the work then weighs all
 * of it, as in any diagnosis. Chances of a cure stand with the remedies. Derived here.
 *
 * <p>Of a fault that was there with P, c of which is coincidence (what it has beside another cause
 * before anything is read, and what other causes bring), the share {@code (P - c) / P} made the
 * complaint. That what made it is gone has 1 less the sum of {@code P' (P - c) / P} over all faults
 * and what nobody knows, P' being what is held after the work. Derived here.
 *
 * <p>Work in own words that tells what it found was done for that: it cures it by the least of the
 * chances of the works that are known for it. Own choice.
 *
 * @param found what was held of the machine as found, and of what was found at the work
 * @param usual the settings under which that was
 * @param job the job
 */
record AfterWork(Diagnosis found, EngineSettings usual, Job job) {

  private static final double LEAST = 1e-6;
  private static final Source SOURCE =
      Source.fromMemory("what was held before the work, less what the work cures by its chance");

  /**
   * A job with what was read and seen after the work only. A step that held rules out symptoms, if
   * nobody has said more of them.
   *
   * @param steps the steps back to power
   * @param ofKind the symptoms that such machines can have; all where the kind is not known
   */
  static Job left(Job job, List<StepsFor> steps, Set<String> ofKind) {
    Map<String, SymptomReport> seen = new LinkedHashMap<>();
    for (StepsFor step : steps) {
      boolean held =
          job.progress().tests().stream()
              .anyMatch(test -> test.met() && test.step().equals(step.id()));
      for (String symptom : held ? step.rulesOut() : List.<String>of()) {
        if (ofKind.contains(symptom)) {
          seen.put(symptom, new SymptomReport(symptom, SymptomReport.Answer.NO));
        }
      }
    }
    for (SymptomReport each : job.progress().symptoms()) {
      seen.put(each.symptom(), each);
    }
    return job.with(
        new Complaint(Complaint.Reason.INSPECTION, "", "", List.copyOf(seen.values())),
        job.asLeft());
  }

  /**
   * The same machine with what is left of the chance of each fault. Nobody complains any more, so
   * that a symptom is there without a cause as seldom as beside one.
   */
  Knowledge knowledge(Knowledge before) {
    Map<String, Double> chances = chances(found);
    List<FaultModel> models = new ArrayList<>();
    for (FaultModel model : before.allModels()) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : model.faults()) {
        double chance = chances.getOrDefault(fault.key(), 0.0) * (1 - cured(fault));
        faults.add(fault.with(Math.min(1 - LEAST, Math.max(LEAST, chance)), SOURCE));
      }
      models.add(new GivenFaults(model, faults));
    }
    List<Symptom> idle =
        before.symptoms().stream().map(each -> each.amongUnfounded(each.leak())).toList();
    return new Knowledge(models, idle, List.of(), List.of());
  }

  /**
   * The settings under which the chances of that knowledge hold as they stand.
   *
   * <p>What made the complaint is one thing, so that the chances of that sum; what is there by
   * coincidence comes one by one, so that nothing of it is there with the product of the chances
   * that each is not.
   */
  EngineSettings settings(Knowledge before, Knowledge left) {
    double unknown = found.unexplained().probability() / left.models().size();
    double each = Math.min(1 - LEAST, Math.max(LEAST, unknown));
    Made made = made(before);
    double cause = found.unexplained().probability() * made.unknown();
    double beside = Math.pow(1 - each * (1 - made.unknown()), left.models().size());
    for (FaultModel model : left.models()) {
      for (Fault fault : model.faults()) {
        double share = made.shares().getOrDefault(fault.key(), 0.0);
        cause += fault.prior() * share;
        beside *= 1 - fault.prior() * (1 - share);
      }
    }
    double nothing = Math.min(1 - LEAST, Math.max(LEAST, (1 - cause) * beside));
    return new EngineSettings(
        usual.blunder(), each, nothing, nothing, 1, usual.mostHazard(), usual.mostFaults());
  }

  /**
   * What share of the chance of each fault, and of what nobody knows, made the complaint.
   *
   * @param shares by the key of a fault, from 0 to 1
   * @param unknown the same of what nobody knows
   */
  private record Made(Map<String, Double> shares, double unknown) {}

  private Made made(Knowledge before) {
    Priors priors = new Priors(job.appliance(), FaultHistory.NONE);
    Map<String, Double> asFound = chances(found);
    Map<String, Double> shares = new HashMap<>();
    for (FaultModel model : before.allModels()) {
      for (Fault fault : model.faults()) {
        double coincidence = usual.beside(priors.of(fault)) + brought(fault.key(), before.brings());
        shares.put(fault.key(), made(asFound.getOrDefault(fault.key(), 0.0), coincidence));
      }
    }
    double known = Math.pow(1 - usual.beside(usual.unexplained()), before.allModels().size());
    return new Made(shares, made(found.unexplained().probability(), 1 - known));
  }

  /** What is held of the machine after the work. */
  AsLeft judged(Knowledge before, Diagnosis left, List<Finding> outside) {
    Made made = made(before);
    double there = left.unexplained().probability() * made.unknown();
    for (Diagnosis.FaultProbability each : left.faults()) {
      there += each.probability() * made.shares().getOrDefault(each.fault().key(), 0.0);
    }
    return new AsLeft(left, Math.min(1, Math.max(0, 1 - there)), outside);
  }

  /** The chance that another cause has brought a fault. */
  private double brought(String fault, List<Brings> brings) {
    Map<String, Double> chances = chances(found);
    double brought = 0;
    for (Brings each : brings) {
      boolean is = each.effect().equals(fault);
      brought += is ? chances.getOrDefault(each.cause(), 0.0) * each.chance() : 0;
    }
    return brought;
  }

  private static double made(double chance, double coincidence) {
    return chance > coincidence ? (chance - coincidence) / chance : 0;
  }

  private static Map<String, Double> chances(Diagnosis diagnosis) {
    Map<String, Double> chances = new HashMap<>();
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      chances.put(each.fault().key(), each.probability());
    }
    return chances;
  }

  /** The chance that the work cured a fault, if it was there. */
  private double cured(Fault fault) {
    double still = 1;
    Set<String> done = new HashSet<>();
    for (WorkDone each : job.progress().work()) {
      if (each.remedy().filter(done::add).isPresent()) {
        still *= 1 - cured(fault, each.remedy().get());
      } else if (each.isForWhatWasFound() && each.found().contains(fault.key())) {
        still *= 1 - least(fault);
      }
    }
    return 1 - still;
  }

  private static double least(Fault fault) {
    return fault.remedies().stream().mapToDouble(Remedy::probabilityOfCure).min().orElse(0);
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
}
