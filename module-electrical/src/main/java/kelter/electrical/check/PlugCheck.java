package kelter.electrical.check;

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
import kelter.electrical.caution.Cautions;
import kelter.electrical.component.SupplyKinds;

/**
 * Takes a machine out of use whose plug or cord was hot or looks burnt: neither can be told by a
 * figure, and both are there before anything is measured.
 */
final class PlugCheck implements Check {

  private static final List<Observable> SEEN =
      List.of(SupplyKinds.PLUG_BURNS, SupplyKinds.PLUG_HOT);

  private static final Source SOURCE =
      Source.commonPractice("plug and cord in order do not get hot and look burnt nowhere");

  @Override
  public String id() {
    return "plug-and-cord";
  }

  @Override
  public String title() {
    return "Were plug or cord too hot?";
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component cord : job.appliance().componentsOf(SupplyKinds.CORD.id())) {
      for (Observable observable : SEEN) {
        for (Measurement measurement : job.measurements(cord.id(), observable.id())) {
          findings.add(finding(measurement, observable));
        }
      }
    }
    return findings;
  }

  private Finding finding(Measurement measurement, Observable observable) {
    boolean hot = isHot(measurement);
    List<Caution> cautions = new ArrayList<>(observable.procedure().cautions());
    if (hot) {
      cautions.add(0, Cautions.HOT_PLUG);
    }
    return new Finding(
        id() + "." + measurement.component(),
        measurement.component(),
        observable.id(),
        observable.title(),
        measurement.readings().get(0).display(),
        observable.kind(),
        observable.kind().unit(),
        new Judgement(
            Optional.empty(),
            hot ? 0 : 1,
            hot ? Verdict.DOES_NOT_CONFORM : Verdict.CONFORMS,
            false),
        Limits.atMost(0),
        SOURCE,
        cautions,
        hot ? "plug, cord and outlet stay out of use until they are mended" : "");
  }

  private static boolean isHot(Measurement measurement) {
    for (Reading reading : measurement.readings()) {
      if (reading instanceof Reading.YesNo answer ? answer.yes() : isDark(reading)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isDark(Reading reading) {
    return reading instanceof Reading.Grade grade && grade.rank() > 0;
  }
}
