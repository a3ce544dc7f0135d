/**
 * What holds for any text that somebody else wrote. It knows nothing of the trade.
 *
 * <p>Stability: internal.
 */
package kelter.core.text;
