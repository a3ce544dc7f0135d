package kelter.core.diagnosis.simulation;

import java.util.Objects;

/**
 * How much is tried.
 *
 * @param jobs how many machines are drawn and diagnosed with all readings at once
 * @param ledJobs how many of them are also measured reading by reading, which takes far longer; 0
 *     to {@code jobs}
 * @param symptoms for how many symptoms the owner of each is asked before anything is measured, 0
 *     to {@link #MOST_SYMPTOMS}; fewer where the machine has fewer
 * @param seed the same seed gives the same figures, whatever the number of threads
 * @param threads how many threads work side by side
 * @param world by which chances machines and readings are drawn
 */
public record SimulationPlan(
    int jobs, int ledJobs, int symptoms, long seed, int threads, World world) {

  /** The most jobs: what is said of each is kept. */
  public static final int MOST_JOBS = 1_000_000;

  /** The most symptoms: their reports are weighed exactly together. */
  public static final int MOST_SYMPTOMS = 8;

  /** The most threads. */
  public static final int MOST_THREADS = 256;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public SimulationPlan {
    Objects.requireNonNull(world);
    within("jobs", jobs, 1, MOST_JOBS);
    within("led jobs", ledJobs, 0, jobs);
    within("symptoms", symptoms, 0, MOST_SYMPTOMS);
    within("threads", threads, 1, MOST_THREADS);
  }

  private static void within(String what, int given, int least, int most) {
    if (given < least || given > most) {
      throw new IllegalArgumentException(
          given + " " + what + "; " + least + " to " + most + " are allowed");
    }
  }
}
