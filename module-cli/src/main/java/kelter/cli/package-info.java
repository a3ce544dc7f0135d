/**
 * The entry point of the command line.
 *
 * <p>Stability: internal.
 */
package kelter.cli;
