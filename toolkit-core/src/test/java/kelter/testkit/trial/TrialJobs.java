package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/** Jobs with readings of all that a module can observe on a machine. */
final class TrialJobs {

  private TrialJobs() {}

  /**
   * Jobs with one reading each: the ends and the middle of its span, over range, above and below;
   * yes and no; each grade. A reading is taken as the questions of the models ask for it.
   */
  static List<Job> each(CalculationModule module, Appliance appliance) {
    List<Job> jobs = new ArrayList<>();
    for (Question asked : asked(module, appliance)) {
      for (Reading reading : readings(asked.observable())) {
        jobs.add(job(appliance, List.of(measurement(asked, reading))));
      }
    }
    return jobs;
  }

  /** One job with a reading in the middle of every span. */
  static Job together(CalculationModule module, Appliance appliance) {
    return job(
        appliance,
        asked(module, appliance).stream()
            .map(asked -> measurement(asked, readings(asked.observable()).get(0)))
            .toList());
  }

  /** One job with the reading that a forecast of a question would be. */
  static Job forecast(Appliance appliance, Question asked, double value) {
    return job(appliance, List.of(measurement(asked, forecast(asked.observable(), value))));
  }

  private static Reading forecast(Observable observable, double value) {
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(value >= 0.5);
      case GRADE -> {
        int words = observable.grades().size();
        int rank = (int) Math.min(words - 1, Math.floor(value * words));
        yield new Reading.Grade(observable.grades().get(rank), rank);
      }
      case QUANTITY -> new Reading.Value(quantity(observable, value), 0);
    };
  }

  private static Set<Question> asked(CalculationModule module, Appliance appliance) {
    Set<Question> asked = new LinkedHashSet<>();
    for (FaultModel model : module.parts().faultModels(appliance)) {
      asked.addAll(model.questions());
    }
    for (Component component : appliance.components()) {
      for (ComponentKind kind : module.parts().kinds()) {
        if (kind.id().equals(component.kind())) {
          kind.observables()
              .forEach(each -> asked.add(new Question(component.id(), each, Conditions.NONE)));
        }
      }
    }
    return asked;
  }

  private static List<Reading> readings(Observable observable) {
    return switch (observable.type()) {
      case YES_NO -> List.of(new Reading.YesNo(false), new Reading.YesNo(true));
      case GRADE -> {
        List<Reading> grades = new ArrayList<>();
        for (int rank = 0; rank < observable.grades().size(); rank++) {
          grades.add(new Reading.Grade(observable.grades().get(rank), rank));
        }
        yield grades;
      }
      case QUANTITY -> {
        double low = observable.span().low();
        double high = observable.span().high();
        Quantity middle = quantity(observable, middle(observable));
        yield List.of(
            new Reading.Value(middle, 0),
            new Reading.Value(quantity(observable, low), 0),
            new Reading.Value(quantity(observable, high), 0),
            new Reading.Below(middle),
            new Reading.Above(middle),
            new Reading.OverRange());
      }
    };
  }

  private static double middle(Observable observable) {
    double low = observable.span().low();
    double high = observable.span().high();
    return observable.logarithmic() ? Math.sqrt(low) * Math.sqrt(high) : low / 2 + high / 2;
  }

  private static Quantity quantity(Observable observable, double si) {
    return Quantity.ofSi(si, 0, observable.kind());
  }

  private static Measurement measurement(Question asked, Reading reading) {
    return new Measurement(
        asked.component(),
        asked.observable().id(),
        List.of(reading),
        asked.conditions(),
        Optional.empty(),
        "");
  }

  private static Job job(Appliance appliance, List<Measurement> measurements) {
    return new Job(
        "trial", "", appliance, Complaint.NONE, List.of(), measurements, Optional.empty());
  }
}
