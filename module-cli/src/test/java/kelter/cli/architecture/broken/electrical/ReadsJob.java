package kelter.cli.architecture.broken.electrical;

import kelter.core.job.Job;
import kelter.core.module.Calculation;

final class ReadsJob {
  Calculation calculation() {
    return null;
  }

  int readings(Job job) {
    return job.measurements().size();
  }
}
