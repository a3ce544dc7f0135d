/**
 * The program: finds the command that a command line names, runs it and turns failures into exit
 * codes; beside it the commands that tell of all commands.
 */
package kelter.cli.program;
