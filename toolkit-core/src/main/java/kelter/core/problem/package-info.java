/**
 * Mistakes in what a person gave, told all at once.
 *
 * <p>Stability: may change.
 */
package kelter.core.problem;
