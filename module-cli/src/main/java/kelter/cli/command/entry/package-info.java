/** How a command line or a session writes into a job: all that is told, or nothing of it. */
package kelter.cli.command.entry;
