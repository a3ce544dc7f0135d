/** What the modules can do, without a job or for other programs. */
package kelter.cli.command.tool;
