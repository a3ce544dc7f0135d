/**
 * The electrical module by itself: what it adds to the core.
 *
 * <p>Stability: may change.
 */
package kelter.electrical;
