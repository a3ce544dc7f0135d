package kelter.electrical;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;

/** What the models of this module forecast for a made-up machine. */
public final class Forecasts {

  private Forecasts() {}

  /** The forecast of a question such as {@code lamp.resistance} without a fault. */
  public static double of(Appliance machine, String question) {
    return of(machine, question, 1);
  }

  /** The same with faults such as {@code lamp.dead}, all at one severity. */
  public static double of(Appliance machine, String question, double severity, String... faults) {
    for (FaultModel model : new ElectricalModule().parts().faultModels(machine)) {
      List<String> keys = model.faults().stream().map(Fault::key).toList();
      List<Question> questions = model.questions();
      for (int i = 0; i < questions.size(); i++) {
        Question asked = questions.get(i);
        if ((asked.component() + "." + asked.observable().id()).equals(question)) {
          double[] state = new double[keys.size() + model.shared().size()];
          for (String fault : faults) {
            int place = keys.indexOf(fault);
            if (place < 0) {
              throw new AssertionError(model.id() + " knows no " + fault);
            }
            state[place] = severity;
          }
          double[] value = new double[questions.size()];
          model.forecaster(questions).forecast(state, value, new double[value.length]);
          return value[i];
        }
      }
    }
    throw new AssertionError("no forecast of " + question);
  }
}
