/**
 * Options as they are put to the owner: remedies or replacement, with their cost over time.
 *
 * <p>Stability: stable.
 */
package kelter.core.option;
