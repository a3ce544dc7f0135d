/**
 * What a closed case tells a job book.
 *
 * <p>Stability: internal.
 */
package kelter.core.workshop.book;
