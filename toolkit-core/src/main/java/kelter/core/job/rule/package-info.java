/**
 * What must hold of a job before anything is checked or diagnosed: its parts fit each other and the
 * words of the modules. The reader of job files applies the same rules. Knows no file.
 *
 * <p>Stability: internal.
 */
package kelter.core.job.rule;
