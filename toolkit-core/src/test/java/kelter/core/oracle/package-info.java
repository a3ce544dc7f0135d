/**
 * Exact reasoning on a finite problem, against which the diagnosis engine is held: states with a
 * prior, observables with a finite number of outcomes, and quantities that several observables
 * share. Numbers in, numbers out. Tests run aima-core and published networks beside it.
 */
package kelter.core.oracle;
