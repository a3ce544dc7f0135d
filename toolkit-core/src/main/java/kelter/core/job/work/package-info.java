/**
 * What was done in a job, with which parts, what was tested, and how the job ended.
 *
 * <p>Stability: stable.
 */
package kelter.core.job.work;
