package kelter.cli.command;

import kelter.cli.wiring.Workshop;
import kelter.core.job.Job;

/**
 * A job that was read, and the workshop in which it is looked at.
 *
 * @param workshop the workshop
 * @param job the job
 */
record OpenJob(Workshop workshop, Job job) {}
