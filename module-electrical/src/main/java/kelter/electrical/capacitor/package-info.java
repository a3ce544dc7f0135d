/**
 * Capacitors: what they hold, how long they take to discharge. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.capacitor;
