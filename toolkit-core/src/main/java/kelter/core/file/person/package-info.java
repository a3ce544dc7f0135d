/**
 * Persons, each in a file apart from all jobs, joined to them by ids only, so that one can be
 * forgotten without touching a job.
 *
 * <p>Stability: internal.
 */
package kelter.core.file.person;
