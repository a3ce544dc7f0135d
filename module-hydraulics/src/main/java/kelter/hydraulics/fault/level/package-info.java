/**
 * What can be wrong on the measuring of the level: air trap, tube and sensor, and how it would
 * show. It knows nothing of the other groups of parts.
 */
package kelter.hydraulics.fault.level;
