/**
 * What can be wrong with electrical parts and how it shows, from one operating point of the
 * circuit. Priors and spreads are from memory.
 */
package kelter.electrical.fault;
