/** What was done in a job and how it ended, read from a job file and added to one. */
package kelter.core.file.progress;
