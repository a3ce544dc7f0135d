package kelter.core.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.owner.Use;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * All that is known of one call-out.
 *
 * @param id its name within the job book
 * @param date when the call came, {@code yyyy-mm-dd}, may be empty
 * @param appliance the machine
 * @param complaint what the owner says and the machine displays
 * @param instruments what readings were taken with, each id once
 * @param measurements what was read, in the order of the job
 * @param prices what work, parts and a new machine cost, if stated
 * @param use how the machine is used
 * @param market where it stands, if stated
 * @param records by the id of a row of the lock-out table the word of a competent person that
 *     releases it: who, when and what
 * @param progress what was done, and how it ended
 */
public record Job(
    String id,
    String date,
    Appliance appliance,
    Complaint complaint,
    List<Instrument> instruments,
    List<Measurement> measurements,
    Optional<Prices> prices,
    Use use,
    Optional<Market> market,
    Map<String, String> records,
    Progress progress) {

  /**
   * A job in which nothing was done yet, without the word of anybody else.
   *
   * @param id its name within the job book
   * @param date when the call came, {@code yyyy-mm-dd}, may be empty
   * @param appliance the machine
   * @param complaint what the owner says and the machine displays
   * @param instruments what readings were taken with, each id once
   * @param measurements what was read, in the order of the job
   * @param prices what work, parts and a new machine cost, if stated
   * @param use how the machine is used
   * @param market where it stands, if stated
   * @throws IllegalArgumentException if the id is not one
   */
  public Job(
      String id,
      String date,
      Appliance appliance,
      Complaint complaint,
      List<Instrument> instruments,
      List<Measurement> measurements,
      Optional<Prices> prices,
      Use use,
      Optional<Market> market) {
    this(
        id,
        date,
        appliance,
        complaint,
        instruments,
        measurements,
        prices,
        use,
        market,
        Map.of(),
        Progress.NONE);
  }

  /**
   * A job that does not tell the market.
   *
   * @param id its name within the job book
   * @param date when the call came, {@code yyyy-mm-dd}, may be empty
   * @param appliance the machine
   * @param complaint what the owner says and the machine displays
   * @param instruments what readings were taken with, each id once
   * @param measurements what was read, in the order of the job
   * @param prices what work, parts and a new machine cost, if stated
   * @param use how the machine is used
   * @throws IllegalArgumentException if the id is not one
   */
  public Job(
      String id,
      String date,
      Appliance appliance,
      Complaint complaint,
      List<Instrument> instruments,
      List<Measurement> measurements,
      Optional<Prices> prices,
      Use use) {
    this(id, date, appliance, complaint, instruments, measurements, prices, use, Optional.empty());
  }

  /**
   * A job that tells nothing of the use of the machine.
   *
   * @param id its name within the job book
   * @param date when the call came, {@code yyyy-mm-dd}, may be empty
   * @param appliance the machine
   * @param complaint what the owner says and the machine displays
   * @param instruments what readings were taken with, each id once
   * @param measurements what was read, in the order of the job
   * @param prices what work, parts and a new machine cost, if stated
   * @throws IllegalArgumentException if the id is not one
   */
  public Job(
      String id,
      String date,
      Appliance appliance,
      Complaint complaint,
      List<Instrument> instruments,
      List<Measurement> measurements,
      Optional<Prices> prices) {
    this(id, date, appliance, complaint, instruments, measurements, prices, Use.UNKNOWN);
  }

  /**
   * Checks that nothing is null. Whether its parts fit each other and the words of the modules is
   * told by the rules of a job, all mistakes at once.
   *
   * @throws IllegalArgumentException if the id is not one
   */
  public Job {
    Ids.require(Required.value(id, "id of a job"));
    Required.value(date, "date of a job");
    Required.value(appliance, "appliance of a job");
    Required.value(complaint, "complaint of a job");
    instruments = Required.list(instruments, "instruments of a job");
    measurements = Required.list(measurements, "measurements of a job");
    Required.optional(prices, "prices of a job");
    Required.value(use, "use of a job");
    Required.optional(market, "market of a job");
    records = Required.map(records, "records of a job");
    Required.value(progress, "progress of a job");
  }

  /**
   * The same job at other prices.
   *
   * @param other the prices
   * @return the job
   */
  public Job at(Prices other) {
    return new Job(
        id,
        date,
        appliance,
        complaint,
        instruments,
        measurements,
        Optional.of(other),
        use,
        market,
        records,
        progress);
  }

  /**
   * The same job in another market.
   *
   * @param other where the machine stands
   * @return the job
   */
  public Job in(Market other) {
    return new Job(
        id,
        date,
        appliance,
        complaint,
        instruments,
        measurements,
        prices,
        use,
        Optional.of(other),
        records,
        progress);
  }

  /**
   * An instrument by its id.
   *
   * @param instrumentId the id within this job
   * @return the instrument, or empty if there is none
   */
  public Optional<Instrument> instrument(String instrumentId) {
    for (Instrument instrument : instruments) {
      if (instrument.id().equals(instrumentId)) {
        return Optional.of(instrument);
      }
    }
    return Optional.empty();
  }

  /**
   * What was read of an observable, in the order of the job.
   *
   * @param component the id of the component
   * @param observable the word for the observable
   * @return the measurements, may be empty
   */
  public List<Measurement> measurements(String component, String observable) {
    List<Measurement> found = new ArrayList<>();
    for (Measurement measurement : measurements) {
      if (measurement.component().equals(component)
          && measurement.observable().equals(observable)) {
        found.add(measurement);
      }
    }
    return List.copyOf(found);
  }

  /**
   * What was read after the work and counts: of the same thing under like conditions the last. What
   * was read before it stays in the job.
   *
   * @return the measurements, in the order of the job
   * @see Measurement#supersedes(Measurement)
   */
  public List<Measurement> asLeft() {
    List<Measurement> left = new ArrayList<>();
    for (Measurement each : measurements) {
      if (each.stage() == Measurement.Stage.AS_LEFT) {
        left.removeIf(each::supersedes);
        left.add(each);
      }
    }
    return List.copyOf(left);
  }

  /**
   * The same job on a machine that is told in another way.
   *
   * @param machine the machine
   * @return the job
   */
  public Job with(Appliance machine) {
    return new Job(
        id,
        date,
        machine,
        complaint,
        instruments,
        measurements,
        prices,
        use,
        market,
        records,
        progress);
  }

  /**
   * The same job with other reports and readings.
   *
   * @param said what the owner says and the machine displays
   * @param read what was read
   * @return the job
   */
  public Job with(Complaint said, List<Measurement> read) {
    return new Job(
        id, date, appliance, said, instruments, read, prices, use, market, records, progress);
  }

  /**
   * The job with more than ten measurements of the same thing, under the same conditions and with
   * the same instrument, taken as one measurement with all their readings.
   *
   * @return this job where nothing was measured that often
   */
  public Job pooled() {
    List<Measurement> pooled = RepeatedMeasurements.pooled(measurements);
    return pooled.size() == measurements.size() ? this : with(complaint, pooled);
  }
}
