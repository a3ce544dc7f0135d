/**
 * How a machine knows how high its water stands: air trap, pressure and what a leak does to it. It
 * knows neither jobs nor faults.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.level;
