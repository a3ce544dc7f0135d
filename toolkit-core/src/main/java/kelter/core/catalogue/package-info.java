/**
 * What is known of machines beyond what stands in their jobs, as data: kinds of machines with their
 * parts, typical figures and shares of causes, models that a shop has looked at, and how they fill
 * what a job leaves open. It knows neither files nor how a diagnosis is worked out.
 *
 * <p>Stability: may change.
 */
package kelter.core.catalogue;
