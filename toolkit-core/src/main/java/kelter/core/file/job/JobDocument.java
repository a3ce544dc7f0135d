package kelter.core.file.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.shop.ShopDocument;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.log.measurement.LogReading;
import kelter.core.shop.PriceList;

/**
 * A job together with the file that it was read from, so that it can be written back without loss:
 * order, spelling of numbers, and members of somebody's own (x-).
 *
 * @param job the job, its machine and prices filled by what is known beside the file
 * @param stated the machine as the file states it
 * @param content the content of the file
 * @param notes how what the file says was taken where that needs telling, a sentence each: what an
 *     older version of the format says, codes on the display, what stood in from elsewhere
 */
public record JobDocument(Job job, Appliance stated, Json.Obj content, List<String> notes) {

  /** Copies the notes. */
  public JobDocument {
    notes = List.copyOf(notes);
  }

  /**
   * The same with prices of a shop where the job states none.
   *
   * @param prices the prices of the shop
   * @return the document; its content stays as it is
   */
  public JobDocument at(PriceList prices) {
    PriceList.Priced priced = prices.standIn(job);
    return new JobDocument(priced.job(), stated, content, notes).noting(priced.note());
  }

  /**
   * The same with what else needs telling of how it was read.
   *
   * @param note a sentence, if there is one
   * @return the document; its content stays as it is
   */
  public JobDocument noting(Optional<String> note) {
    List<String> more = new ArrayList<>(notes);
    note.ifPresent(more::add);
    return new JobDocument(job, stated, content, more);
  }

  /**
   * The same for a machine in a market that the job does not state.
   *
   * @param market where it stands
   * @return the document; its content stays as it is
   */
  public JobDocument in(Market market) {
    return new JobDocument(job.in(market), stated, content, notes);
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
