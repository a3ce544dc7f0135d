package kelter.cli.wiring;

import com.google.inject.Guice;
import com.google.inject.Stage;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import kelter.core.check.Checker;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.diagnosis.simulation.Simulation;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.diagnosis.simulation.wrong.WrongCurves;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.rule.JobRules;
import kelter.core.module.CalculationModule;
import kelter.core.option.Weigher;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.shop.Shop;

/** Where machines are diagnosed and their repair is weighed, with all modules. */
public final class Workshop {

  private final Modules modules;
  private final EngineSettings settings;

  @Inject
  Workshop(Modules modules, EngineSettings settings) {
    this.modules = modules;
    this.settings = settings;
  }

  /**
   * Wires a workshop.
   *
   * @param modules the modules at work
   * @param shop the shop whose rules hold
   * @return the workshop
   */
  public static Workshop of(Modules modules, Shop shop) {
    return Guice.createInjector(Stage.DEVELOPMENT, new WorkshopModule(modules, shop))
        .getInstance(Workshop.class);
  }

  /**
   * Diagnoses the machine of a job for somebody who does not ask what to measure.
   *
   * @param job the job
   * @return the diagnosis
   * @throws InputException with all that is wrong with the job if it does not keep its rules
   */
  public Diagnosis diagnose(Job job) {
    return diagnose(job, List.of());
  }

  /**
   * Diagnoses the machine of a job.
   *
   * @param job the job
   * @param findings what was found on it; where one says that the machine must stay unplugged, no
   *     measurement on a running machine is proposed
   * @return the diagnosis
   * @throws InputException with all that is wrong with the job if it does not keep its rules
   */
  public Diagnosis diagnose(Job job, List<Finding> findings) {
    JobRules.require(job, modules.vocabulary());
    return engine(findings).diagnose(job, models(job));
  }

  /**
   * The name of a fault of a machine.
   *
   * @param job the job
   * @param word {@code component.fault}, or only the id of the fault if no other has it
   * @return {@code component.fault}
   * @throws InputException if there is no such fault, or there are several
   */
  public String faultKey(Job job, String word) {
    List<Fault> all = models(job).stream().flatMap(model -> model.faults().stream()).toList();
    List<String> keys = all.stream().map(Fault::key).toList();
    List<String> found =
        all.stream()
            .filter(f -> f.key().equals(word) || f.id().equals(word))
            .map(Fault::key)
            .toList();
    if (found.size() == 1) {
      return found.get(0);
    }
    String remedy =
        found.isEmpty()
            ? Nearest.of(word, keys)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("known are: " + String.join(", ", keys))
            : "say which: " + String.join(", ", found);
    throw new InputException(
        "--why " + word, "is " + (found.isEmpty() ? "no fault" : "several faults"), remedy);
  }

  /**
   * Tells why a fault is held for as likely as it is.
   *
   * @param job the job
   * @param findings what was found on it
   * @param fault {@code component.fault}, of a model
   * @return the reasons
   * @throws InputException with all that is wrong with the job if it does not keep its rules
   */
  public Explanation explain(Job job, List<Finding> findings, String fault) {
    JobRules.require(job, modules.vocabulary());
    return engine(findings).explain(job, models(job), fault).orElseThrow();
  }

  private DiagnosisEngine engine(List<Finding> findings) {
    EngineSettings allowed = Checker.keepUnplugged(findings) ? settings.unplugged() : settings;
    return new DiagnosisEngine(allowed, FaultHistory.NONE, true);
  }

  /**
   * By which chances machines are drawn to try the diagnosis.
   *
   * @return what the engine takes for granted of machines that somebody complains of
   */
  public World world() {
    return World.of(settings);
  }

  /**
   * Tries the diagnosis on machines that are drawn.
   *
   * @param appliance the kind of machine
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
    List<FaultModel> truth =
        models(curves == 1 ? appliance : WrongCurves.scaled(appliance, curves));
    return Simulation.run(appliance, models(appliance), truth, settings, plan, progress);
  }

  private List<FaultModel> models(Job job) {
    return models(job.appliance());
  }

  private List<FaultModel> models(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (CalculationModule module : modules.all()) {
      models.addAll(module.faultModels(appliance));
    }
    return models;
  }

  /**
   * What a reader of the diagnosis should know beside it.
   *
   * @param job the job
   * @return sentences; one for the components whose faults no module knows
   */
  public List<String> notes(Job job) {
    return notes(job, models(job));
  }

  /**
   * What is known of a machine beside the diagnosis.
   *
   * @param notes what a reader of the diagnosis should know beside it
   * @param remedies the remedies of all fault models, one once for each fault that it is meant for
   */
  public record Knowledge(List<String> notes, List<Remedy> remedies) {

    /** Copies the lists. */
    public Knowledge {
      notes = List.copyOf(notes);
      remedies = List.copyOf(remedies);
    }
  }

  /**
   * Notes and remedies at once, for which the models are made only once.
   *
   * @param job the job
   * @return what is known of its machine
   */
  public Knowledge knowledge(Job job) {
    List<FaultModel> models = models(job);
    return new Knowledge(notes(job, models), remedies(models));
  }

  private static List<String> notes(Job job, List<FaultModel> models) {
    Set<String> covered = new HashSet<>();
    for (FaultModel model : models) {
      for (Fault fault : model.faults()) {
        covered.add(fault.component());
      }
    }
    List<String> uncovered = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (!covered.contains(component.id())) {
        uncovered.add(component.id());
      }
    }
    return uncovered.isEmpty()
        ? List.of()
        : List.of(
            "Not assessed, for want of a fault model or of figures: "
                + String.join(", ", uncovered)
                + ".");
  }

  /**
   * What can be done about the faults of a machine.
   *
   * @param job the job
   * @return the remedies of all fault models, one once for each fault that it is meant for
   */
  public List<Remedy> remedies(Job job) {
    return remedies(models(job));
  }

  private static List<Remedy> remedies(List<FaultModel> models) {
    List<Remedy> remedies = new ArrayList<>();
    for (FaultModel model : models) {
      for (Fault fault : model.faults()) {
        remedies.addAll(fault.remedies());
      }
    }
    return remedies;
  }

  /**
   * How options are weighed.
   *
   * @return the weigher of the first module that has one
   */
  public Optional<Weigher> weigher() {
    return modules.all().stream().flatMap(module -> module.weigher().stream()).findFirst();
  }
}
