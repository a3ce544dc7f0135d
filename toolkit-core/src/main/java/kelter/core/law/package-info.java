/**
 * Laws, limits and constants that more than one room needs, each with its source. They know no part
 * and no job.
 *
 * <p>Stability: may change.
 */
package kelter.core.law;
