/** The call and the way to the machine: a new job, its sheet, and the session at the bench. */
package kelter.cli.command.call;
