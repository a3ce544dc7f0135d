package kelter.core.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.owner.Use;
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
 */
public record Job(
    String id,
    String date,
    Appliance appliance,
    Complaint complaint,
    List<Instrument> instruments,
    List<Measurement> measurements,
    Optional<Prices> prices,
    Use use) {

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
   * @throws IllegalArgumentException if a measurement speaks of a component or an instrument that
   *     the job does not have, or an instrument occurs twice
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
   * Checks that measurements speak of components and instruments that the job has.
   *
   * @throws IllegalArgumentException if one does not, or an instrument occurs twice
   */
  public Job {
    Ids.require(id);
    Objects.requireNonNull(date);
    Objects.requireNonNull(complaint);
    Objects.requireNonNull(prices);
    Objects.requireNonNull(use);
    instruments = List.copyOf(instruments);
    measurements = List.copyOf(measurements);
    Set<String> ids = new HashSet<>();
    for (Instrument instrument : instruments) {
      if (!ids.add(instrument.id())) {
        throw new IllegalArgumentException("instrument '" + instrument.id() + "' occurs twice");
      }
    }
    for (Measurement measurement : measurements) {
      if (appliance.component(measurement.component()).isEmpty()) {
        throw new IllegalArgumentException(
            "there is no component '" + measurement.component() + "'");
      }
      if (measurement.instrument().isPresent() && !ids.contains(measurement.instrument().get())) {
        throw new IllegalArgumentException(
            "there is no instrument '" + measurement.instrument().get() + "'");
      }
    }
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
}
