/**
 * Where modules and jobs meet: the way in for programs. A program of ten lines reads a job, checks,
 * diagnoses and weighs it here, with the same answers as the command line and with the rules that
 * protect people.
 *
 * <p>Stability: may change.
 */
package kelter.core.workshop;
