/**
 * Copper and aluminium: wires, cords, leads and windings by length, section and temperature. Knows
 * nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.conductor;
