package kelter.electrical.supplycord;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.CordWords;

/**
 * Takes a machine out of use whose plug or cord was hot or looks burnt, or at which somebody felt a
 * shock or a tingle: none of it can be told by a figure, and all is there before anything is
 * measured.
 */
final class WarningSign implements Check {

  private static final List<Observable> SIGNS = List.of(CordWords.PLUG_BURNS, CordWords.PLUG_HOT);

  private static final Source SOURCE =
      Source.commonPractice(
          "on a machine in order nobody feels current, and plug and cord do not get hot and look"
              + " burnt nowhere");

  @Override
  public String id() {
    return "warning-sign";
  }

  @Override
  public String title() {
    return "Was there a sign of current or heat where none may be?";
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (SymptomReport report : job.complaint().symptoms()) {
      if (report.symptom().equals(Symptoms.SHOCK_FELT.id())
          && !job.appliance().components().isEmpty()) {
        findings.add(ofShock(job.appliance(), report.answer()));
      }
    }
    for (Component cord : job.appliance().componentsOf(CordWords.CORD.id())) {
      for (Observable sign : SIGNS) {
        for (Measurement measurement : job.measurements(cord.id(), sign.id())) {
          findings.add(ofCord(measurement, sign, isThere(measurement)));
        }
      }
    }
    return findings;
  }

  /** Told of the cord; of the first part where the job lists no cord. */
  private Finding ofShock(Appliance appliance, Answer answer) {
    List<Component> cords = appliance.componentsOf(CordWords.CORD.id());
    Component told = cords.isEmpty() ? appliance.components().get(0) : cords.get(0);
    boolean there = answer != Answer.NO;
    return finding(
        told.id(),
        Symptoms.SHOCK_FELT.id(),
        "shock or tingle at touchable metal",
        answer.id(),
        QuantityKind.RATIO,
        there,
        there ? List.of(ElectricalCautions.TINGLE) : List.of());
  }

  private Finding ofCord(Measurement measurement, Observable sign, boolean there) {
    List<Caution> cautions = new ArrayList<>(sign.procedure().cautions());
    if (there) {
      cautions.add(0, ElectricalCautions.HOT_PLUG);
    }
    return finding(
        measurement.component(),
        sign.id(),
        sign.title(),
        measurement.readings().get(0).display(),
        sign.kind(),
        there,
        cautions);
  }

  private Finding finding(
      String component,
      String sign,
      String title,
      String shown,
      QuantityKind kind,
      boolean there,
      List<Caution> cautions) {
    Verdict verdict = there ? Verdict.DOES_NOT_CONFORM : Verdict.CONFORMS;
    return new Finding(
        id() + "." + component,
        component,
        sign,
        title,
        shown,
        kind,
        kind.unit(),
        new Judgement(Optional.empty(), there ? 0 : 1, verdict, false),
        new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
        SOURCE,
        cautions,
        there ? "out of use until the cause is found and mended" : "");
  }

  private static boolean isThere(Measurement measurement) {
    for (Reading reading : measurement.readings()) {
      if (reading instanceof Reading.YesNo answer && answer.yes()
          || reading instanceof Reading.Grade grade && grade.rank() > 0) {
        return true;
      }
    }
    return false;
  }
}
