/**
 * The least expected cost and the worth of another reading on a finite problem, against which the
 * repair plan is held.
 */
package kelter.core.oracle.decision;
