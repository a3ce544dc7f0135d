package kelter.cli.plugin;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Observable;

/**
 * A fault model of a plugin. Once it failed, the diagnosis is to be made without it.
 *
 * @param failed takes its id when it fails
 */
record GuardedFaultModel(
    Guard guard,
    FaultModel model,
    Set<String> failed,
    String id,
    List<Fault> faults,
    List<Question> questions,
    List<SharedQuantity> shared)
    implements FaultModel {

  static FaultModel of(Guard guard, FaultModel model, Set<String> failed) {
    return new GuardedFaultModel(
        guard,
        model,
        failed,
        Required.value(model.id(), "the id of a fault model"),
        Required.list(model.faults(), "the list of faults"),
        Required.list(model.questions(), "the list of questions"),
        Required.list(model.shared(), "the list of shared quantities"));
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return asked(() -> model.mayMeet(one, other));
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    Forecaster forecaster = asked(() -> model.forecaster(asked));
    return (severity, value, spread) ->
        asked(() -> forecast(forecaster, asked, severity, value, spread));
  }

  private Boolean forecast(
      Forecaster forecaster,
      List<Question> asked,
      double[] severity,
      double[] value,
      double[] spread) {
    forecaster.forecast(severity, value, spread);
    for (int i = 0; i < asked.size(); i++) {
      boolean chance = asked.get(i).observable().type() == Observable.Type.YES_NO;
      boolean sound =
          Double.isFinite(value[i])
              && (chance ? value[i] >= 0 && value[i] <= 1 : spread[i] > 0 && spread[i] < 1 / 0d);
      if (!sound) {
        throw new Guard.Failed(
            call(),
            "forecasts %s with a spread of %s for %s"
                .formatted(value[i], spread[i], asked.get(i).key()),
            null);
      }
    }
    return true;
  }

  private <T> T asked(Supplier<T> answer) {
    try {
      return guard.askOfJob(call(), answer);
    } catch (Guard.Failed wrong) {
      failed.add(id);
      throw guard.fault(wrong, true);
    }
  }

  private String call() {
    return "fault model '" + id + "'";
  }
}
