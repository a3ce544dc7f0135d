package kelter.core.workshop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.work.Closing;
import kelter.core.job.work.WorkDone;
import kelter.core.source.Source;
import kelter.core.workshop.kind.GivenFaults;

/**
 * What the technician found wrong while working, as evidence of what was there.
 *
 * <p>Such a find is wrong as often as any reading ({@link EngineSettings#blunder()}), whatever was
 * held of it before: who is mistaken takes one fault for another as likely as it seemed. With the
 * chance {@code P} of a fault before the find and {@code b} of a blunder, the odds of that fault
 * are multiplied by {@code ((1 - b) / b) / (P / (1 - P))}, where that is more than 1, and those of
 * nothing wrong divided by it. Derived here; the chance of a blunder is from memory.
 *
 * @param appliance the machine
 * @param factors by what the odds of a fault are multiplied, above 1, by its key
 */
record WhatWasFound(Appliance appliance, Map<String, Double> factors) {

  private static final double MOST = 1 - 1e-9;
  private static final double LEAST = 1e-9;
  private static final Source SOURCE =
      Source.fromMemory("what was found at the work, wrong as often as a reading");

  /**
   * What a job tells.
   *
   * @param job the job
   * @param before the diagnosis from symptoms and readings alone
   * @param settings the settings of that
   */
  static WhatWasFound of(Job job, Diagnosis before, EngineSettings settings) {
    Set<String> found = new LinkedHashSet<>();
    job.progress().work().stream().map(WorkDone::found).forEach(found::addAll);
    job.progress().closing().map(Closing::causes).ifPresent(found::addAll);
    Map<String, Double> factors = new TreeMap<>();
    for (Diagnosis.FaultProbability each : before.faults()) {
      double factor = odds(1 - settings.blunder()) / odds(each.probability());
      if (found.contains(each.fault().key()) && factor > 1) {
        factors.put(each.fault().key(), factor);
      }
    }
    return new WhatWasFound(job.appliance(), factors);
  }

  /** Whether it says nothing that was not held before. */
  boolean isNothing() {
    return factors.isEmpty();
  }

  /** The same machine with the odds of what was found. */
  Knowledge in(Knowledge before) {
    Priors priors = new Priors(appliance, FaultHistory.NONE);
    List<FaultModel> models = new ArrayList<>();
    for (FaultModel model : before.allModels()) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : model.faults()) {
        Double factor = factors.get(fault.key());
        faults.add(
            factor == null ? fault : fault.with(chance(odds(priors.of(fault)) * factor), SOURCE));
      }
      models.add(new GivenFaults(model, faults));
    }
    return new Knowledge(models, before.symptoms(), before.brings(), List.of());
  }

  /** The settings with the odds that nothing is wrong. */
  EngineSettings in(EngineSettings before) {
    double most = factors.values().stream().mapToDouble(each -> each).max().orElse(1);
    return new EngineSettings(
        before.blunder(),
        before.unexplained(),
        chance(odds(before.nothingFound()) / most),
        chance(odds(before.soundIfUnasked()) / most),
        before.coincidence(),
        before.mostHazard(),
        before.mostFaults());
  }

  private static double odds(double chance) {
    double held = Math.min(MOST, Math.max(LEAST, chance));
    return held / (1 - held);
  }

  private static double chance(double odds) {
    return Math.min(MOST, Math.max(LEAST, odds / (1 + odds)));
  }
}
