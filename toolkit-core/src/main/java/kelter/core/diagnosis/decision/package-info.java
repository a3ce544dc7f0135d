/**
 * In which order to repair at the least expected cost. It knows numbers only, nothing of jobs,
 * quantities or the physics of a fault.
 */
package kelter.core.diagnosis.decision;
