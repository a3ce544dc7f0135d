package kelter.cli.text;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Vocabulary;

/** What a job is about, in a few lines. */
public final class JobText {

  private JobText() {}

  /**
   * Writes what to mind about the instruments of a job; it stands above all results.
   *
   * @param cautions what to mind, may be empty
   * @param terminal where it will be shown
   * @return the text with an empty line below; empty if there is nothing to mind
   */
  public static String cautions(List<Caution> cautions, Terminal terminal) {
    if (cautions.isEmpty()) {
      return "";
    }
    Layout layout = new Layout(terminal);
    new CautionLines(layout).write("", cautions);
    return layout.blank().toString();
  }

  /**
   * Writes the cautions and one line on the job and its machine, for a result of one screen.
   *
   * @param job the job
   * @param cautions what to mind before anything is done, may be empty
   * @param layout where to
   */
  public static void head(Job job, List<Caution> cautions, Layout layout) {
    new CautionLines(layout).write("", cautions);
    layout.hanging("", job.id() + ": " + machine(job.appliance()));
  }

  private static String machine(Appliance appliance) {
    String name = (appliance.maker() + " " + appliance.model()).strip();
    String age = appliance.age().isPresent() ? ", age " + appliance.age().get().display() : "";
    return appliance.kind() + (name.isEmpty() ? "" : ", " + name) + age;
  }

  /**
   * Writes what a job is about.
   *
   * @param job the job
   * @param vocabulary the words in which it is told
   * @param layout where to
   */
  public static void write(Job job, Vocabulary vocabulary, Layout layout) {
    layout.heading("Job " + job.id() + (job.date().isEmpty() ? "" : ", " + job.date()));
    layout.hanging("  Machine:   ", machine(job.appliance()));
    if (job.market().isPresent()) {
      layout.hanging("  Market:    ", job.market().get().name());
    }
    layout.hanging("  Reason:    ", job.complaint().reason().id());
    if (!job.complaint().said().isBlank()) {
      layout.hanging("  Complaint: ", job.complaint().said());
    }
    if (!job.complaint().displayed().isBlank()) {
      layout.hanging("  Displayed: ", job.complaint().displayed());
    }
    String reported = SymptomsText.reported(job.complaint(), vocabulary);
    if (!reported.isEmpty()) {
      layout.hanging("  Reported:  ", reported);
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
