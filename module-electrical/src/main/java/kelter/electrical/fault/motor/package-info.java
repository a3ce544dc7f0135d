/** What can be wrong with a motor and its capacitor. Priors and spreads are from memory. */
package kelter.electrical.fault.motor;
