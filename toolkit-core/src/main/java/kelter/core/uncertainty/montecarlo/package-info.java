/**
 * Propagation of whole distributions by Monte Carlo after JCGM 101:2008, to hold a first-order
 * result against. It knows nothing of jobs and modules.
 *
 * <p>Stability: stable.
 */
package kelter.core.uncertainty.montecarlo;
