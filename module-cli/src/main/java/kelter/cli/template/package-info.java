/**
 * Job files to fill in, for the kinds of appliances that are known. It knows the words of the
 * modules, and neither commands nor the terminal.
 */
package kelter.cli.template;
