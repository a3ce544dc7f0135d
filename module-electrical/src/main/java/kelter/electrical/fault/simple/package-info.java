/**
 * Parts that have one figure each: a cord's protective conductor, a door switch, a coil. Priors and
 * spreads are from memory.
 */
package kelter.electrical.fault.simple;
