/**
 * The bars by which a dryer feels the damp. Words, checks and faults; chances and spreads are from
 * memory.
 */
package kelter.hydraulics.dampness;
