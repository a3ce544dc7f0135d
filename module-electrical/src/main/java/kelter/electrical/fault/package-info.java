/**
 * What fault models of electrical parts have in common: a state that is healthy, changed by the
 * faults that are there, and read by the answers. Knows no part.
 */
package kelter.electrical.fault;
