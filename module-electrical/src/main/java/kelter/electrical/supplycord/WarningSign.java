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
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.CordWords;

/**
 * Takes a machine out of use whose plug or cord was hot or looks burnt, or at which somebody felt a
 * tingle: none of it can be told by a figure, and all is there before anything is measured.
 */
final class WarningSign implements Check {

  private static final List<Observable> SIGNS =
      List.of(CordWords.TINGLE, CordWords.PLUG_BURNS, CordWords.PLUG_HOT);

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
    for (Component cord : job.appliance().componentsOf(CordWords.CORD.id())) {
      for (Observable sign : SIGNS) {
        for (Measurement measurement : job.measurements(cord.id(), sign.id())) {
          findings.add(finding(measurement, sign, isThere(measurement)));
        }
      }
    }
    return findings;
  }

  private Finding finding(Measurement measurement, Observable sign, boolean there) {
    List<Caution> cautions = new ArrayList<>(sign.procedure().cautions());
    if (there) {
      cautions.add(
          0, sign == CordWords.TINGLE ? ElectricalCautions.TINGLE : ElectricalCautions.HOT_PLUG);
    }
    Verdict verdict = there ? Verdict.DOES_NOT_CONFORM : Verdict.CONFORMS;
    return new Finding(
        id() + "." + measurement.component(),
        measurement.component(),
        sign.id(),
        sign.title(),
        measurement.readings().get(0).display(),
        sign.kind(),
        sign.kind().unit(),
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
