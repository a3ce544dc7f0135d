package kelter.core.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.Permit;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.job.Complaint;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Reread;
import kelter.core.safety.lockout.Situation;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.safety.lockout.Suspicion;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/** The lock-out table at work on one job. */
final class Locking implements Permit {

  private static final LockOutTable TABLE = LockOutFile.shipped();
  private static final Set<String> SIGNS = signs();

  private final Situation situation;
  private final LockOut plain;

  Locking(Situation situation) {
    this.situation = situation;
    this.plain = LockOut.of(TABLE, situation, List.of());
  }

  private static Set<String> signs() {
    Set<String> signs = new LinkedHashSet<>();
    for (Symptom sign : Symptoms.SIGNS) {
      signs.add(sign.id());
    }
    return signs;
  }

  /** A job as it is weighed: without signs of danger and without what was read after the work. */
  static Job weighed(Job job) {
    return weighed(job, Measurement.Stage.AS_FOUND);
  }

  /** A job as it is weighed: without signs of danger, and with what was read at one stage only. */
  static Job weighed(Job job, Measurement.Stage stage) {
    Complaint complaint = job.complaint();
    for (SymptomReport report : complaint.symptoms()) {
      complaint =
          SIGNS.contains(report.symptom()) ? complaint.without(report.symptom()) : complaint;
    }
    List<Measurement> found = new ArrayList<>(job.measurements());
    found.removeIf(each -> each.stage() != stage);
    boolean same = found.size() == job.measurements().size() && complaint == job.complaint();
    return same ? job : job.with(complaint, found);
  }

  /** What the rows of the table may say, in its order. */
  static List<Caution> vocabulary() {
    return TABLE.rows().stream().map(row -> row.caution(row.text().usual(), true)).toList();
  }

  /** What the table says before any fault is weighed. */
  LockOut withoutSuspicions() {
    return plain;
  }

  /** What the table says once the chances of all faults are known. */
  LockOut with(List<Diagnosis.FaultProbability> faults) {
    List<Suspicion.Likely> likely = new ArrayList<>();
    for (Diagnosis.FaultProbability each : faults) {
      likely.add(
          new Suspicion.Likely(
              each.fault().component(),
              each.fault().id(),
              each.fault().title(),
              each.probability()));
    }
    List<Suspicion> suspicions = Suspicion.of(TABLE, situation, likely);
    return suspicions.isEmpty() ? plain : LockOut.of(TABLE, situation, suspicions);
  }

  /** One caution for each text of the rows that hold, the strictest first. */
  List<Caution> cautions() {
    Map<String, Caution> cautions = new LinkedHashMap<>();
    for (ActiveRow each : plain.rows()) {
      if (!each.quiet()) {
        cautions.putIfAbsent(each.text(), each.caution());
      }
    }
    return List.copyOf(cautions.values());
  }

  /** Whether what a finding is about may be read as the machine was found. */
  boolean mayBeRead(Finding finding) {
    return observable(finding.component(), finding.observable())
        .map(
            observable ->
                plain.allows(finding.component(), observable.id(), observable.procedure().hazard()))
        .orElse(true);
  }

  private Optional<Observable> observable(String component, String observable) {
    return situation
        .job()
        .appliance()
        .component(component)
        .flatMap(part -> situation.vocabulary().observable(part.kind(), observable));
  }

  private Optional<Question> reading(Reread before) {
    return observable(before.component(), before.observable())
        .map(each -> new Question(before.component(), each, Conditions.NONE));
  }

  private static boolean allows(LockOut lockOut, Question question) {
    return lockOut.allows(
        question.component(),
        question.observable().id(),
        question.observable().procedure().hazard());
  }

  List<StepsFor> isolation() {
    return StepsFor.of(TABLE.isolation(), situation, rows());
  }

  List<StepsFor> backToPower() {
    return StepsFor.of(TABLE.backToPower(), situation, rows());
  }

  private Set<String> rows() {
    Set<String> rows = new LinkedHashSet<>();
    plain.rows().forEach(each -> rows.add(each.row().id()));
    return rows;
  }

  @Override
  public Granted after(List<Diagnosis.FaultProbability> faults) {
    LockOut lockOut = with(faults);
    return new Granted() {
      @Override
      public boolean measures(Question question) {
        return allows(lockOut, question);
      }

      @Override
      public Optional<Question> before(Question question) {
        if (!lockOut.waits(
            question.component(),
            question.observable().id(),
            question.observable().procedure().hazard())) {
          return Optional.empty();
        }
        return lockOut.before().stream()
            .flatMap(each -> reading(each).stream())
            .filter(each -> allows(lockOut, each))
            .findFirst();
      }

      @Override
      public boolean goesFirst(Question question) {
        return lockOut.goesFirst(question.component(), question.observable().id());
      }

      @Override
      public boolean mends(String component) {
        return lockOut.mends(component);
      }

      @Override
      public boolean staysUnplugged() {
        return lockOut.staysUnplugged();
      }
    };
  }
}
