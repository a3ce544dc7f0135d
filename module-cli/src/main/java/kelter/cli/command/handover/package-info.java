/** The end of a job: the report, the bill, closing it, and beginning again after a call-back. */
package kelter.cli.command.handover;
