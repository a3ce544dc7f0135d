/**
 * What can be wrong with the water side of an appliance and how it would show. Each model solves
 * one operating point for a state and reads everything off it. It knows nothing of checks and
 * verdicts.
 */
package kelter.hydraulics.fault;
