/** Capacitors: what they hold, how long they take to discharge. Knows nothing of jobs. */
package kelter.electrical.capacitor;
