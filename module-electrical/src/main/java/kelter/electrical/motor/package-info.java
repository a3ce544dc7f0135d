/**
 * A motor with its capacitor: its words, what its readings may be, how it runs and what can be
 * wrong with it. Priors and spreads are from memory.
 */
package kelter.electrical.motor;
