/**
 * Resistive heating: what a heater should measure and take, by its nameplate, and how fast it
 * heats. Knows nothing of jobs.
 */
package kelter.electrical.heater;
