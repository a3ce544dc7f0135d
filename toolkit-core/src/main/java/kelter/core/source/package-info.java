/**
 * Where a figure comes from and what that is worth.
 *
 * <p>Stability: stable.
 */
package kelter.core.source;
