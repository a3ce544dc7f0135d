/**
 * Temperature sensors: resistance by temperature and back. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.sensor;
