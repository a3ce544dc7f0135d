/** The decision and the work: worth it or not, the quotation, what was done, and its proof. */
package kelter.cli.command.work;
