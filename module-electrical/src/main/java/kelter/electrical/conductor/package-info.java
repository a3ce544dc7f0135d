/**
 * Copper and aluminium: wires, cords, leads and windings by length, section and temperature. Knows
 * nothing of jobs.
 */
package kelter.electrical.conductor;
