/**
 * How a machine empties: how long it takes while the level falls, what is left, what runs back, and
 * whether it runs out by itself. It knows pumps and hoses but neither jobs nor faults.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.drain;
