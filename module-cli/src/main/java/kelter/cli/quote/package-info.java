/** Quotations, data of invoices and data for the repair form as text and as pages. */
package kelter.cli.quote;
