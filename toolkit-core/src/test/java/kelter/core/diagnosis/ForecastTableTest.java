package kelter.core.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
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
    Observable trips = Observable.yesNo("trips", "it trips", LinearModel.PROCEDURE);
    Measurement no =
        new Measurement(
            "part",
            "trips",
            List.of(new Reading.YesNo(false)),
            Conditions.NONE,
            Optional.empty(),
            "");
    Job job = LinearModel.job("trips", List.of(no));
    ForecastTable table =
        new ForecastTable(
            (severity, value, spread) -> {
              value[0] = severity[0] > 0.3715 ? 0.99 : 0.001;
              spread[0] = 1;
            },
            1,
            0,
            List.of(Likelihood.of(job, no, trips, 0.01)));
    for (int i = 0; i <= 100_000; i++) {
      double logLikelihood = table.logLikelihood(i / 100_000.0);
      assertTrue(logLikelihood <= 0, i + ": " + logLikelihood);
    }
  }
}
