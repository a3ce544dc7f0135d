package kelter.demo;

import java.util.Map;
import java.util.Optional;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.JsonText;
import kelter.core.job.Measurement;
import kelter.core.session.NextStep;
import kelter.core.workshop.Workshop;

/** Another program, which keeps its jobs in a database: text in, text out, no file in between. */
public final class StoredJobs {

  private final Workshop workshop;

  /**
   * A program on some modules.
   *
   * @param workshop the modules and the rules of the shop
   */
  public StoredJobs(Workshop workshop) {
    this.workshop = workshop;
  }

  /**
   * What comes next.
   *
   * @param row the content of a job file
   * @return the question to the owner, the reading or the work
   * @throws kelter.core.problem.InputException with every mistake of the job
   */
  public String next(String row) {
    NextStep next = NextStep.of(workshop.open(workshop.read(row).job()));
    if (next instanceof NextStep.Ask ask) {
      return ask.symptom().question();
    }
    if (next instanceof NextStep.Measure measure) {
      return measure.question().key();
    }
    return ((NextStep.Mend) next).first().map(work -> work.remedy().title()).orElse("nothing");
  }

  /**
   * The job with a reading more.
   *
   * @param row the content of a job file
   * @param component the id of the component
   * @param observable the word for what was read
   * @param reading the reading as a person writes it
   * @return the content to be kept in its place
   * @throws kelter.core.problem.InputException with every mistake of the job or the reading
   */
  public String entered(String row, String component, String observable, String reading) {
    JobDocument before = workshop.read(row);
    ProgressEdit.Written written =
        new ProgressEdit.Written(
            component, observable, reading, Map.of(), Optional.empty(), Measurement.Stage.AS_FOUND);
    return workshop.read(JsonText.write(ProgressEdit.with(before.content(), written))).text();
  }
}
