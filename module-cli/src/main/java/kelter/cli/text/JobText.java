package kelter.cli.text;

import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.job.Job;

/** What a job is about, in a few lines. */
final class JobText {

  private JobText() {}

  static void write(Job job, Layout layout) {
    Appliance appliance = job.appliance();
    String name = (appliance.maker() + " " + appliance.model()).strip();
    String age = appliance.age().map(a -> ", age " + a.display()).orElse("");
    layout.heading("Job " + job.id() + (job.date().isEmpty() ? "" : ", " + job.date()));
    layout.hanging("  Machine:   ", appliance.kind() + (name.isEmpty() ? "" : ", " + name) + age);
    if (!job.complaint().said().isBlank()) {
      layout.hanging("  Complaint: ", job.complaint().said());
    }
    if (!job.complaint().displayed().isBlank()) {
      layout.hanging("  Displayed: ", job.complaint().displayed());
    }
    for (Instrument instrument : job.instruments()) {
      if (instrument.typical().isPresent()) {
        layout.hanging(
            "  Library:   ",
            instrument.id()
                + ", not described in the job; "
                + instrument.typical().get().display());
      }
    }
  }
}
