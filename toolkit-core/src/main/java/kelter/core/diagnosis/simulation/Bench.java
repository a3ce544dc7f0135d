package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport;
import kelter.core.safety.Hazard;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/** Draws machines of one kind, measures them and asks the engine. Safe for several threads. */
final class Bench {

  private static final String SAID = "it does not work";

  private final Appliance appliance;
  private final Knowledge told;
  private final DiagnosisEngine engine;
  private final MachineDraw machines;
  private final SymptomInterview interview;
  private final List<ReadingDraw> readings = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final Diagnosis unmeasured;

  Bench(
      Appliance appliance,
      Knowledge told,
      List<FaultModel> truth,
      EngineSettings settings,
      SimulationPlan plan) {
    this.appliance = appliance;
    List<FaultModel> models = told.allModels();
    World world = plan.world();
    this.told = new Knowledge(models, told.symptoms(), List.of(), List.of());
    this.engine = new DiagnosisEngine(settings);
    this.machines = new MachineDraw(truth, new Priors(appliance, FaultHistory.NONE), world);
    requireAlike(models, truth);
    this.interview =
        SymptomInterview.of(
            told.symptoms(),
            new MachineSymptoms(models, machines.priors(), world),
            new MachineSymptoms(truth, machines.priors(), world),
            plan.symptoms());
    for (int g = 0; g < models.size(); g++) {
      List<Question> own = proposed(models.get(g), settings);
      questions.addAll(own);
      readings.add(new ReadingDraw(own, truth.get(g).forecaster(own), world.blunder()));
    }
    if (questions.isEmpty()) {
      throw new IllegalArgumentException(
          "no fault model forecasts anything that can be read on this machine");
    }
    this.unmeasured = diagnose(List.of(), List.of());
  }

  private static void requireAlike(List<FaultModel> models, List<FaultModel> truth) {
    List<List<String>> believed = models.stream().map(Bench::keys).toList();
    List<List<String>> real = truth.stream().map(Bench::keys).toList();
    if (!believed.equals(real)) {
      throw new IllegalArgumentException(
          "the true machine has the faults " + real + ", and the models speak of " + believed);
    }
  }

  private static List<String> keys(FaultModel model) {
    return model.faults().stream().map(Fault::key).toList();
  }

  /** What may be proposed to a technician, each observable once. */
  private static List<Question> proposed(FaultModel model, EngineSettings settings) {
    Set<String> seen = new HashSet<>();
    return model.questions().stream()
        .filter(question -> settings.allows(question.observable().procedure().hazard()))
        .filter(question -> seen.add(question.key()))
        .toList();
  }

  int questions() {
    return questions.size();
  }

  /** The ids of the symptoms for which every owner is asked. */
  List<String> asked() {
    return interview.asked();
  }

  /**
   * A machine with all that can be said and read of it.
   *
   * @param machine what is wrong with it
   * @param reports what its owner says
   * @param unmeasured what the engine makes of that
   * @param readings all readings
   */
  record Case(
      Machine machine,
      List<SymptomReport> reports,
      Diagnosis unmeasured,
      List<Measurement> readings) {}

  Case draw(UniformRandomProvider random, UniformRandomProvider owner) {
    Machine machine = machines.draw(random);
    List<Measurement> all = new ArrayList<>();
    for (int g = 0; g < readings.size(); g++) {
      readings.get(g).draw(machine.state(g), machine.unexplained().get(g), random, all);
    }
    List<SymptomReport> reports = interview.draw(machine, owner);
    Diagnosis first = reports.isEmpty() ? unmeasured : diagnose(reports, List.of());
    return new Case(machine, reports, first, all);
  }

  Trial unmeasured(Case drawn) {
    return Trial.of(drawn.machine(), told.models(), drawn.unmeasured());
  }

  Trial measured(Case drawn) {
    return Trial.of(drawn.machine(), told.models(), diagnose(drawn.reports(), drawn.readings()));
  }

  private Diagnosis diagnose(List<SymptomReport> reports, List<Measurement> measurements) {
    Complaint complaint = new Complaint(Complaint.Reason.FAULT, SAID, "", reports);
    Job job =
        new Job("simulated", "", appliance, complaint, List.of(), measurements, Optional.empty());
    return engine.diagnose(job, told);
  }

  /** Measures a machine, one reading after the other. */
  Walk walk(Case drawn, MeasuringOrder order, UniformRandomProvider random) {
    String truth = StateName.of(drawn.machine(), told.models());
    List<Integer> open = new ArrayList<>();
    for (int k = 0; k < questions.size(); k++) {
      open.add(k);
    }
    if (order == MeasuringOrder.RANDOM) {
      ListSampler.shuffle(random, open);
    }
    List<Measurement> done = new ArrayList<>();
    Set<String> reached = new HashSet<>();
    double minutes = 0;
    Diagnosis diagnosis = drawn.unmeasured();
    while (true) {
      Map.Entry<String, Double> best = Trial.ranking(diagnosis).entrySet().iterator().next();
      boolean sure = best.getValue() >= SimulationReport.SURE;
      if (sure || open.isEmpty()) {
        return new Walk(sure, sure && best.getKey().equals(truth), done.size(), minutes);
      }
      int next = order == MeasuringOrder.LED ? led(diagnosis, open) : open.get(0);
      open.remove(Integer.valueOf(next));
      done.add(drawn.readings().get(next));
      Question question = questions.get(next);
      minutes += DiagnosisEngine.minutes(question, reached);
      if (question.observable().procedure().hazard() != Hazard.LIVE) {
        reached.add(question.component());
      }
      diagnosis = diagnose(drawn.reports(), done);
    }
  }

  private int led(Diagnosis diagnosis, List<Integer> open) {
    for (Diagnosis.NextMeasurement next : diagnosis.next()) {
      for (int k : open) {
        Question question = questions.get(k);
        if (question.component().equals(next.question().component())
            && question.observable().id().equals(next.question().observable().id())) {
          return k;
        }
      }
    }
    return open.get(0);
  }
}
