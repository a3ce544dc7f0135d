/**
 * What was done in a job and how it ended, read from a job file and added to one.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.progress;
