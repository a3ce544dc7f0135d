/**
 * What an owner is asked to pay: quotations before the work, the data of the invoice after it, and
 * the exact arithmetic of both. It knows no terminal and no page.
 */
package kelter.core.quote;
