/**
 * What a module tells of the faults of a machine, and what a diagnosis is. Nothing here weighs
 * anything, and nothing knows of pumps or heaters.
 *
 * <p>Stability: stable.
 */
package kelter.core.diagnosis;
