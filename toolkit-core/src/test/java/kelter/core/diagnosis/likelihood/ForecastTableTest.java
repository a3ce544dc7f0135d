package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.Test;

class ForecastTableTest {

  /** A device that trips from a severity on: its chance jumps, and must stay a chance. */
  @Test
  void aJumpDoesNotSwingOutOfTheChances() {
    Observable trips = Observable.named("trips", "it trips").by(LinearModel.PROCEDURE);
    Measurement no =
        new Measurement(
            "part",
            "trips",
            List.of(new Reading.YesNo(false)),
            Conditions.NONE,
            Optional.empty(),
            "");
    Job job = LinearModel.job("trips", List.of(no));
    FaultModel model =
        new FaultModel() {
          @Override
          public String id() {
            return "trips";
          }

          @Override
          public List<Fault> faults() {
            return List.of(LinearModel.fault("leaks", 0.1));
          }

          @Override
          public List<Question> questions() {
            return List.of(new Question("part", trips, Conditions.NONE));
          }

          @Override
          public Forecaster forecaster(List<Question> questions) {
            return (severity, value, spread) -> {
              value[0] = severity[0] > 0.3715 ? 0.99 : 0.001;
              spread[0] = 1;
            };
          }
        };
    Item item =
        new Item(
            model.questions().get(0), "no", Likelihood.of(job, no, trips, 0.01), Optional.empty());
    ForecastTable table = new ForecastTable(new Readings(model, List.of(item)), 0);
    for (int i = 0; i <= 100_000; i++) {
      double logLikelihood = table.logLikelihood(i / 100_000.0);
      assertTrue(logLikelihood <= 0, i + ": " + logLikelihood);
    }
  }
}
