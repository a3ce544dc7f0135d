/**
 * What a closed case tells a job book.
 *
 * <p>Stability: may change.
 */
package kelter.core.workshop.book;
