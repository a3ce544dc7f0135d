/**
 * What an owner is asked to pay: quotations before the work, the data of the invoice after it, and
 * the exact arithmetic of both. It knows no terminal and no page.
 *
 * <p>Stability: may change.
 */
package kelter.core.quote;
