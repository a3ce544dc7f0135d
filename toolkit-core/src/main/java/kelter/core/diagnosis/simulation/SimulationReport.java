package kelter.core.diagnosis.simulation;

import java.util.List;
import java.util.Objects;

/**
 * How good the diagnosis was on machines that were drawn.
 *
 * @param jobs how many machines were diagnosed
 * @param asked the ids of the symptoms for which the owner of each was asked, the commonest first
 * @param readings how many readings each had
 * @param unmeasured how good the diagnosis was by the answers alone, before any reading
 * @param measured how good it was by answers and readings
 * @param confusions which state was then taken for which, the commonest first
 * @param walks how soon it was sure, by the order of measuring; empty if nothing was led
 */
public record SimulationReport(
    int jobs,
    List<String> asked,
    int readings,
    Quality unmeasured,
    Quality measured,
    List<Confusion> confusions,
    List<Walks> walks) {

  /** The diagnosis counts as sure from this probability of its likeliest state. */
  public static final double SURE = 0.9;

  /** A fault counts as clear from this severity. */
  public static final double CLEAR = 0.3;

  public SimulationReport {
    asked = List.copyOf(asked);
    Objects.requireNonNull(unmeasured);
    Objects.requireNonNull(measured);
    confusions = List.copyOf(confusions);
    walks = List.copyOf(walks);
  }

  /**
   * How good the diagnosis was, with as much as was known of each machine.
   *
   * @param all how often it was right, over all machines
   * @param clearSingles the same over those with one fault of severity {@link #CLEAR} or more and
   *     nothing else
   * @param sureness how often it was sure, and wrong
   * @param states the probability of the likeliest state, held against how often that was the truth
   * @param faults the probability of each fault of each machine, held against how often it was
   *     there
   */
  public record Quality(
      Scores all,
      Scores clearSingles,
      Sureness sureness,
      CalibrationTable states,
      CalibrationTable faults) {

    public Quality {
      Objects.requireNonNull(all);
      Objects.requireNonNull(clearSingles);
      Objects.requireNonNull(sureness);
      Objects.requireNonNull(states);
      Objects.requireNonNull(faults);
    }
  }

  /**
   * How often the diagnosis was right. Every figure is NaN where there was no machine to count.
   *
   * @param jobs how many machines were counted
   * @param first the share in which the likeliest state was the truth: every fault, and no other
   * @param amongThree the share in which the truth was among the three likeliest states
   * @param faultFirst of the machines with a fault, the share in which the likeliest fault is there
   * @param faultAmongThree of those, the share in which one of the three likeliest faults is there
   * @param brier the Brier score of the probability of the likeliest state
   * @param logLoss its log loss, in nats
   * @param faultBrier the Brier score of the probabilities of all faults
   * @param faultLogLoss their log loss, in nats
   */
  public record Scores(
      int jobs,
      double first,
      double amongThree,
      double faultFirst,
      double faultAmongThree,
      double brier,
      double logLoss,
      double faultBrier,
      double faultLogLoss) {}

  /**
   * How often the diagnosis was sure of its likeliest state (probability {@link #SURE} or more),
   * and wrong.
   *
   * @param sure on how many machines it was sure
   * @param wrong on how many of these the likeliest state was not the truth
   * @param wrongExpected on how many it should have been, by the probabilities that it gave
   * @param absentFault on how many of these it named a fault that is not there
   */
  public record Sureness(int sure, int wrong, double wrongExpected, int absentFault) {}

  /**
   * A state that was taken for another.
   *
   * @param truth the faults of the machine, or what else it was
   * @param said the likeliest state
   * @param jobs on how many machines
   * @param ofJobs of how many in that state
   */
  public record Confusion(String truth, String said, int jobs, int ofJobs) {}

  /**
   * How soon the diagnosis was sure, with one order of measuring. A machine of which it was never
   * sure counts with all its readings.
   *
   * @param order the order
   * @param jobs how many machines were measured
   * @param reached on how many the diagnosis became sure
   * @param right on how many of these it was right
   * @param readings the mean number of measurements
   * @param minutes the mean time that they took, in min
   * @param reachedByAll on how many it became sure in every order
   * @param readingsIfReached the mean number of measurements on these; NaN if there are none
   * @param minutesIfReached the mean time on these, in min; NaN if there are none
   */
  public record Walks(
      MeasuringOrder order,
      int jobs,
      int reached,
      int right,
      double readings,
      double minutes,
      int reachedByAll,
      double readingsIfReached,
      double minutesIfReached) {}
}
