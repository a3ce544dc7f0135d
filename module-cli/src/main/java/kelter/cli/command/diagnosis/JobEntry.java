package kelter.cli.command.diagnosis;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import kelter.cli.command.Invocation;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.shop.ShopDocument;
import kelter.core.job.Job;
import kelter.core.log.measurement.LogReading;
import kelter.core.problem.InputException;
import kelter.core.workshop.Workshop;

/**
 * Readings of a log that go into a job. They are made for the job that stands in the file when it
 * is written, since others may write into it while a long log is read.
 */
final class JobEntry {

  private final Invocation invocation;
  private final Optional<ShopDocument> shop;
  private final String log;
  private final BiFunction<Job, Workshop, List<LogReading>> reader;
  private List<LogReading> readings = List.of();
  private int more;

  /**
   * Readings to enter.
   *
   * @param invocation the call
   * @param shop the shop profile, if there is one
   * @param log the name of the log, for the notes
   * @param reader makes the readings for a job
   */
  JobEntry(
      Invocation invocation,
      Optional<ShopDocument> shop,
      String log,
      BiFunction<Job, Workshop, List<LogReading>> reader) {
    this.invocation = invocation;
    this.shop = shop;
    this.log = log;
    this.reader = reader;
  }

  /**
   * Writes the readings behind those of a job, after the whole was read back; tells what was done.
   */
  String write(Path into) {
    JobFile.change(into, content -> entered(into, content));
    if (more == 0) {
      return "Nothing was written: the job %s has these readings already.".formatted(into);
    }
    return "Written into the job %s: %s %s."
        .formatted(into, more, more == 1 ? "reading" : "readings");
  }

  /** What the log shows of the job. */
  List<LogReading> readings() {
    return readings;
  }

  private Json.Obj entered(Path into, Json content) {
    JobDocument job = invocation.job(into, content);
    readings = reader.apply(job.job(), invocation.workshop());
    if (readings.isEmpty()) {
      throw new InputException(
          "--into " + into,
          "no column of the log is mapped to a component of the job",
          "write for instance --map 'Power=heater.power'");
    }
    JobDocument entered = invocation.workshop().read(job.with(readings, log, shop));
    more = entered.job().measurements().size() - job.job().measurements().size();
    return more == 0 ? job.content() : entered.content();
  }
}
