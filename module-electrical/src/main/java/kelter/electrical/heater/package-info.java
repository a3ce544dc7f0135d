/**
 * Resistive heating: what a heater should measure and take, by its nameplate, and how fast it
 * heats. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.heater;
