package kelter.core.file;

import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;

/**
 * A job together with the file that it was read from, so that it can be written back without loss:
 * order, spelling of numbers, and members of somebody's own (x-).
 *
 * @param job the job
 * @param content the content of the file
 */
public record JobDocument(Job job, Json.Obj content) {

  /**
   * The text of the file.
   *
   * @return JSON, two blanks a level
   */
  public String text() {
    return JsonText.write(content);
  }
}
