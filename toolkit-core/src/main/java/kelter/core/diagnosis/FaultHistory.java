package kelter.core.diagnosis;

import java.util.Map;

/**
 * What a shop has found before: confirmed causes only, each job counted once.
 *
 * <p>The chances of the catalogue count as some jobs of their own, so that they give way as the
 * shop's jobs grow in number: p = (n + s q) / (N + s), the mean of a Dirichlet distribution with
 * the prior s q after n of N jobs (Gelman and others, Bayesian Data Analysis, 3rd edition, 3.4,
 * from memory).
 *
 * @param jobs how many jobs were closed on machines with such a component, by the kind of component
 * @param confirmed how many of them had a fault, by {@code kind.fault}; old jobs may count for less
 *     than one
 */
public record FaultHistory(Map<String, Double> jobs, Map<String, Double> confirmed) {

  /** A shop that has kept no book. */
  public static final FaultHistory NONE = new FaultHistory(Map.of(), Map.of());

  /** As how many jobs the catalogue counts; from memory. */
  public static final double CATALOGUE_JOBS = 12;

  public FaultHistory {
    jobs = Map.copyOf(jobs);
    confirmed = Map.copyOf(confirmed);
  }

  /**
   * How much the shop's own jobs count for a component.
   *
   * @param kind the kind of the component
   * @return from 0 (only the catalogue counts) to below 1
   */
  public double weight(String kind) {
    double own = jobs.getOrDefault(kind, 0.0);
    return own / (own + CATALOGUE_JOBS);
  }

  /**
   * The chance of a fault by catalogue and shop together.
   *
   * @param kind the kind of its component
   * @param fault the id of the fault
   * @param catalogue its chance by the catalogue, from 0 to 1
   * @return the chance, from 0 to 1
   */
  public double probability(String kind, String fault, double catalogue) {
    double own = jobs.getOrDefault(kind, 0.0);
    double found = confirmed.getOrDefault(kind + "." + fault, 0.0);
    return (found + CATALOGUE_JOBS * catalogue) / (own + CATALOGUE_JOBS);
  }
}
