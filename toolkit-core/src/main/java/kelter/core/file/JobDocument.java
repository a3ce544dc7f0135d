package kelter.core.file;

import java.util.List;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;
import kelter.core.log.measurement.LogReading;

/**
 * A job together with the file that it was read from, so that it can be written back without loss:
 * order, spelling of numbers, and members of somebody's own (x-).
 *
 * @param job the job
 * @param content the content of the file
 * @param notes how what an older version of the format says was taken, a sentence each; none for a
 *     file of the present version
 */
public record JobDocument(Job job, Json.Obj content, List<String> notes) {

  /** Copies the notes. */
  public JobDocument {
    notes = List.copyOf(notes);
  }

  /**
   * The text of the file.
   *
   * @return JSON, two blanks a level
   */
  public String text() {
    return JsonText.write(content);
  }

  /**
   * The content of the file with readings of a log behind the measurements it has; nothing else
   * changes. An instrument of the shop that they name is described in the job, so that the job
   * stands by itself.
   *
   * @param readings the readings
   * @param log the name of the log, for the notes
   * @param shop the shop profile, if there is one
   * @return the content with the readings, to be read by {@link JobFile#document}; the same content
   *     if it has them already
   */
  public Json.Obj with(List<LogReading> readings, String log, Optional<ShopDocument> shop) {
    return MeasurementWriter.with(content, shop.map(ShopDocument::content), readings, log);
  }
}
