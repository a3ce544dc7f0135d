/**
 * Exact reasoning on a finite problem: states with a prior, observables with a finite number of
 * outcomes, and quantities that several observables share. Numbers in, numbers out: it knows no
 * jobs, no quantities with units and no faults, and keeps nothing between calls.
 */
package kelter.core.diagnosis.discrete;
