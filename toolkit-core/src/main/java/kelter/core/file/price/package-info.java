/**
 * Reads what a job says of prices, terms and use. It knows nothing of the rest of a job. Not for
 * use from outside.
 */
package kelter.core.file.price;
