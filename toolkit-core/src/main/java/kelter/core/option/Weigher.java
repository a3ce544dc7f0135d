package kelter.core.option;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.vocabulary.Statement;

/**
 * Weighs the options of a diagnosed job. It must be free of memory and safe for several threads.
 */
public interface Weigher {

  /**
   * Weighs the options.
   *
   * @param job the job, with its prices
   * @param diagnosis what is wrong with the machine
   * @param seed the seed of all draws: the same seed gives the same figures
   * @return the options, weighed
   * @throws kelter.core.problem.InputException if the job lacks what the weighing needs
   */
  Weighing weigh(Job job, Diagnosis diagnosis, long seed);

  /**
   * Weighs the options and tells why they come out as they do. It must give the options that {@link
   * #weigh} gives, and takes longer.
   *
   * @param job the job, with its prices
   * @param diagnosis what is wrong with the machine
   * @param seed the seed of all draws: the same seed gives the same figures
   * @return the options, and the reasons if the weigher gives any
   * @throws kelter.core.problem.InputException if the job lacks what the weighing needs
   */
  default Explained weighAndExplain(Job job, Diagnosis diagnosis, long seed) {
    return new Explained(weigh(job, diagnosis, seed), Optional.empty());
  }

  /**
   * Tells what keeping the machine and replacing it emit; only where somebody asks.
   *
   * @param job the job, with its prices and use
   * @param diagnosis what is wrong with the machine
   * @return the balance, or empty if the weigher makes none
   * @throws kelter.core.problem.InputException if the job lacks what the balance needs
   */
  default Optional<CarbonBalance> carbon(Job job, Diagnosis diagnosis) {
    return Optional.empty();
  }

  /**
   * What it may tell as assumptions, as figures that move the answer and as rules of thumb, so that
   * programs know the ids beforehand.
   *
   * @return each id once; a text has {@code %s} for what depends on the job
   */
  default List<Statement> statements() {
    return List.of();
  }

  /**
   * The same weigher with lives that somebody has learned.
   *
   * @param lives the learned lives
   * @return a weigher that counts them in; this one if it cannot
   */
  default Weigher learning(LearnedLives lives) {
    return this;
  }
}
