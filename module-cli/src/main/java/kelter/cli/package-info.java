/** The entry point of the command line. */
package kelter.cli;
