/**
 * What can be wrong with the heating of an appliance and how it shows, from one operating point of
 * the circuit. Priors and spreads are from memory.
 */
package kelter.electrical.fault.heating;
