/**
 * What counts of closed jobs tell of the next one. It knows numbers only, nothing of jobs,
 * components or faults.
 */
package kelter.core.diagnosis.learning;
