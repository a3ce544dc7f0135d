/**
 * The job book of a shop: what its closed jobs were, free of persons and of any database. A store
 * of entries is a {@link kelter.core.book.JobBook}; what the entries teach is in {@link
 * kelter.core.book.learning}.
 *
 * <p>Stability: may change.
 */
package kelter.core.book;
