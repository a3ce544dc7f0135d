/** Temperature sensors: resistance by temperature and back. Knows nothing of jobs. */
package kelter.electrical.sensor;
