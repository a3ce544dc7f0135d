/**
 * Scripts that complete commands, options and values in a shell, written from what the commands
 * declare. It knows no command by itself.
 */
package kelter.cli.completion;
