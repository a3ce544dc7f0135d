/** At the machine: what is read and seen goes into the job, is checked and diagnosed. */
package kelter.cli.command.diagnosis;
