/** The commands: each reads its arguments, asks the workshop and shows the result. */
package kelter.cli.command;
