/**
 * What to do under uncertainty at the least expected cost: in which order to repair, when to give
 * up, and whether another reading is worth its price. It knows numbers only, nothing of jobs,
 * quantities or the physics of a fault.
 */
package kelter.core.diagnosis.decision;
