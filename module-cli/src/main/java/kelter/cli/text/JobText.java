package kelter.cli.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kelter.cli.terminal.Terminal;
import kelter.core.check.Finding;
import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Case;

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
   * What to mind before anything is done.
   *
   * @param machine the job with its findings
   * @return the cautions of the job, and those of findings that say to leave the machine unplugged,
   *     each once
   */
  public static List<Caution> cautions(Case machine) {
    List<Caution> cautions = new ArrayList<>(machine.cautions());
    Set<String> told = new HashSet<>();
    for (Finding finding : machine.findings()) {
      for (Caution caution : finding.cautions()) {
        if (caution.keepsUnplugged() && told.add(caution.text())) {
          cautions.add(caution);
        }
      }
    }
    return cautions;
  }

  /**
   * Writes the cautions and one line on the job and its machine, for a result of one screen.
   *
   * @param job the job
   * @param cautions what to mind before anything is done, may be empty
   * @param layout where to
   */
  public static void head(Job job, List<Caution> cautions, Layout layout) {
    List<Caution> worstFirst = new ArrayList<>(cautions);
    worstFirst.sort((one, other) -> Boolean.compare(other.keepsUnplugged(), one.keepsUnplugged()));
    new CautionLines(layout).write("", worstFirst);
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
