/**
 * Motors, coils and three phases: balance, slip, impedance. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.winding;
