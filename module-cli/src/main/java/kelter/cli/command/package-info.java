/**
 * What a command is and what one call of it is given: the options, the job, the shop, the workshop
 * and the terminal. It knows no command.
 */
package kelter.cli.command;
